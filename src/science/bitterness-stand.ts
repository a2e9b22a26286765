import { bitternessTinseth } from "./bitterness-tinseth.js";
import { input, leastAmount } from "./input.js";
import { isomerisationRate } from "./isomerisation-rate.js";
import { defineMethod } from "./method.js";

/** Bitterness of hops stood in hot wort after the boil. */
export const bitternessStand = defineMethod(
  {
    id: "bitterness-stand",
    title: "Bitterness from a hop stand",
    subject: "bitterness",
    says: "An estimate of the bitterness of hops stood in hot wort after the boil: each minute counts as the fraction of a minute at the boil that isomerises as much. Two relations joined, not one that was tested as a whole.",
    inputs: [
      input.percent("α", "alpha acids", { high: 70 }),
      input.massG("m", "mass of hops"),
      input.minutes("t", "time of the stand", { high: 150 }),
      input.temperature("T", "temperature of the stand", { low: 60, high: 101 }),
      input.gravity("S", "gravity of the wort", { low: 0.995, high: 1.17 }),
      input.volume("V", "volume after the boil at 20 °C", { low: leastAmount }),
    ],
    output: { symbol: "B", unit: "IBU" },
    formula: "B = bitterness-tinseth(α, m, t k(T)/k(100), S, V), with k from isomerisation-rate",
    range: "70 to 100 °C held steady; below 90 °C the rate is carried on beyond what was measured. A brewery measured two thirds of its boil's utilisation in the whirlpool (Justus 2018), more than this gives",
    source: "Tinseth's fit with time scaled by Malowicki & Shellhammer 2005; the joining is common practice among brewers and has no publication behind it",
    status: "common practice",
    checks: [
      { given: [10, 10000, 60, 100, 1.05, 1000], gives: 231, within: 0.6, source: "at 100 °C it is the boil: Tinseth's utilisation 0.231 at 60 min, 1.050" },
      { given: [10, 10000, 60, 90, 1.05, 1000], gives: 160, within: 1, source: "by hand: rate 0.417 of the boil's, so 25.0 min; (1 - e^-1.000)/4.15 × 1.65 × 0.638 = 0.160" },
    ],
  },
  (alphaPercent: number, massG: number, minutes: number, temperatureC: number, gravitySg: number, volumeL: number) => {
    const boilMinutes = (minutes * isomerisationRate(temperatureC)) / isomerisationRate(100);
    return bitternessTinseth(alphaPercent, massG, boilMinutes, gravitySg, volumeL);
  },
);

import { toOwnUnit } from "../units/index.js";
import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

const printed = "Tinseth's relation worked out apart; agrees with his printed table as remembered";

/** Bitterness of hops boiled in the kettle. */
export const bitternessTinseth = defineMethod(
  {
    id: "bitterness-tinseth",
    title: "Bitterness from the boil",
    subject: "bitterness",
    says: "An estimate of the bitterness one kettle addition gives, by Tinseth's fit. Relations of this kind differ from each other and from measured beer by a third or more.",
    inputs: [
      input.percent("α", "alpha acids", { high: 70 }),
      input.massG("m", "mass of hops"),
      input.minutes("t", "time in the boil"),
      input.gravity("S", "gravity of the wort, mean of before and after the boil", { low: 0.995, high: 1.17 }),
      input.volume("V", "volume after the boil at 20 °C", { low: leastAmount }),
    ],
    output: { symbol: "B", unit: "IBU" },
    formula: "B = 1.65 × 0.000125^(S - 1) (1 - e^(-0.04 t)) / 4.15 × (α/100) m 1000 / V",
    range: "1.030 to 1.130, 0 to 120 min; carried on outside, where nothing supports it",
    source: "Tinseth, author's page for the structure; constants from quotations of it",
    status: "published",
    checks: [
      { given: [5.5, toOwnUnit(1, "oz"), 60, 1.048, toOwnUnit(5, "gal")], gives: 19.35, within: 0.05, source: printed },
      { given: [10, 10000, 60, 1.05, 1000], gives: 231, within: 0.6, source: `${printed}: utilisation 0.231` },
      { given: [10, 10000, 30, 1.08, 1000], gives: 135, within: 0.6, source: `${printed}: utilisation 0.135` },
    ],
  },
  (alphaPercent: number, massG: number, minutes: number, gravitySg: number, volumeL: number) => {
    const bigness = 1.65 * 0.000125 ** (gravitySg - 1);
    const boilTime = (1 - Math.exp(-0.04 * minutes)) / 4.15;
    return (bigness * boilTime * (alphaPercent / 100) * massG * 1000) / volumeL;
  },
);

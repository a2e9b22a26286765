import { CO2_GRAMS_PER_VOLUME } from "../units/index.js";
import { alcoholByWeight } from "./alcohol-by-weight.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { platoFromGravity } from "./plato-from-gravity.js";
import { realExtract } from "./real-extract.js";

const co2PerAlcohol = 0.9565; // g of carbon dioxide for each g of alcohol, Balling
const waterGPerL = 998.204;
const balance = "Balling's balance worked apart (0.9565 g of carbon dioxide a gram of alcohol), 1.060 to 1.012; from memory";

/** Carbonation added by a fall of gravity in a closed package. */
export const carbonationFromGravityFall = defineMethod(
  {
    id: "carbonation-from-gravity-fall",
    title: "Carbonation from a fall in gravity",
    subject: "carbonation",
    says: "What beer that ferments on in a closed package adds to its carbonation. Two points of gravity are a whole volume: hop creep in bottles is a hazard.",
    inputs: [
      input.gravity("OG", "original gravity", { low: 1.01 }),
      input.gravity("S", "gravity when packaged"),
      { symbol: "ΔS", meaning: "further fall in gravity", unit: "SG", low: 0, high: 0.05 },
    ],
    output: { symbol: "ΔC", unit: "vol" },
    formula: "ΔC = (A(S - ΔS) - A(S)) / 100 × 998.204 (S - ΔS) 0.9565 / 1.977, with A from alcohol-by-weight and real-extract",
    range: "all the gas stays in the beer",
    source: "Balling's balance; 1.977 g/L for one volume",
    status: "published",
    checks: [
      { given: [1.06, 1.012, 0.001], gives: 0.53, within: 0.04, source: balance },
      { given: [1.06, 1.012, 0.004], gives: 2.13, within: 0.04, source: balance },
    ],
  },
  (originalSg: number, beforeSg: number, fallSg: number) => {
    const afterSg = beforeSg - fallSg;
    const alcohol = alcoholAt(originalSg, afterSg) - alcoholAt(originalSg, beforeSg);
    return ((alcohol / 100) * waterGPerL * afterSg * co2PerAlcohol) / CO2_GRAMS_PER_VOLUME;
  },
  (originalSg, beforeSg, fallSg) => {
    if (beforeSg > originalSg) return "gravity when packaged must not be above the original gravity";
    return beforeSg - fallSg < 0.98 ? "gravity can't fall below 0.98" : undefined;
  },
);

function alcoholAt(originalSg: number, sg: number): number {
  const originalP = platoFromGravity(originalSg);
  return alcoholByWeight(originalP, realExtract(originalP, platoFromGravity(sg)));
}

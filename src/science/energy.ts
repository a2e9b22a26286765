import { input } from "./input.js";
import { defineMethod } from "./method.js";

const kJPerKcal = 4.184; // thermochemical calorie, exact

/** Energy of the beer. */
export const energy = defineMethod(
  {
    id: "energy",
    title: "Energy",
    subject: "alcohol",
    says: "Energy in 100 mL of beer from its alcohol and its extract; 0.1 P is taken off for ash. Not a food label: protein and carbohydrate are not told apart.",
    inputs: [
      input.percent("A", "alcohol by weight", { high: 25 }),
      input.extract("RE", "real extract", { low: -1 }),
      input.gravity("FG", "final gravity"),
    ],
    output: { symbol: "E", unit: "kJ/100mL" },
    formula: "E = 4.184 (6.9 A + 4 (RE - 0.1)) FG",
    range: "beers without sweeteners or fat",
    source: "Oxford Companion to Beer, article on calories (ASBC); Fix 1992 gives the same for 12 fl oz",
    status: "published",
    checks: [
      { given: [4.015, 4.218, 1.0098], gives: 186.6, within: 0.4, source: "Fix 1992 (HBD archive): (24.495 A + 14.2 (RE - 0.1)) FG kcal in 12 fl oz = 158.3, over 3.55, by 4.184" },
    ],
  },
  (byWeightPercent: number, realP: number, finalSg: number) => kJPerKcal * (6.9 * byWeightPercent + 4 * (realP - 0.1)) * finalSg,
);

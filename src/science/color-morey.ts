import { EBC_PER_SRM } from "../units/index.js";
import { defineMethod } from "./method.js";

const worked = "Morey, Brewing Techniques: 1.4922 MCU^0.6859 SRM worked out apart, by 25/12.7 EBC a SRM";

/** Beer colour from malt colour units. */
export const colorMorey = defineMethod(
  {
    id: "color-morey",
    title: "Beer colour",
    subject: "color",
    says: "An estimate of the beer's colour from its malts, by Morey's curve through earlier fits. The boil, the mash and oxidation move it.",
    inputs: [{ symbol: "MCU", meaning: "malt colour units", unit: "MCU", low: 0, high: 167 }],
    output: { symbol: "C", unit: "EBC" },
    formula: "C = (25/12.7) 1.4922 MCU^0.6859",
    range: "beers below 50 SRM (98 EBC)",
    source: "Morey, Brewing Techniques; a copy with the exponent 0.65897 is in circulation and wrong",
    status: "published",
    checks: [
      { given: [5], gives: 4.5 * EBC_PER_SRM, within: 0.04, source: worked },
      { given: [20], gives: 11.65 * EBC_PER_SRM, within: 0.04, source: worked },
      { given: [50], gives: 21.83 * EBC_PER_SRM, within: 0.04, source: worked },
    ],
  },
  (maltColorUnits: number) => EBC_PER_SRM * 1.4922 * maltColorUnits ** 0.6859,
);

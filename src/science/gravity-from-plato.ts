import { input } from "./input.js";
import { invertRising } from "./invert-rising.js";
import { defineMethod } from "./method.js";
import { platoFromGravity } from "./plato-from-gravity.js";

const tableSource = "USDA File Code 135-A-50, sucrose conversion table: printed row";

/** Specific gravity 20/20 from extract. */
export const gravityFromPlato = defineMethod(
  {
    id: "gravity-from-plato",
    title: "Specific gravity from extract",
    subject: "gravity",
    says: "The specific gravity 20/20 of a solution with this extract in % by weight: the relation from gravity to extract, solved backwards.",
    inputs: [input.extract("P", "extract", { low: -5.26, high: 39.99 })],
    output: { symbol: "S", unit: "SG" },
    formula: "the S for which plato-from-gravity gives P, found between 0.980 and 1.1787",
    range: "0 to 40 P; below 0 P carried on, as the relation it inverts",
    source: "ASBC and NBS cubics, as in plato-from-gravity",
    status: "published",
    checks: [
      { given: [0.1], gives: 1.00039, within: 0.00003, source: tableSource },
      { given: [3.8], gives: 1.0149, within: 0.00003, source: tableSource },
      { given: [4.1], gives: 1.01609, within: 0.00003, source: tableSource },
      { given: [7.9], gives: 1.03139, within: 0.00003, source: tableSource },
    ],
  },
  (extractP: number) => invertRising(platoFromGravity, extractP, { low: 0.98, high: 1.1787 }),
);

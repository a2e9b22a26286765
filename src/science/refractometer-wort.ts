import { defineMethod } from "./method.js";

/** Extract of unfermented wort from a refractometer. */
export const refractometerWort = defineMethod(
  {
    id: "refractometer-wort",
    title: "Refractometer reading of wort",
    subject: "gravity",
    says: "The extract of wort that hasn't begun to ferment, from a refractometer made for sugar: the reading over the instrument's factor.",
    inputs: [
      { symbol: "B", meaning: "refractometer reading", unit: "Bx", low: 0, high: 40 },
      { symbol: "f", meaning: "factor of instrument and wort", unit: "", low: 0.9, high: 1.2 },
    ],
    output: { symbol: "P", unit: "P" },
    formula: "P = B / f",
    range: "unfermented wort only; alcohol falsifies the reading",
    source: "wort correction factor, customarily 1.04; measured per instrument it lies between 1.00 and 1.06",
    status: "common practice",
    checks: [{ given: [12.48, 1.04], gives: 12, within: 1e-9, source: "common practice: a factor of 1.04 takes 12.48 Bx to 12.0 P" }],
  },
  (readingBx: number, factor: number) => readingBx / factor,
);

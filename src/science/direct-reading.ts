import { defineMethod } from "./method.js";

/** A figure that is a reading itself. */
export const directReading = defineMethod(
  {
    id: "direct-reading",
    title: "Direct reading",
    subject: "balance",
    says: "The figure is what was read, brought to the unit of the figures table: nothing is computed from anything else.",
    inputs: [{ symbol: "x", meaning: "reading", unit: "as read", low: -1e6, high: 1e6 }],
    output: { symbol: "x", unit: "as read" },
    formula: "x = x",
    range: "what the instrument reads",
    source: "definition",
    status: "common practice",
    checks: [{ given: [1.048], gives: 1.048, within: 1e-9, source: "identity: a reading stands as it was read" }],
  },
  (reading: number) => reading,
);

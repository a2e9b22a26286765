import { defineMethod } from "./method.js";

/** One reading less another of the same kind. */
export const difference = defineMethod(
  {
    id: "difference",
    title: "Difference of two readings",
    subject: "balance",
    says: "The later reading less the earlier one, both of the same kind: how far pH moved, for instance.",
    inputs: [
      { symbol: "x2", meaning: "later reading", unit: "as read", low: -1e6, high: 1e6 },
      { symbol: "x1", meaning: "earlier reading", unit: "as read", low: -1e6, high: 1e6 },
    ],
    output: { symbol: "Δx", unit: "as read" },
    formula: "Δx = x2 - x1",
    range: "two readings of one kind in one unit",
    source: "definition",
    status: "common practice",
    checks: [{ given: [4.55, 4.4], gives: 0.15, within: 1e-9, source: "definition by hand" }],
  },
  (later: number, earlier: number) => later - earlier,
);

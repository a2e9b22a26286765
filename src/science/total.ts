import { defineRelation } from "./relation.js";

/** Parts added up. */
export const total = defineRelation(
  {
    id: "total",
    title: "Total",
    subject: "balance",
    says: "All parts added up: masses of hops, volumes of samples. Of no parts it is 0.",
    inputs: [{ symbol: "x", meaning: "each part", unit: "as given", low: -1e9, high: 1e9 }],
    output: { symbol: "Σx", unit: "as given" },
    formula: "Σx = x1 + x2 + …",
    range: "parts in one unit",
    source: "definition",
    status: "common practice",
    checks: [{ given: [110, 60, 30], gives: 200, within: 1e-9, source: "definition by hand" }],
  },
  (parts: readonly number[]) => parts.reduce((sum, part) => sum + part, 0),
  {
    refuses: (parts) => (parts.every((part) => Number.isFinite(part)) ? undefined : "every part must be a number"),
    read: (given) => [given],
  },
);

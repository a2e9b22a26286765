import { defineRelation } from "./relation.js";

/** A mean in which some values count for more. */
export const weightedMean = defineRelation(
  {
    id: "weighted-mean",
    title: "Weighted mean",
    subject: "balance",
    says: "A mean in which each value counts by its weight: contact and temperature over several dry hops count by the hops' mass.",
    inputs: [
      { symbol: "x", meaning: "each value", unit: "as given", low: -1e9, high: 1e9 },
      { symbol: "w", meaning: "its weight", unit: "as given", low: 0, high: 1e9 },
    ],
    output: { symbol: "x̄", unit: "as the values" },
    formula: "x̄ = Σ w x / Σ w",
    range: "weights not all zero",
    source: "definition",
    status: "common practice",
    checks: [{ given: [4, 100, 2, 50], gives: 10 / 3, within: 1e-9, source: "definition by hand: 4 d for 100 g and 2 d for 50 g" }],
  },
  (values: readonly number[], weights: readonly number[]) =>
    sum(values.map((value, index) => value * (weights[index] ?? 0))) / sum(weights),
  {
    refuses: (values, weights) => {
      if (values.length !== weights.length) return "there must be one weight for each value";
      if (![...values, ...weights].every((number) => Number.isFinite(number))) return "every value and weight must be a number";
      return weights.every((weight) => weight >= 0) && sum(weights) > 0 ? undefined : "weights must not be negative, nor all zero";
    },
    read: (given) => [given.filter((_, index) => index % 2 === 0), given.filter((_, index) => index % 2 === 1)],
  },
);

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

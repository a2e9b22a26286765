import { requireFinite, requireSameLength } from "../numerics/arguments.js";
import { solveLeastSquares } from "../numerics/householder.js";
import { sumOfSquares } from "../numerics/sums.js";
import { mean } from "../samples/sample.js";

/** Residual share of a column below which it counts as an exact alias of the others. */
const aliasShare = 1e-10;

/**
 * Variance inflation factor of each column, 1/(1 − R²) of that column on the others: how far
 * moving together with them widens its interval. Above 5 warn, above 10 don't split the effects
 * (common practice). A column that is an exact combination of the others gets Infinity.
 *
 * Source: Marquardt, Technometrics 12 (1970). From memory.
 *
 * @param columns at least two, equally long, each with some variation
 */
export function varianceInflation(columns: readonly (readonly number[])[]): number[] {
  if (columns.length < 2) throw new RangeError(`varianceInflation requires at least 2 columns, got ${columns.length}`);
  const centred = columns.map((column) => centre(column, columns[0] ?? []));
  return centred.map((column, j) => inflation(column, centred.filter((_, other) => other !== j)));
}

function centre(column: readonly number[], first: readonly number[]): number[] {
  requireFinite("varianceInflation", column, 2);
  requireSameLength("varianceInflation", column, first);
  const center = mean(column);
  if (new Set(column).size < 2) throw new RangeError("varianceInflation requires columns that vary");
  return column.map((value) => value - center);
}

function inflation(column: readonly number[], others: readonly (readonly number[])[]): number {
  const total = sumOfSquares(column);
  const left = sumOfSquares(independent(others).reduce(unexplained, [...column]));
  return left / total < aliasShare ** 2 ? Infinity : Math.max(1, total / left);
}

/** An orthogonal set spanning the columns; a column that adds nothing is left out, so aliases among the others do no harm. */
function independent(columns: readonly (readonly number[])[]): number[][] {
  const kept: number[][] = [];
  for (const column of columns) {
    // Twice: once leaves rounding of the first subtraction behind.
    const rest = kept.reduce(unexplained, kept.reduce(unexplained, [...column]));
    if (sumOfSquares(rest) > aliasShare ** 2 * sumOfSquares(column)) kept.push(rest);
  }
  return kept;
}

function unexplained(column: number[], direction: readonly number[]): number[] {
  return [...solveLeastSquares([direction], column).residuals];
}

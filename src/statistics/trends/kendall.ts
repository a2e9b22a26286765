import { normalTwoSided } from "../distributions/normal.js";
import { requireFinite, requireSameLength } from "../numerics/arguments.js";
import { mapValues, probabilityAtLeast } from "../numerics/discrete.js";
import { equateRounding, tieSizes } from "../samples/ties.js";
import { kendallNull, kendallVariance } from "./kendall-null.js";

export interface Kendall {
  /** S: pairs in the same order less pairs in opposite order. */
  readonly statistic: number;
  /** τ_b: S over the geometric mean of the pairs untied in x and in y; −1 to 1. */
  readonly tau: number;
  /** Two-sided. */
  readonly p: number;
  /** Whether p comes from the exact distribution given the ties, or from the normal one. */
  readonly exact: boolean;
}

/**
 * Kendall's rank correlation: does y go one way as x goes up? Needs no straight line and no
 * normal scatter.
 *
 * Source: Kendall, Rank Correlation Methods, ch. 1 to 5. From memory; S and p checked against R
 * and scipy (kendall_exact, trend_expected).
 *
 * @throws RangeError with fewer than 2 points or when all x or all y are equal
 */
export function kendall(x: readonly number[], y: readonly number[]): Kendall {
  requireSameLength("kendall", x, y);
  requireFinite("kendall", x, 2);
  requireFinite("kendall", y, 2);
  const [equatedX, equatedY] = [equateRounding(x), equateRounding(y)];
  const tiesX = tieSizes(equatedX);
  const tiesY = tieSizes(equatedY);
  if (tiesX.length < 2 || tiesY.length < 2) throw new RangeError("kendall requires two distinct x values and two distinct y values");
  const statistic = concordantLessDiscordant(equatedX, equatedY);
  const underNull = kendallNull(tiesX, tiesY);
  return {
    statistic,
    tau: statistic / Math.sqrt(untiedPairs(tiesX) * untiedPairs(tiesY)),
    p: underNull
      ? probabilityAtLeast(mapValues(underNull, Math.abs), Math.abs(statistic))
      : normalTwoSided(statistic / Math.sqrt(kendallVariance(tiesX, tiesY))),
    exact: underNull !== undefined,
  };
}

function concordantLessDiscordant(x: readonly number[], y: readonly number[]): number {
  let total = 0;
  for (const [j, xj] of x.entries()) {
    for (let i = 0; i < j; i += 1) total += Math.sign(xj - (x[i] ?? 0)) * Math.sign((y[j] ?? 0) - (y[i] ?? 0));
  }
  return total;
}

function untiedPairs(sizes: readonly number[]): number {
  const count = sizes.reduce((total, size) => total + size, 0);
  return (count * (count - 1) - sizes.reduce((total, size) => total + size * (size - 1), 0)) / 2;
}

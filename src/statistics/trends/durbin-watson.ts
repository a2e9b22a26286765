import { requireFinite } from "../numerics/arguments.js";
import { sumOfSquares } from "../numerics/sums.js";

/**
 * Durbin–Watson statistic Σ (e_t − e_{t−1})² / Σ e_t²: about 2 when neighbouring residuals don't
 * follow each other, towards 0 when they do, towards 4 when they alternate. With fewer than about
 * twenty batches it is a remark, not a ground for a correction.
 *
 * Source: Durbin & Watson, Biometrika 37 (1950). From memory; checked against R (trend_expected).
 *
 * @param residuals in the order of time
 * @throws RangeError when they are all zero
 */
export function durbinWatson(residuals: readonly number[]): number {
  requireFinite("durbinWatson", residuals, 2);
  const total = sumOfSquares(residuals);
  if (total === 0) throw new RangeError("durbinWatson requires residuals that are not all zero");
  return residuals.slice(1).reduce((sum, e, t) => sum + (e - (residuals[t] ?? 0)) ** 2, 0) / total;
}

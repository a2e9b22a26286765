import { normalUpperQuantile } from "../distributions/normal.js";
import { requireFinite, requireOpenProbability, requireSameLength } from "../numerics/arguments.js";
import { mapValues } from "../numerics/discrete.js";
import { type Interval } from "../samples/interval.js";
import { median } from "../samples/sample.js";
import { equateRounding, tieSizes } from "../samples/ties.js";
import { kendallNull, kendallVariance } from "./kendall-null.js";

export interface TheilSen {
  readonly slope: number;
  /** median(y) − slope × median(x). */
  readonly intercept: number;
  /** Undefined when so few points can't reach the level. */
  readonly interval: Interval | undefined;
  /** Whether the interval's level is exact: no ties in y, and few enough points to enumerate. */
  readonly exact: boolean;
}

/**
 * Theil–Sen line: the median of the slopes between all pairs of points with different x. One odd
 * batch hardly moves it. The interval holds the slopes that Kendall's test does not reject, given
 * the ties in x.
 *
 * Source: Theil, Proc. Kon. Ned. Akad. Wet. 53 (1950); Sen, JASA 63 (1968); Hollander & Wolfe,
 * Nonparametric Statistical Methods, 9.3. From memory; checked against scipy theilslopes and R.
 *
 * @throws RangeError with fewer than 2 points or a single distinct x
 */
export function theilSen(x: readonly number[], y: readonly number[], level = 0.95): TheilSen {
  requireSameLength("theilSen", x, y);
  requireFinite("theilSen", x, 2);
  requireFinite("theilSen", y, 2);
  requireOpenProbability("theilSen", "level", level);
  const places = equateRounding(x);
  const slopes = pairSlopes(places, y).sort((a, b) => a - b);
  if (slopes.length === 0) throw new RangeError("theilSen requires two distinct x values, got 1");
  const slope = median(slopes);
  const rejecting = leastRejected(tieSizes(places), 1 - level);
  const first = Math.floor((slopes.length - rejecting.statistic) / 2);
  const low = slopes[first];
  const high = slopes[slopes.length - 1 - first];
  return {
    slope,
    intercept: median(y) - slope * median(x),
    interval: low === undefined || high === undefined ? undefined : { low, high },
    exact: rejecting.exact && tieSizes(equateRounding(y)).length === y.length,
  };
}

function pairSlopes(x: readonly number[], y: readonly number[]): number[] {
  const slopes: number[] = [];
  for (const [j, xj] of x.entries()) {
    for (let i = 0; i < j; i += 1) {
      const run = xj - (x[i] ?? 0);
      if (run !== 0) slopes.push(((y[j] ?? 0) - (y[i] ?? 0)) / run);
    }
  }
  return slopes;
}

/** The least |S| that Kendall's two-sided test rejects at `alpha`; Infinity when none is far enough out. */
function leastRejected(tiesX: readonly number[], alpha: number): { readonly statistic: number; readonly exact: boolean } {
  const untiedY = Array.from({ length: tiesX.reduce((total, size) => total + size, 0) }, () => 1);
  const underNull = kendallNull(tiesX, untiedY);
  if (underNull === undefined) {
    return { statistic: normalUpperQuantile(alpha / 2) * Math.sqrt(kendallVariance(tiesX, untiedY)), exact: false };
  }
  let statistic = Infinity;
  let tail = 0;
  for (const [distance, chance] of [...mapValues(underNull, Math.abs)].sort(([a], [b]) => b - a)) {
    tail += chance;
    if (tail > alpha + 1e-12) break;
    statistic = distance;
  }
  return { statistic, exact: true };
}

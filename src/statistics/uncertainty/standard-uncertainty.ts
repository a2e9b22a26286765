import { sumOfSquares } from "../numerics/sums.js";
import { type Uncertain } from "./uncertain.js";

/**
 * Combined standard uncertainty: the root of the summed squares of the contributions, in the
 * value's unit; 0 for an exact value.
 *
 * Source: JCGM 100:2008, 5.1.2, equation (11a), with base readings independent of each other. Published.
 */
export function standardUncertainty(uncertain: Uncertain): number {
  return Math.sqrt(sumOfSquares(Object.values(uncertain.contributions)));
}

/**
 * Standard uncertainty of a reading known only to lie within ± `limit`: limit/√3.
 *
 * Source: JCGM 100:2008, 4.3.7 (rectangular distribution). Published.
 */
export function rectangular(limit: number): number {
  if (!(limit >= 0 && Number.isFinite(limit))) throw new RangeError(`rectangular requires a limit of 0 or more, got ${limit}`);
  return limit / Math.sqrt(3);
}

/**
 * Expanded uncertainty U = k·u, the half-width of value ± U. k = 2 is about 95 % when no single
 * rectangular reading dominates (then it is too wide: JCGM 101:2008, 9.2.4, gives 17.0 where
 * this gives 19.9).
 *
 * Source: JCGM 100:2008, 6.2.1. Published.
 */
export function expandedUncertainty(uncertain: Uncertain, k = 2): number {
  if (!(k > 0 && Number.isFinite(k))) throw new RangeError(`expandedUncertainty requires a positive coverage factor, got ${k}`);
  return k * standardUncertainty(uncertain);
}

/**
 * Correlation of two values through the readings they share, −1 to 1.
 *
 * Source: JCGM 100:2008, 5.2.2, equation (14), and F.1.2.3, equation (F.2). Published.
 *
 * @throws RangeError when one of them is exact: it has no correlation with anything
 */
export function correlation(a: Uncertain, b: Uncertain): number {
  const scale = standardUncertainty(a) * standardUncertainty(b);
  if (!(scale > 0)) throw new RangeError("correlation requires two values with an uncertainty");
  const others = new Map(Object.entries(b.contributions));
  const covariance = Object.entries(a.contributions).reduce((total, [id, share]) => total + share * (others.get(id) ?? 0), 0);
  return Math.max(-1, Math.min(1, covariance / scale));
}

import { adjustHolm } from "../statistics/index.js";
import { SHOWN_AT } from "./tasting-limits.js";
import { LEAST_FOR_TREND, type Trend } from "./season-trend.js";
import type { Claim } from "./types.js";

/** From so many batches on a trend is told in normal words (recommendation for small series). */
const LEAST_FOR_SHOWN = 10;

/** The adjusted p of each trend on a page. */
export type TrendFamily = ReadonlyMap<Trend, number>;

/** All trends tested on one page share Holm: the more one looks at, the more chance shows. */
export function adjustedTogether(trends: readonly Trend[]): TrendFamily {
  const adjusted = adjustHolm(trends.map(({ p }) => p));
  return new Map(trends.map((trend, index) => [trend, adjusted[index] ?? 1]));
}

/**
 * What may be said of a trend. Under six batches: too few. From six to nine: "possible", only where
 * Kendall's p is exact and the intervals are clear of zero. From ten: "shown".
 *
 * Source: reference on sensory work and trends, section 7.2. Recommendation.
 *
 * @param n batches with both figures
 */
export function claimOf(n: number, trend: Trend | undefined, family: TrendFamily): Claim {
  if (n < LEAST_FOR_TREND) return "too-few";
  if (trend === undefined || (family.get(trend) ?? 1) > SHOWN_AT || !isClear(trend)) return "none";
  if (n >= LEAST_FOR_SHOWN) return "shown";
  return trend.exact && isClear(trend.robust ?? {}) ? "possible" : "none";
}

/** Whether an interval is clear of zero; one that can't be had is not. */
function isClear({ low, high }: { readonly low?: number; readonly high?: number }): boolean {
  return low !== undefined && high !== undefined && (low > 0 || high < 0);
}

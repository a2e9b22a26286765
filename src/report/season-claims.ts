import { adjustHolm } from "../statistics/index.js";
import { SHOWN_AT } from "./tasting-limits.js";
import { LEAST_FOR_TREND, type Trend } from "./season-trend.js";
import type { Claim } from "./types.js";

/** From so many batches on a trend is told in normal words (recommendation for small series). */
export const LEAST_FOR_SHOWN = 10;

/**
 * What is put to every season may claim by chance in 4 of 100, all that is looked at beside it in 1 of
 * 100: 5 of 100 together (Bonferroni). Many further pairs then can't drown the few that matter.
 */
const FIRST_SHARE = 0.8;

/** Anything with a p of its own. */
export interface Tested {
  readonly p: number;
}

/** The adjusted p of each question on a page. */
export type TrendFamily = ReadonlyMap<Tested, number>;

/**
 * All that is tested on one page shares one chance of a false claim, by Holm inside each of the two
 * lots: the more one looks at, the more chance shows.
 *
 * Source: Holm, Scand. J. Statist. 6 (1979); the split by Bonferroni's inequality. Published.
 */
export function adjustedTogether(first: readonly Tested[], further: readonly Tested[] = []): TrendFamily {
  const share = first.length === 0 ? 0 : further.length === 0 ? 1 : FIRST_SHARE;
  return new Map([...adjustedLot(first, share), ...adjustedLot(further, 1 - share)]);
}

function adjustedLot(lot: readonly Tested[], share: number): [Tested, number][] {
  const adjusted = adjustHolm(lot.map(({ p }) => p));
  return lot.map((tested, index) => [tested, Math.min(1, (adjusted[index] ?? 1) / share)]);
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

/** Whether something is claimed at all. */
export function isClaimed({ claim }: { readonly claim?: Claim }): boolean {
  return claim === "shown" || claim === "possible";
}

/** Whether an interval is clear of zero; one that can't be had is not. */
function isClear({ low, high }: { readonly low?: number; readonly high?: number }): boolean {
  return low !== undefined && high !== undefined && (low > 0 || high < 0);
}

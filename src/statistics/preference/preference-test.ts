import { binomialAtLeast } from "../distributions/binomial.js";
import { requireCount } from "../numerics/arguments.js";
import { type Interval } from "../samples/interval.js";
import { clopperPearson } from "../samples/proportion.js";

export interface PreferenceCounts {
  readonly first: number;
  readonly second: number;
  /** Tasters without a preference; 0 unless said. */
  readonly none?: number;
}

export interface PreferenceResult {
  /** Two-sided and exact, over those who chose. */
  readonly p: number;
  readonly chose: number;
  readonly none: number;
  /** Share of those who chose that prefer the first. */
  readonly share: number;
  readonly interval: Interval;
}

/**
 * Paired preference: two-sided, since neither answer is right. Votes without a preference are
 * reported and left out: splitting them equally loses power, splitting them in proportion makes
 * false alarms (Ennis & Ennis, Journal of Sensory Studies, 2012).
 *
 * Source: ISO 5495:2005, ASTM E2263 (binomial test). Published.
 *
 * @throws RangeError when nobody chose
 */
export function preferenceTest({ first, second, none = 0 }: PreferenceCounts, level = 0.95): PreferenceResult {
  requireCount("preferenceTest", "votes for the first", first);
  requireCount("preferenceTest", "votes for the second", second);
  requireCount("preferenceTest", "votes for neither", none);
  const chose = first + second;
  requireCount("preferenceTest", "votes for either", chose, 1);
  return {
    p: Math.min(1, 2 * binomialAtLeast(Math.max(first, second), chose, 0.5)),
    chose,
    none,
    share: first / chose,
    interval: clopperPearson(first, chose, level),
  };
}

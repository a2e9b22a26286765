import { binomialAtLeast } from "../distributions/binomial.js";
import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { type Interval } from "../samples/interval.js";
import { clopperPearson } from "../samples/proportion.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";
import { dPrimeOf } from "./psychometric.js";

export interface DiscriminationResult {
  /** One-sided and exact: the chance of so many right answers by guessing. */
  readonly p: number;
  readonly proportionCorrect: number;
  readonly proportionInterval: Interval;
  /** Share of tasters who could tell, the rest guessing; 0 when below chance. It depends on the test used. */
  readonly discriminators: number;
  readonly discriminatorsInterval: Interval;
  /** Null when every answer was right: the data set no upper bound. */
  readonly dPrime: number | null;
  readonly dPrimeInterval: { readonly low: number; readonly high: number | null };
}

/**
 * Analyses a discrimination test: independent tasters, one answer each. Repeats by one taster are
 * not independent and don't belong here.
 *
 * Source: ISO 4120:2021, ISO 10399, ISO 5495 (exact binomial test, pc = p0 + (1 − p0) pd);
 * published. The intervals map the exact limits of the proportion (Clopper & Pearson) to the
 * share of discriminators and to d′; the standard error of d′ breaks down near 0. Recommendation.
 *
 * A two-sided 95 % interval and a one-sided test at 5 % need not agree.
 */
export function discriminationTest(test: DiscriminationTest, correct: number, tasters: number, level = 0.95): DiscriminationResult {
  requireCount("discriminationTest", "tasters", tasters, 1);
  requireCount("discriminationTest", "correct", correct, 0, tasters);
  const guess = guessProbability(test);
  const interval = clopperPearson(correct, tasters, level);
  const share = (proportion: number): number => Math.max(0, (proportion - guess) / (1 - guess));
  return {
    p: binomialAtLeast(correct, tasters, guess),
    proportionCorrect: correct / tasters,
    proportionInterval: interval,
    discriminators: share(correct / tasters),
    discriminatorsInterval: { low: share(interval.low), high: share(interval.high) },
    dPrime: dPrimeOf(test, correct / tasters),
    // The lower limit lies below 1, so it always has a d′.
    dPrimeInterval: { low: dPrimeOf(test, interval.low) ?? 0, high: dPrimeOf(test, interval.high) },
  };
}

/**
 * Fewest right answers with P(that many or more by guessing) ≤ alpha, or undefined when even all
 * right would not do. Printed tables err here and there, so none is used: a handbook's one-sided
 * table gives 26 of 37 at 1 % (p .01004; right is 27) and 30 of 40 at 0.1 % (p .00111; right is 31).
 *
 * Source: ISO 4120:2021 Table A.1 and ISO 10399 Table A.1, recomputed. Published.
 */
export function criticalNumber(test: DiscriminationTest, tasters: number, alpha = 0.05): number | undefined {
  requireCount("criticalNumber", "tasters", tasters, 1);
  requireOpenProbability("criticalNumber", "alpha", alpha);
  return criticalCount(guessProbability(test), tasters, alpha);
}

/** As `criticalNumber`, for any chance of guessing. */
export function criticalCount(guess: number, tasters: number, alpha: number): number | undefined {
  let [low, high] = [0, tasters + 1];
  // P(X ≥ k) falls with k: halve until low fails and high holds.
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (binomialAtLeast(middle, tasters, guess) <= alpha) high = middle;
    else low = middle;
  }
  return high > tasters ? undefined : high;
}

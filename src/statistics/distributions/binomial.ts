import beta from "@stdlib/stats-base-dists-beta";
import { requireCount } from "../numerics/arguments.js";

/**
 * Binomial tails, each as the incomplete beta function of its own side, so that small ones keep
 * their digits.
 *
 * Source: Abramowitz & Stegun 26.5.24. From memory; checked against R.
 */

/** P(X ≥ successes) in `trials` with chance `probability` each, 0 to 1. */
export function binomialAtLeast(successes: number, trials: number, probability: number): number {
  requireBinomial("binomialAtLeast", trials, probability);
  requireCount("binomialAtLeast", "successes", successes, 0, trials + 1);
  if (successes === 0) return 1;
  return successes > trials ? 0 : Math.min(1, beta.cdf(probability, successes, trials - successes + 1));
}

/** P(X ≤ successes). */
export function binomialAtMost(successes: number, trials: number, probability: number): number {
  requireBinomial("binomialAtMost", trials, probability);
  return binomialAtLeast(trials - successes, trials, 1 - probability);
}

function requireBinomial(caller: string, trials: number, probability: number): void {
  requireCount(caller, "trials", trials);
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`${caller} requires a probability from 0 to 1, got ${probability}`);
}

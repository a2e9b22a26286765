import beta from "@stdlib/stats-base-dists-beta";
import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { type Interval } from "./interval.js";

/**
 * Exact interval of a proportion after Clopper and Pearson: it holds the level whatever the
 * proportion, at the price of being wide.
 *
 * Source: Clopper & Pearson, Biometrika 26 (1934). From memory; checked against R.
 *
 * @returns between 0 and 1; 0 and 1 themselves when nobody or everybody succeeded
 */
export function clopperPearson(successes: number, trials: number, level = 0.95): Interval {
  requireCount("clopperPearson", "trials", trials, 1);
  requireCount("clopperPearson", "successes", successes, 0, trials);
  requireOpenProbability("clopperPearson", "level", level);
  const tail = (1 - level) / 2;
  return { low: lowerLimit(successes, trials, tail), high: 1 - lowerLimit(trials - successes, trials, tail) };
}

/** One-sided upper limit: the proportion above which so few successes have a chance of `tail` or less. */
export function upperProportion(successes: number, trials: number, tail: number): number {
  requireCount("upperProportion", "trials", trials, 1);
  requireCount("upperProportion", "successes", successes, 0, trials);
  requireOpenProbability("upperProportion", "tail", tail);
  return 1 - lowerLimit(trials - successes, trials, tail);
}

function lowerLimit(successes: number, trials: number, tail: number): number {
  return successes === 0 ? 0 : beta.quantile(tail, successes, trials - successes + 1);
}

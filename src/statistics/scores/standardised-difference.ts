import { noncentralityWith, noncentralTUpperTail } from "../distributions/noncentral-t.js";
import { studentFactor } from "../distributions/student-t.js";
import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { findRoot } from "../numerics/root.js";
import { type Interval } from "../samples/interval.js";
import { meanDifference } from "./mean-difference.js";

export interface StandardisedDifference {
  /** Mean difference over the standard deviation of the differences. Not Cohen's d of two groups. */
  readonly dz: number;
  readonly interval: Interval;
  /** J, below 1: takes off the small-sample excess of dz. */
  readonly hedgesFactor: number;
  /** J × dz. */
  readonly corrected: number;
}

/**
 * Size of a paired difference in its own standard deviations, with the exact interval from the
 * noncentral t.
 *
 * Source: Steiger & Fouladi 1997 (interval); Hedges, Journal of Educational Statistics 6 (1981)
 * (factor). From memory; checked against R pt and scipy nct.
 *
 * @returns undefined when all differences are equal; needs 3 differences
 */
export function standardisedDifference(differences: readonly number[], level = 0.95): StandardisedDifference | undefined {
  requireCount("standardisedDifference", "the number of differences", differences.length, 3);
  const { count, mean, standardDeviation, t } = meanDifference(differences, level);
  if (t === undefined) return undefined;
  const limit = (upper: number): number => noncentralityWith(upper, t, count - 1) / Math.sqrt(count);
  const tail = (1 - level) / 2;
  const dz = mean / standardDeviation;
  const factor = hedgesFactor(count - 1);
  return { dz, interval: { low: limit(tail), high: limit(1 - tail) }, hedgesFactor: factor, corrected: factor * dz };
}

export interface EffectOptions {
  /** Of the two-sided test; 0.05 unless said. */
  readonly alpha?: number;
  /** Chance of finding the difference; 0.8 unless said. */
  readonly power?: number;
}

/**
 * The dz that a paired t test of so many tasters would find with the given power.
 *
 * Source: noncentral t power, textbook. Checked against R power.t.test (small_n_paired.csv).
 */
export function smallestStandardisedDifference(count: number, { alpha = 0.05, power = 0.8 }: EffectOptions = {}): number {
  requireCount("smallestStandardisedDifference", "count", count, 3);
  requireOpenProbability("smallestStandardisedDifference", "alpha", alpha);
  if (!(power > alpha && power < 1)) {
    throw new RangeError(`smallestStandardisedDifference requires a power between alpha and 1, got ${power}`);
  }
  const critical = studentFactor(1 - alpha, count - 1);
  const found = (delta: number): number =>
    noncentralTUpperTail(critical, count - 1, delta) + noncentralTUpperTail(critical, count - 1, -delta);
  return findRoot((delta) => found(delta) - power, 0, 40 + 10 * critical, 1e-10) / Math.sqrt(count);
}

/** J(ν) = Γ(ν/2) / (Γ((ν − 1)/2) √(ν/2)), by the ratio r(ν + 1) = (ν − 1)/(2 r(ν)) from r(2) = 1/√π. */
function hedgesFactor(degreesOfFreedom: number): number {
  let ratio = 1 / Math.sqrt(Math.PI);
  for (let nu = 2; nu < degreesOfFreedom; nu += 1) ratio = (nu - 1) / (2 * ratio);
  return ratio / Math.sqrt(degreesOfFreedom / 2);
}

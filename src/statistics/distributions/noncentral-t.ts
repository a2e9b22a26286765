import chisquare from "@stdlib/stats-base-dists-chisquare";
import { integrate } from "../numerics/quadrature.js";
import { findRoot } from "../numerics/root.js";
import { normalCdf } from "./normal.js";

/**
 * Noncentral t: what Student's t follows when the true mean is not zero. T = (Z + δ)/S with
 * S = √(χ²_ν/ν), so P(T > t) is the mean of Φ(δ − tS) over S.
 *
 * Source: Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions 2, ch. 31. From
 * memory; checked against R pt and scipy nct through the intervals of dz.
 */

/** S lies within this many of its standard deviations 1/√(2ν) of 1, but for less than 1e-13. */
const reach = 11;

/**
 * P(T > statistic).
 *
 * @param degreesOfFreedom 1 or more
 * @param noncentrality δ: true mean over its standard error
 */
export function noncentralTUpperTail(statistic: number, degreesOfFreedom: number, noncentrality: number): number {
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom + statistic + noncentrality))) {
    throw new RangeError(`noncentralTUpperTail requires finite numbers and 1 or more degrees of freedom, got ${degreesOfFreedom}`);
  }
  const density = spreadDensity(degreesOfFreedom);
  const spread = reach / Math.sqrt(2 * degreesOfFreedom);
  const tail = integrate((s) => normalCdf(noncentrality - statistic * s) * density(s), Math.max(0, 1 - spread), 1 + spread);
  return Math.max(0, Math.min(1, tail));
}

/** Density of S at s, worked out from that of χ²_ν at ν so that the gamma function is needed once. */
function spreadDensity(nu: number): (s: number) => number {
  const scale = 2 * nu * chisquare.pdf(nu, nu);
  return (s) => scale * Math.exp((nu - 1) * Math.log(s) - (nu * (s * s - 1)) / 2);
}

/**
 * The noncentrality under which a T above `statistic` has the chance `upper`: a limit of the
 * exact interval for δ.
 */
export function noncentralityWith(upper: number, statistic: number, degreesOfFreedom: number): number {
  if (!(upper > 0 && upper < 1)) throw new RangeError(`noncentralityWith requires a probability between 0 and 1, got ${upper}`);
  const half = 10 + 10 * Math.abs(statistic);
  return findRoot((delta) => noncentralTUpperTail(statistic, degreesOfFreedom, delta) - upper, statistic - half, statistic + half, 1e-10);
}

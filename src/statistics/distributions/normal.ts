import normal from "@stdlib/stats-base-dists-normal";

/** The standard normal distribution. Source: integral and quantile from the library @stdlib; the density is textbook. */

export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("normalCdf requires a number, got NaN");
  return normal.cdf(z, 0, 1);
}

export function normalDensity(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("normalDensity requires a number, got NaN");
  return Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** P(|Z| > |z|). */
export function normalTwoSided(z: number): number {
  return Math.min(1, 2 * normalCdf(-Math.abs(z)));
}

/** The z with P(Z > z) = upper. */
export function normalUpperQuantile(upper: number): number {
  if (!(upper > 0 && upper < 1)) throw new RangeError(`normalUpperQuantile requires a probability between 0 and 1, got ${upper}`);
  return -normal.quantile(upper, 0, 1);
}

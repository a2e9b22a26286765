import { requireFinite } from "../numerics/arguments.js";

/**
 * Mean. The first value is taken off before summing, so that a large common part
 * (10 000 000.2, 10 000 000.1, …) costs no digits and equal values give exactly themselves.
 *
 * Source: textbook; the shift after Chan, Golub & LeVeque, The American Statistician 37 (1983). From memory.
 */
export function mean(values: readonly number[]): number {
  requireFinite("mean", values);
  const origin = values[0] ?? 0;
  return origin + values.reduce((total, value) => total + (value - origin), 0) / values.length;
}

/** Sample standard deviation (n − 1), in two passes about the mean; needs two values. */
export function standardDeviation(values: readonly number[]): number {
  requireFinite("standardDeviation", values, 2);
  const center = mean(values);
  return Math.sqrt(values.reduce((total, value) => total + (value - center) ** 2, 0) / (values.length - 1));
}

/** Middle value, or the mean of the two middle ones. */
export function median(values: readonly number[]): number {
  requireFinite("median", values);
  const sorted = values.toSorted((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  return lower + (upper - lower) / 2;
}

/**
 * Lag-1 autocorrelation: Σ (x_t − m)(x_{t+1} − m) / Σ (x_t − m)².
 *
 * Source: NIST StRD, univariate summary statistics, definition in the data files. Published.
 *
 * @throws RangeError when all values are equal
 */
export function lagOneAutocorrelation(values: readonly number[]): number {
  requireFinite("lagOneAutocorrelation", values, 2);
  const center = mean(values);
  const deviations = values.map((value) => value - center);
  const spread = deviations.reduce((total, d) => total + d * d, 0);
  if (spread === 0) throw new RangeError("lagOneAutocorrelation requires values that are not all equal");
  const lagged = deviations.slice(1).reduce((total, d, t) => total + d * (deviations[t] ?? 0), 0);
  return lagged / spread;
}

import f from "@stdlib/stats-base-dists-f";

/**
 * P(F > ratio). Source: the library @stdlib. Taken as P(1/F < 1/ratio) with the degrees swapped, so that small tails keep their digits.
 *
 * @param ratio 0 or more; Infinity (an exact fit) gives 0
 */
export function fUpperTail(ratio: number, numeratorDegrees: number, denominatorDegrees: number): number {
  requireDegrees("fUpperTail", numeratorDegrees, denominatorDegrees);
  if (!(ratio >= 0)) throw new RangeError(`fUpperTail requires a ratio of 0 or more, got ${ratio}`);
  return ratio === 0 ? 1 : f.cdf(1 / ratio, denominatorDegrees, numeratorDegrees);
}

/** The F with P(F > f) = upper. */
export function fUpperQuantile(upper: number, numeratorDegrees: number, denominatorDegrees: number): number {
  requireDegrees("fUpperQuantile", numeratorDegrees, denominatorDegrees);
  if (!(upper > 0 && upper < 1)) throw new RangeError(`fUpperQuantile requires a probability between 0 and 1, got ${upper}`);
  return 1 / f.quantile(upper, denominatorDegrees, numeratorDegrees);
}

function requireDegrees(caller: string, numerator: number, denominator: number): void {
  if (numerator > 0 && denominator > 0 && Number.isFinite(numerator + denominator)) return;
  throw new RangeError(`${caller} requires positive degrees of freedom, got ${numerator} and ${denominator}`);
}

import chisquare from "@stdlib/stats-base-dists-chisquare";

/**
 * P(χ² > statistic). Source: the library @stdlib, checked here against R through the tests that use it. Taken as 1 − cdf: below about 1e-13 the tail has lost its
 * digits, which no verdict here depends on.
 */
export function chiSquareUpperTail(statistic: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0 && statistic >= 0)) {
    throw new RangeError(
      `chiSquareUpperTail requires a statistic of 0 or more and positive degrees of freedom, got ${statistic} and ${degreesOfFreedom}`,
    );
  }
  return Math.max(0, 1 - chisquare.cdf(statistic, degreesOfFreedom));
}

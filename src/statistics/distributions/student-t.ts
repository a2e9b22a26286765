import t from "@stdlib/stats-base-dists-t";
import { requireOpenProbability } from "../numerics/arguments.js";

/** Student's t distribution. Source: the library @stdlib; the tails are taken where they are small. */

/** P(T > statistic) with `degreesOfFreedom` > 0 (need not be whole). */
export function studentUpperTail(statistic: number, degreesOfFreedom: number): number {
  requireDegrees("studentUpperTail", degreesOfFreedom);
  if (Number.isNaN(statistic)) throw new RangeError("studentUpperTail requires a number, got NaN");
  return t.cdf(-statistic, degreesOfFreedom);
}

/** P(|T| > |statistic|). */
export function studentTwoSided(statistic: number, degreesOfFreedom: number): number {
  return Math.min(1, 2 * studentUpperTail(Math.abs(statistic), degreesOfFreedom));
}

/** The t with P(T > t) = (1 − level)/2: the factor of a two-sided interval at `level`, such as 0.95. */
export function studentFactor(level: number, degreesOfFreedom: number): number {
  requireOpenProbability("studentFactor", "level", level);
  requireDegrees("studentFactor", degreesOfFreedom);
  return -t.quantile((1 - level) / 2, degreesOfFreedom);
}

function requireDegrees(caller: string, degreesOfFreedom: number): void {
  if (degreesOfFreedom > 0 && Number.isFinite(degreesOfFreedom)) return;
  throw new RangeError(`${caller} requires positive degrees of freedom, got ${degreesOfFreedom}`);
}

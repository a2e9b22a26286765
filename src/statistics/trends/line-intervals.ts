import { studentFactor } from "../distributions/student-t.js";
import { intervalAround, type Interval } from "../samples/interval.js";
import { type LinearFit } from "./linear-fit.js";

/**
 * Intervals of a fitted line. They assume scatter of one size about a straight line and points
 * independent of each other; a season's serial batches may not be (see `durbinWatson`).
 *
 * Source: NIST/SEMATECH e-Handbook 4.1.3 and 4.5.1; Draper & Smith, Applied Regression Analysis, ch. 1. From memory.
 */

/** The line's height at x. */
export function predictAt(fit: LinearFit, x: number): number {
  if (!Number.isFinite(x)) throw new RangeError(`predictAt requires a finite x, got ${x}`);
  return fit.intercept + fit.slope * x;
}

/** Confidence interval of the slope. */
export function slopeInterval(fit: LinearFit, level = 0.95): Interval {
  return intervalAround(fit.slope, studentFactor(level, fit.degreesOfFreedom) * fit.slopeStandardError);
}

/** Confidence interval of the mean response at x: where the line itself may run. */
export function meanInterval(fit: LinearFit, x: number, level = 0.95): Interval {
  return bandAt(fit, x, level, 0);
}

/** Prediction interval of one new point at x. */
export function predictionInterval(fit: LinearFit, x: number, level = 0.95): Interval {
  return bandAt(fit, x, level, 1);
}

function bandAt(fit: LinearFit, x: number, level: number, ownScatter: 0 | 1): Interval {
  const spread = ownScatter + 1 / fit.count + (x - fit.meanX) ** 2 / fit.sumSquaresX;
  const halfWidth = studentFactor(level, fit.degreesOfFreedom) * fit.residualStandardDeviation * Math.sqrt(spread);
  return intervalAround(predictAt(fit, x), halfWidth);
}

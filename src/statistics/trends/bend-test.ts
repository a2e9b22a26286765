import { studentFactor } from "../distributions/student-t.js";
import { requireFinite, requireSameLength } from "../numerics/arguments.js";
import { mean } from "../samples/sample.js";
import { type Interval } from "../samples/interval.js";
import { linearContrast, multipleRegression, type MultipleFit } from "./multiple-regression.js";

/** A straight line against one with a squared term more. */
export interface BendTest {
  /** F of the squared term, on 1 and `fit.degreesOfFreedom`. */
  readonly fRatio: number;
  /** p of a straight line. */
  readonly p: number;
  /** Sign of the bend: below 0 the slope falls as x rises. */
  readonly curvature: number;
  readonly meanX: number;
  /** Of x − mean and (x − mean)². */
  readonly fit: MultipleFit;
}

/**
 * Does y bend as x rises? Nested least squares: F = (RSS of the line − RSS of the parabola) over the
 * parabola's mean square. The parabola only stands in for "not straight": where a curve levels off it
 * can't say, so ask for the slopes at both ends.
 *
 * Source: extra sum of squares, Draper & Smith, Applied Regression Analysis, ch. 6. From memory; for one
 * term F = t². Checked on Anscombe's second set, which is a parabola.
 *
 * @throws RangeError with fewer than 5 points or fewer than 4 distinct x
 */
export function bendTest(x: readonly number[], y: readonly number[]): BendTest {
  requireSameLength("bendTest", x, y);
  requireFinite("bendTest", x, 5);
  const distinct = new Set(x).size;
  if (distinct < 4) throw new RangeError(`bendTest requires four distinct x values, got ${distinct}`);
  const meanX = mean(x);
  const fit = multipleRegression([x.map((value) => value - meanX), x.map((value) => (value - meanX) ** 2)], y);
  const square = fit.coefficients[1] ?? { estimate: 0, standardError: 0, p: 1 };
  return { fRatio: square.estimate === 0 ? 0 : (square.estimate / square.standardError) ** 2, p: square.p, curvature: square.estimate, meanX, fit };
}

/** Slope of the parabola at x, with its interval. */
export function bentSlope({ fit, meanX }: BendTest, x: number, level = 0.95): Interval & { readonly slope: number } {
  const { estimate, standardError } = linearContrast(fit, [1, 2 * (x - meanX)]);
  const half = studentFactor(level, fit.degreesOfFreedom) * standardError;
  return { slope: estimate, low: estimate - half, high: estimate + half };
}

/**
 * Height of the parabola at x, with the interval of the mean there.
 *
 * @param xs the x it was fitted to
 */
export function bentHeight({ fit, meanX }: BendTest, xs: readonly number[], x: number, level = 0.95): Interval & { readonly y: number } {
  const u = x - meanX;
  const meanSquare = mean(xs.map((value) => (value - meanX) ** 2));
  const [slope, square] = fit.coefficients.map(({ estimate }) => estimate);
  const y = (fit.intercept?.estimate ?? 0) + (slope ?? 0) * u + (square ?? 0) * u ** 2;
  const apart = linearContrast(fit, [u, u ** 2 - meanSquare]).standardError;
  const half = studentFactor(level, fit.degreesOfFreedom) * Math.hypot(apart, fit.residualStandardDeviation / Math.sqrt(xs.length));
  return { y, low: y - half, high: y + half };
}

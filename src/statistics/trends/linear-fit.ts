import { studentTwoSided } from "../distributions/student-t.js";
import { requireFinite, requireSameLength } from "../numerics/arguments.js";
import { sumOfSquares } from "../numerics/sums.js";
import { mean } from "../samples/sample.js";

/** A straight line through points by least squares, with what its intervals need. */
export interface LinearFit {
  readonly count: number;
  readonly slope: number;
  readonly intercept: number;
  readonly slopeStandardError: number;
  readonly interceptStandardError: number;
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
  /** Two-sided p of a slope of zero. */
  readonly slopeP: number;
  readonly meanX: number;
  /** Σ (x − mean)². */
  readonly sumSquaresX: number;
  readonly residuals: readonly number[];
}

/**
 * Ordinary least squares y = intercept + slope × x.
 *
 * Source: NIST/SEMATECH e-Handbook 4.1.4.1 and the StRD definitions; certified values of Norris. Published.
 *
 * @returns in y's unit, slope in y's unit per x's unit. When all y are equal: slope 0, r² 0, p 1.
 * @throws RangeError with fewer than 3 points or a single distinct x
 */
export function linearFit(x: readonly number[], y: readonly number[]): LinearFit {
  requireSameLength("linearFit", x, y);
  requireFinite("linearFit", x, 3);
  requireFinite("linearFit", y, 3);
  if (new Set(x).size < 2) throw new RangeError("linearFit requires two distinct x values, got 1");
  const meanX = mean(x);
  const meanY = mean(y);
  const sumSquaresX = sumOfProducts(x, meanX, x, meanX);
  const slope = sumOfProducts(x, meanX, y, meanY) / sumSquaresX;
  const residuals = y.map((value, i) => value - meanY - slope * ((x[i] ?? 0) - meanX));
  return withErrors(residuals, { slope, meanX, meanY, sumSquaresX, sumSquaresY: sumOfProducts(y, meanY, y, meanY) });
}

interface Line {
  readonly slope: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly sumSquaresX: number;
  readonly sumSquaresY: number;
}

function withErrors(residuals: readonly number[], line: Line): LinearFit {
  const count = residuals.length;
  const degreesOfFreedom = count - 2;
  const sumSquaresResidual = sumOfSquares(residuals);
  const residualStandardDeviation = Math.sqrt(sumSquaresResidual / degreesOfFreedom);
  const slopeStandardError = residualStandardDeviation / Math.sqrt(line.sumSquaresX);
  return {
    count,
    slope: line.slope,
    intercept: line.meanY - line.slope * line.meanX,
    slopeStandardError,
    interceptStandardError: residualStandardDeviation * Math.sqrt(1 / count + line.meanX ** 2 / line.sumSquaresX),
    residualStandardDeviation,
    degreesOfFreedom,
    rSquared: line.sumSquaresY === 0 ? 0 : Math.max(0, 1 - sumSquaresResidual / line.sumSquaresY),
    slopeP: line.slope === 0 ? 1 : studentTwoSided(line.slope / slopeStandardError, degreesOfFreedom),
    meanX: line.meanX,
    sumSquaresX: line.sumSquaresX,
    residuals,
  };
}

function sumOfProducts(a: readonly number[], meanA: number, b: readonly number[], meanB: number): number {
  return a.reduce((total, value, i) => total + (value - meanA) * ((b[i] ?? 0) - meanB), 0);
}

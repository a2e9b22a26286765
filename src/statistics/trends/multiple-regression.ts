import { fUpperTail } from "../distributions/f-ratio.js";
import { studentTwoSided } from "../distributions/student-t.js";
import { requireFinite, requireSameLength } from "../numerics/arguments.js";
import { solveLeastSquares, varianceShare, type LeastSquares } from "../numerics/householder.js";
import { dot, sumOfSquares } from "../numerics/sums.js";
import { mean } from "../samples/sample.js";

export interface Coefficient {
  readonly estimate: number;
  readonly standardError: number;
  /** Two-sided p of a coefficient of zero. */
  readonly p: number;
}

export interface MultipleFit {
  /** Undefined when fitted through the origin. */
  readonly intercept: Coefficient | undefined;
  /** One a column, in their order. */
  readonly coefficients: readonly Coefficient[];
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  /** Without an intercept the total is taken about zero, as NIST does. */
  readonly rSquared: number;
  /** Of all columns together; Infinity for an exact fit. */
  readonly fRatio: number;
  readonly p: number;
  readonly residuals: readonly number[];
  /** How the estimates vary together: covariance = σ² Σ root × rootᵀ; read by `linearContrast`. */
  readonly covarianceRoots: readonly (readonly number[])[];
}

/**
 * Least squares on several columns, by Householder reflections of columns centred on their means
 * (with an intercept) and scaled.
 *
 * Source: NIST StRD linear regression, definitions and certified values. Published.
 *
 * @param columns one array a predictor, each as long as `y`
 * @throws RangeError when a column is a combination of the others (named by its number from 0),
 *   or when there are not more points than coefficients
 */
export function multipleRegression(
  columns: readonly (readonly number[])[],
  y: readonly number[],
  { intercept = true }: { readonly intercept?: boolean } = {},
): MultipleFit {
  requireFinite("multipleRegression", y, columns.length + (intercept ? 2 : 1));
  if (columns.length === 0) throw new RangeError("multipleRegression requires at least one column");
  for (const column of columns) {
    requireSameLength("multipleRegression", column, y);
    requireFinite("multipleRegression", column);
  }
  const centers = columns.map((column) => (intercept ? mean(column) : 0));
  const centerY = intercept ? mean(y) : 0;
  const centred = columns.map((column, j) => column.map((value) => value - (centers[j] ?? 0)));
  const centredY = y.map((value) => value - centerY);
  const solved = solveLeastSquares(centred, centredY);
  const total = sumOfSquares(centredY);
  return assemble(solved, { total, count: y.length, center: intercept ? { centers, centerY } : undefined });
}

interface Setting {
  readonly total: number;
  readonly count: number;
  readonly center: { readonly centers: readonly number[]; readonly centerY: number } | undefined;
}

function assemble(solved: LeastSquares, { total, count, center }: Setting): MultipleFit {
  const columnCount = solved.solution.length;
  const degreesOfFreedom = count - columnCount - (center === undefined ? 0 : 1);
  const residual = sumOfSquares(solved.residuals);
  const variance = residual / degreesOfFreedom;
  const judge = (estimate: number, spread: number): Coefficient => coefficient(estimate, Math.sqrt(variance * spread), degreesOfFreedom);
  const fRatio = total === 0 ? 0 : Math.max(0, total - residual) / columnCount / variance;
  return {
    intercept: center && judge(interceptOf(solved, center), 1 / count + varianceShare(solved, center.centers)),
    coefficients: solved.solution.map((estimate, j) => judge(estimate, sumOfSquares(solved.inverseTriangle.map((root) => root[j] ?? 0)))),
    residualStandardDeviation: Math.sqrt(variance),
    degreesOfFreedom,
    rSquared: total === 0 ? 0 : Math.max(0, 1 - residual / total),
    fRatio,
    p: fUpperTail(fRatio, columnCount, degreesOfFreedom),
    residuals: solved.residuals,
    covarianceRoots: solved.inverseTriangle,
  };
}

/**
 * Estimate and standard error of Σ weight × coefficient (the intercept left out).
 *
 * Source: GUM-style linear combination, textbook. From memory; checked on the judge example.
 */
export function linearContrast(fit: MultipleFit, weights: readonly number[]): Coefficient {
  requireSameLength("linearContrast", weights, fit.coefficients);
  const estimate = dot(fit.coefficients.map((term) => term.estimate), weights);
  const spread = varianceShare({ inverseTriangle: fit.covarianceRoots }, weights);
  return coefficient(estimate, fit.residualStandardDeviation * Math.sqrt(spread), fit.degreesOfFreedom);
}

function coefficient(estimate: number, standardError: number, degreesOfFreedom: number): Coefficient {
  const p = estimate === 0 ? 1 : studentTwoSided(estimate / standardError, degreesOfFreedom);
  return { estimate, standardError, p };
}

function interceptOf(solved: LeastSquares, { centers, centerY }: { readonly centers: readonly number[]; readonly centerY: number }): number {
  return centerY - dot(solved.solution, centers);
}

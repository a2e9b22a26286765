import { dot, sumOfSquares } from "./sums.js";

/**
 * Least squares by Householder reflections on columns scaled to unit length. It keeps the digits
 * that the normal equations square away.
 *
 * Source: Golub & Van Loan, Matrix Computations, 5.1 to 5.3. From memory; checked against
 * NIST StRD Filip, Longley and Wampler1.
 */

/** A column whose part not explained by those before it is shorter than this share of it counts as a combination of them. */
const dependenceShare = 1e-12;

export interface LeastSquares {
  readonly solution: readonly number[];
  /** Inverse of the triangle, one array per column; the rows' squared lengths are the variances of the solution over σ². */
  readonly inverseTriangle: readonly (readonly number[])[];
  readonly residuals: readonly number[];
}

/**
 * Minimises ‖y − Σ column × solution‖.
 *
 * @param columns at least one, each as long as `y`, no more of them than values
 * @throws RangeError naming the first column (from 0) that is a combination of those before it
 */
export function solveLeastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const lengths = columns.map(norm);
  const dead = lengths.indexOf(0);
  if (dead >= 0) throw new RangeError(`solveLeastSquares: column ${dead} is all zero`);
  const scaled = columns.map((column, j) => column.map((value) => value / (lengths[j] ?? 1)));
  const { triangle, reflections } = factorise(scaled);
  const rotated = reflections.reduce<number[]>(reflect, [...y]);
  const unscale = (vector: readonly number[]): number[] => vector.map((value, j) => value / (lengths[j] ?? 1));
  const solution = unscale(backSubstitute(triangle, rotated.slice(0, columns.length)));
  const inverseTriangle = columns.map((_, k) => unscale(backSubstitute(triangle, columns.map((_, j) => (j === k ? 1 : 0)))));
  return { solution, inverseTriangle, residuals: residualsOf(rotated, columns.length, reflections) };
}

/** wᵀ (XᵀX)⁻¹ w: the variance over σ² of Σ weight × solution. */
export function varianceShare({ inverseTriangle }: Pick<LeastSquares, "inverseTriangle">, weights: readonly number[]): number {
  return sumOfSquares(inverseTriangle.map((root) => dot(root, weights)));
}

interface Factors {
  readonly triangle: readonly (readonly number[])[];
  readonly reflections: readonly (readonly number[])[];
}

/** The triangle is stored by columns; entries below the diagonal are dropped. */
function factorise(columns: readonly (readonly number[])[]): Factors {
  let work = columns.map((column) => [...column]);
  const reflections: number[][] = [];
  const triangle: number[][] = [];
  for (const k of columns.keys()) {
    const mirror = mirrorOf(work[k] ?? [], k);
    reflections.push(mirror);
    work = work.map((column, j) => (j < k ? column : reflect(column, mirror)));
    triangle.push((work[k] ?? []).slice(0, k + 1));
  }
  return { triangle, reflections };
}

function mirrorOf(column: readonly number[], k: number): number[] {
  const mirror = column.map((value, i) => (i < k ? 0 : value));
  const length = norm(mirror);
  if (length < dependenceShare) throw new RangeError(`solveLeastSquares: column ${k} is a combination of the columns before it`);
  const pivot = mirror[k] ?? 0;
  mirror[k] = pivot + (pivot < 0 ? -length : length);
  return mirror;
}

function reflect(vector: readonly number[], mirror: readonly number[]): number[] {
  const factor = (2 * dot(vector, mirror)) / dot(mirror, mirror);
  return vector.map((value, i) => value - factor * (mirror[i] ?? 0));
}

function backSubstitute(triangle: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rest = [...right];
  for (let k = triangle.length - 1; k >= 0; k -= 1) {
    const column = triangle[k] ?? [];
    const value = (rest[k] ?? 0) / (column[k] ?? 1);
    rest[k] = value;
    for (let i = 0; i < k; i += 1) rest[i] = (rest[i] ?? 0) - value * (column[i] ?? 0);
  }
  return rest;
}

/** Rotated back from the part of `y` that no column reaches, so they are orthogonal to every column. */
function residualsOf(rotated: readonly number[], reached: number, reflections: readonly (readonly number[])[]): number[] {
  const rest = rotated.map((value, i) => (i < reached ? 0 : value));
  return reflections.reduceRight<number[]>(reflect, rest);
}

function norm(vector: readonly number[]): number {
  return Math.sqrt(sumOfSquares(vector));
}

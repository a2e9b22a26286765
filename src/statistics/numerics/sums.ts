/** Sums over lists of numbers, in order, without correction: callers take large common parts off first. */

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

export function sumOfSquares(values: readonly number[]): number {
  return values.reduce((total, value) => total + value * value, 0);
}

/** Σ a × b; both as long as `a`. */
export function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((total, value, i) => total + value * (b[i] ?? 0), 0);
}

/** A distribution on whole numbers: value → probability (or weight). */
export type Discrete = ReadonlyMap<number, number>;

/** Distribution of the sum of two independent values. */
export function addIndependent(a: Discrete, b: Discrete): Discrete {
  // Summed in an array: a map entry for each of the products would take most of the time.
  const values = [...a];
  const [lowA, lowB] = [least(a), least(b)];
  const sums = new Float64Array(greatest(a) - lowA + greatest(b) - lowB + 1);
  for (const [y, py] of b) {
    const shift = y - lowB - lowA;
    for (const [x, px] of values) sums[x + shift] = (sums[x + shift] ?? 0) + px * py;
  }
  const total = new Map<number, number>();
  for (const [offset, p] of sums.entries()) if (p > 0) total.set(offset + lowA + lowB, p);
  return total;
}

/** P(X ≥ least); never above 1 by rounding. */
export function probabilityAtLeast(distribution: Discrete, least: number): number {
  let total = 0;
  for (const [x, p] of distribution) if (x >= least) total += p;
  return Math.min(1, total);
}

/** The same distribution of −X, or of any other function of X. */
export function mapValues(distribution: Discrete, change: (x: number) => number): Discrete {
  const changed = new Map<number, number>();
  for (const [x, p] of distribution) changed.set(change(x), (changed.get(change(x)) ?? 0) + p);
  return changed;
}

function least(distribution: Discrete): number {
  let low = Infinity;
  for (const x of distribution.keys()) low = Math.min(low, x);
  return low;
}

function greatest(distribution: Discrete): number {
  let high = -Infinity;
  for (const x of distribution.keys()) high = Math.max(high, x);
  return high;
}

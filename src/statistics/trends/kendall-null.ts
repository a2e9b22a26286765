import { addIndependent, mapValues, type Discrete } from "../numerics/discrete.js";

/**
 * The distribution of Kendall's S when the order of y has nothing to do with that of x, given the
 * ties that are there: every arrangement of the y values is equally likely.
 *
 * Source: Kendall, Rank Correlation Methods, ch. 4 and 5; the tied case as the number of
 * inversions of a multiset (product of Gaussian binomials, Stanley, Enumerative Combinatorics 1.7).
 * From memory; checked against R's counts for n 3 to 12 and against enumeration.
 */

/** Above these the exact distribution is left for the normal one. */
const mostPoints = 60;
const mostPointsTiedTwice = 12;

/** Distribution of S, or undefined when there are too many points to enumerate. */
export function kendallNull(tiesX: readonly number[], tiesY: readonly number[]): Discrete | undefined {
  const count = tiesX.reduce((total, size) => total + size, 0);
  const tiedX = tiesX.some((size) => size > 1);
  const tiedY = tiesY.some((size) => size > 1);
  if (tiedX && tiedY) return count > mostPointsTiedTwice ? undefined : tiedTwice(tiesX, tiesY);
  return count > mostPoints ? undefined : tiedOnce(tiedY ? tiesY : tiesX);
}

/**
 * Variance of S with ties on both sides.
 *
 * Source: Kendall, Rank Correlation Methods, 4.9. From memory; checked against R (anscombe_4).
 */
export function kendallVariance(tiesX: readonly number[], tiesY: readonly number[]): number {
  const n = tiesX.reduce((total, size) => total + size, 0);
  const falling = (sizes: readonly number[], fn: (t: number) => number): number => sizes.reduce((total, t) => total + fn(t), 0);
  const weighted = (t: number): number => t * (t - 1) * (2 * t + 5);
  const pairs = (t: number): number => t * (t - 1);
  const triples = (t: number): number => t * (t - 1) * (t - 2);
  const untied = (weighted(n) - falling(tiesX, weighted) - falling(tiesY, weighted)) / 18;
  const both = (falling(tiesX, pairs) * falling(tiesY, pairs)) / (2 * pairs(n));
  return untied + both + (n > 2 ? (falling(tiesX, triples) * falling(tiesY, triples)) / (9 * triples(n)) : 0);
}

/** Groups join one after the other; the inversions each brings are independent of those before. */
function tiedOnce(sizes: readonly number[]): Discrete {
  let inversions: Discrete = new Map([[0, 1]]);
  let before = 0;
  let pairs = 0;
  for (const size of sizes) {
    inversions = addIndependent(inversions, inversionsBetween(before, size));
    pairs += before * size;
    before += size;
  }
  return mapValues(inversions, (count) => pairs - 2 * count);
}

/** Inversions between two mixed groups: the Mann–Whitney distribution, built up one member at a time. */
function inversionsBetween(first: number, second: number): Discrete {
  let row: number[][] = Array.from({ length: first + 1 }, () => [1]);
  for (let t = 1; t <= second; t += 1) {
    const next: number[][] = [[1]];
    for (let m = 1; m <= first; m += 1) next.push(lastMember(next[m - 1] ?? [], row[m] ?? [], m, t));
    row = next;
  }
  return new Map((row[first] ?? []).entries());
}

/** The largest of all belongs to the first group (and is above all t of the second) or to the second. */
function lastMember(fromFirst: readonly number[], fromSecond: readonly number[], m: number, t: number): number[] {
  return Array.from({ length: m * t + 1 }, (_, u) => (m * (fromFirst[u - t] ?? 0) + t * (fromSecond[u] ?? 0)) / (m + t));
}

/** Group by group of x, every way of taking that many of the y values left over. */
function tiedTwice(tiesX: readonly number[], tiesY: readonly number[]): Discrete {
  let states = new Map([[tiesY.map(() => 0).join(), new Map([[0, 1]]) as Discrete]]);
  for (const size of tiesX) {
    const next = new Map<string, Discrete>();
    for (const [key, distribution] of states) {
      const used = key.split(",").map(Number);
      for (const choice of choices(tiesY.map((t, j) => t - (used[j] ?? 0)), size)) {
        const step = new Map([[concordance(used, choice.taken), choice.ways]]);
        const target = used.map((u, j) => u + (choice.taken[j] ?? 0)).join();
        next.set(target, merge(next.get(target), addIndependent(distribution, step)));
      }
    }
    states = next;
  }
  return normalise([...states.values()][0] ?? new Map());
}

interface Choice {
  readonly taken: readonly number[];
  readonly ways: number;
}

function choices(left: readonly number[], size: number): Choice[] {
  const [here, ...rest] = left;
  if (here === undefined) return size === 0 ? [{ taken: [], ways: 1 }] : [];
  return Array.from({ length: Math.min(here, size) + 1 }, (_, take) =>
    choices(rest, size - take).map(({ taken, ways }) => ({ taken: [take, ...taken], ways: ways * combinations(here, take) })),
  ).flat();
}

/** Pairs of a newly taken y above an earlier one, less those below. */
function concordance(used: readonly number[], taken: readonly number[]): number {
  return taken.reduce((total, take, j) => total + take * used.reduce((sum, u, k) => sum + u * Math.sign(j - k), 0), 0);
}

function merge(a: Discrete | undefined, b: Discrete): Discrete {
  const sum = new Map(a);
  for (const [x, p] of b) sum.set(x, (sum.get(x) ?? 0) + p);
  return sum;
}

function combinations(n: number, k: number): number {
  return k === 0 ? 1 : (combinations(n - 1, k - 1) * n) / k;
}

/** Weights divided by their total. */
function normalise(weights: Discrete): Discrete {
  let total = 0;
  for (const weight of weights.values()) total += weight;
  return new Map([...weights].map(([x, weight]) => [x, weight / total]));
}

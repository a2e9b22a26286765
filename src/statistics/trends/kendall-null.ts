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
const mostPoints = 40;
const mostPointsTiedTwice = 10;

/** Distribution of S, or undefined when there are too many points to enumerate. */
export function kendallNull(tiesX: readonly number[], tiesY: readonly number[]): Discrete | undefined {
  const count = tiesX.reduce((total, size) => total + size, 0);
  const tiedX = tiesX.some((size) => size > 1);
  const tiedY = tiesY.some((size) => size > 1);
  if (tiedX && tiedY) return count > mostPointsTiedTwice ? undefined : tiedTwice(tiesX, tiesY);
  return count > mostPoints ? undefined : rememberedOnce(tiedY ? tiesY : tiesX);
}

/** A season asks for the same few distributions again and again. */
const known = new Map<string, Discrete>();
const mostKnown = 500;

function rememberedOnce(sizes: readonly number[]): Discrete {
  const key = sizes.toSorted((a, b) => a - b).join();
  const held = known.get(key) ?? tiedOnce(sizes);
  if (known.size < mostKnown) known.set(key, held);
  return held;
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

/**
 * Group by group of x, every way of taking that many of the y values left over. Each state (how many
 * of each y are used) holds a row of weights over S, shifted by the most S can be.
 */
function tiedTwice(tiesX: readonly number[], tiesY: readonly number[]): Discrete {
  const most = tiesX.reduce((pairs, size, i) => pairs + size * tiesX.slice(0, i).reduce((before, other) => before + other, 0), 0);
  const start = new Float64Array(2 * most + 1).fill(1, most, most + 1);
  let states = new Map([[tiesY.map(() => 0).join(), start]]);
  for (const size of tiesX) states = addGroup(states, tiesY, size);
  const weights = [...states.values()][0] ?? start;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return new Map([...weights].flatMap((weight, i): [number, number][] => (weight > 0 ? [[i - most, weight / total]] : [])));
}

function addGroup(states: ReadonlyMap<string, Float64Array>, tiesY: readonly number[], size: number): Map<string, Float64Array<ArrayBuffer>> {
  const next = new Map<string, Float64Array<ArrayBuffer>>();
  for (const [key, weights] of states) {
    const used = key.split(",").map(Number);
    for (const { taken, ways } of choices(tiesY.map((t, j) => t - (used[j] ?? 0)), size)) {
      const target = used.map((u, j) => u + (taken[j] ?? 0)).join();
      const sums = next.get(target) ?? new Float64Array(weights.length);
      next.set(target, sums);
      const shift = concordance(used, taken);
      for (const [i, weight] of weights.entries()) if (weight > 0) sums[i + shift] = (sums[i + shift] ?? 0) + ways * weight;
    }
  }
  return next;
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

function combinations(n: number, k: number): number {
  return k === 0 ? 1 : (combinations(n - 1, k - 1) * n) / k;
}

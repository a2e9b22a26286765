import { requireFinite } from "../numerics/arguments.js";

/** Half of so many differences gives 2^17 sums a side: tens of milliseconds. */
const mostDifferences = 34;
/** Sums that differ by less than this share of Σ|d| are equal but for rounding. */
const equalShare = 1e-9;

export interface SignFlipResult {
  /** Sign patterns whose sum is at least as far from zero as the one seen. */
  readonly asExtreme: number;
  /** All patterns, 2^n. */
  readonly patterns: number;
  /** Two-sided and exact: their ratio. */
  readonly p: number;
}

/**
 * Fisher's sign-flip test of the mean difference: the scores as they are, every sign equally
 * likely when nothing changed. All 2^n patterns are counted (in two halves that meet: each half's
 * sums are listed and sorted, and pairs counted). The smallest p is 2/2^n: five tasters
 * can't reach .05.
 *
 * Source: Fisher, The Design of Experiments (1935), section 21. Published; his Darwin data give
 * 863 of 32 768 one-sided.
 *
 * @param differences one a taster, at most 34
 */
export function signFlipTest(differences: readonly number[]): SignFlipResult {
  requireFinite("signFlipTest", differences);
  const count = differences.length;
  if (count > mostDifferences) throw new RangeError(`signFlipTest enumerates at most ${mostDifferences} differences, got ${count}`);
  const sizes = differences.map(Math.abs);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const observed = Math.abs(differences.reduce((sum, d) => sum + d, 0)) - equalShare * total;
  const patterns = 2 ** count;
  const reaching = countPairsAtLeast(allSums(sizes.slice(0, count >> 1)), allSums(sizes.slice(count >> 1)), observed);
  // The sums are symmetric about zero: those at least as far below are as many.
  const asExtreme = observed <= 0 ? patterns : 2 * reaching;
  return { asExtreme, patterns, p: asExtreme / patterns };
}

/** Every Σ ± size, sorted. */
function allSums(sizes: readonly number[]): Float64Array {
  const sums = new Float64Array(2 ** sizes.length);
  let filled = 1;
  for (const size of sizes) {
    for (let i = 0; i < filled; i += 1) {
      const sum = sums[i] ?? 0;
      sums[i] = sum - size;
      sums[i + filled] = sum + size;
    }
    filled *= 2;
  }
  return sums.sort();
}

/** Pairs, one from each sorted list, whose sum is `least` or more. */
function countPairsAtLeast(rising: Float64Array, other: Float64Array, least: number): number {
  let pairs = 0;
  let from = other.length;
  for (const sum of rising) {
    while (from > 0 && sum + (other[from - 1] ?? 0) >= least) from -= 1;
    pairs += other.length - from;
  }
  return pairs;
}

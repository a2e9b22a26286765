import { sumOfSquares } from "../numerics/sums.js";

/**
 * Friedman's exact distribution: each judge's ranks, ties included, in every order alike.
 * Judges are added one at a time; since the samples are alike under the null, only the sorted rank
 * sums are kept, with their probabilities.
 *
 * Source: Friedman, JASA 32 (1937); the enumeration after Hollander & Wolfe, ch. 7. From memory;
 * checked against R's exact points (friedman_exact_critical.csv).
 */

/**
 * Judges up to which the count takes about 50 ms, by number of samples from 2 on; none above 6.
 * Half ranks make more different sums.
 */
const mostJudges = { untied: [200, 60, 18, 8, 4], tied: [200, 60, 18, 6, 4] } as const;

/**
 * P(Σ R² ≥ that of the table), R the rank sums, or undefined when the panel is too large to enumerate.
 *
 * @param ranks one row a judge; mid-ranks allowed
 */
export function friedmanExactP(ranks: readonly (readonly number[])[]): number | undefined {
  const samples = ranks[0]?.length ?? 0;
  const tied = ranks.some((row) => new Set(row).size < samples);
  if (ranks.length > (mostJudges[tied ? "tied" : "untied"][samples - 2] ?? 0)) return undefined;
  // Doubled mid-ranks are whole numbers.
  const doubled = ranks.map((row) => row.map((rank) => 2 * rank));
  const base = 2 * samples * ranks.length + 1;
  let states = new Map<number, number>([[0, 1]]);
  for (const [judges, row] of doubled.slice(0, -1).entries()) {
    states = addJudge(states, distinctOrders(row), { base, total: judges * samples * (samples + 1) });
  }
  const coding = { base, total: (ranks.length - 1) * samples * (samples + 1) };
  return Math.min(1, tailWithLastJudge(states, distinctOrders(doubled.at(-1) ?? []), coding, sumOfSquares(columnSums(doubled))));
}

/**
 * How sorted sums become one number: digits of this base, the last sum left out since all add up to the total.
 * Keys stay below 2³⁰, where a map of numbers is fast.
 */
interface Coding {
  readonly base: number;
  readonly total: number;
}

function addJudge(states: ReadonlyMap<number, number>, orders: readonly (readonly number[])[], coding: Coding): Map<number, number> {
  const next = new Map<number, number>();
  const samples = orders[0]?.length ?? 0;
  const sums = new Array<number>(samples).fill(0);
  for (const [key, probability] of states) {
    const before = decode(key, samples, coding);
    const share = probability / orders.length;
    for (const order of orders) {
      for (let j = 0; j < samples; j += 1) sums[j] = (before[j] ?? 0) + (order[j] ?? 0);
      const target = encodeSorted(sums, coding.base);
      next.set(target, (next.get(target) ?? 0) + share);
    }
  }
  return next;
}

/** The last judge's sums need no sorting and no list: they only have to reach the one observed. */
function tailWithLastJudge(states: ReadonlyMap<number, number>, orders: readonly (readonly number[])[], coding: Coding, least: number): number {
  let tail = 0;
  for (const [key, probability] of states) {
    const before = decode(key, orders[0]?.length ?? 0, coding);
    let reaching = 0;
    for (const order of orders) {
      let squares = 0;
      for (let j = 0; j < order.length; j += 1) squares += ((before[j] ?? 0) + (order[j] ?? 0)) ** 2;
      if (squares >= least) reaching += 1;
    }
    tail += (probability * reaching) / orders.length;
  }
  return tail;
}

/** Every different order of the row's values; each stands for as many permutations. */
function distinctOrders(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]];
  return [...new Set(values)].flatMap((first) =>
    distinctOrders(values.toSpliced(values.indexOf(first), 1)).map((rest) => [first, ...rest]),
  );
}

function encodeSorted(sums: number[], base: number): number {
  // Insertion sort: six values at most.
  for (let i = 1; i < sums.length; i += 1) {
    const value = sums[i] ?? 0;
    let j = i - 1;
    for (; j >= 0 && (sums[j] ?? 0) > value; j -= 1) sums[j + 1] = sums[j] ?? 0;
    sums[j + 1] = value;
  }
  let key = 0;
  for (let j = 0; j < sums.length - 1; j += 1) key = key * base + (sums[j] ?? 0);
  return key;
}

function decode(key: number, samples: number, { base, total }: Coding): number[] {
  const sums = new Array<number>(samples).fill(0);
  let [rest, last] = [key, total];
  for (let j = samples - 2; j >= 0; j -= 1) {
    const sum = rest % base;
    sums[j] = sum;
    last -= sum;
    rest = (rest - sum) / base;
  }
  sums[samples - 1] = last;
  return sums;
}

function columnSums(rows: readonly (readonly number[])[]): number[] {
  return (rows[0] ?? []).map((_, j) => rows.reduce((total, row) => total + (row[j] ?? 0), 0));
}


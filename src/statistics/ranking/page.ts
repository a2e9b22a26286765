import { normalCdf } from "../distributions/normal.js";
import { addIndependent, probabilityAtLeast, type Discrete } from "../numerics/discrete.js";
import { rankRows, type RankedTable } from "./ranked-table.js";

export interface PageResult {
  /** L = Σ place × rank sum. */
  readonly statistic: number;
  /** One-sided: the chance of so rising an order. */
  readonly p: number;
  /** Exact up to 8 samples and 20 judges, ties included; else by the normal distribution. */
  readonly exact: boolean;
}

const mostSamples = 8;
const mostJudges = 20;

/**
 * Page's test of an order fixed beforehand, such as rising doses: columns in the order in which the
 * ranks are expected to rise.
 *
 * Source: Page, JASA 58 (1963). Published table, recomputed; one encyclopedia's copy prints "56 for
 * 4, 54 for 5" judges of 3 samples at 5 %: 54 belongs to 4 judges, 66 to 5.
 *
 * @param rows one a judge, scores or ranks, ranked inside the row
 */
export function pageTest(rows: readonly (readonly number[])[]): PageResult {
  const table = rankRows("pageTest", rows);
  const statistic = table.rankSums.reduce((total, sum, j) => total + (j + 1) * sum, 0);
  const exact = table.samples <= mostSamples && table.judges <= mostJudges;
  return { statistic, p: exact ? exactTail(table, statistic) : normalTail(table, statistic), exact };
}

function exactTail(table: RankedTable, statistic: number): number {
  // Doubled mid-ranks are whole numbers; judges with the same ties share one distribution.
  const known = new Map<string, Discrete>();
  let total: Discrete = new Map([[0, 1]]);
  for (const ranks of table.ranks) {
    const doubled = ranks.map((rank) => 2 * rank).sort((a, b) => a - b);
    const key = doubled.join();
    const judge = known.get(key) ?? weightedOrders(doubled);
    known.set(key, judge);
    total = addIndependent(total, judge);
  }
  return probabilityAtLeast(total, 2 * statistic);
}

/** Distribution of Σ place × value over all orders of the values: places filled one by one, by set of values used. */
function weightedOrders(values: readonly number[]): Discrete {
  let states = new Map<number, Discrete>([[0, new Map([[0, 1]])]]);
  for (let place = 1; place <= values.length; place += 1) {
    const next = new Map<number, Map<number, number>>();
    for (const [used, sums] of states) {
      for (const [index, value] of values.entries()) {
        if (used & (1 << index)) continue;
        const target = next.get(used | (1 << index)) ?? new Map<number, number>();
        next.set(used | (1 << index), target);
        const share = 1 / (values.length - place + 1);
        for (const [sum, p] of sums) target.set(sum + place * value, (target.get(sum + place * value) ?? 0) + p * share);
      }
    }
    states = next;
  }
  return states.get((1 << values.length) - 1) ?? new Map();
}

/** Variance given the ties: each judge's is Σ (place − mean)² × Σ (rank − mean)² / (P − 1). */
function normalTail({ judges, samples, ranks }: RankedTable, statistic: number): number {
  const center = (samples + 1) / 2;
  const placeSpread = (samples * (samples ** 2 - 1)) / 12;
  const rankSpread = ranks.flat().reduce((sum, rank) => sum + (rank - center) ** 2, 0);
  const variance = (placeSpread * rankSpread) / (samples - 1);
  if (variance === 0) return 1;
  return normalCdf(-(statistic - judges * samples * center ** 2) / Math.sqrt(variance));
}

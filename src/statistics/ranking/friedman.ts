import { chiSquareUpperTail } from "../distributions/chi-square.js";
import { normalUpperQuantile } from "../distributions/normal.js";
import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { tieSizes } from "../samples/ties.js";
import { friedmanExactP } from "./friedman-null.js";
import { rankRows, type RankedTable } from "./ranked-table.js";

export interface FriedmanResult {
  /** One a sample; low ranks belong to low numbers. */
  readonly rankSums: readonly number[];
  /** Corrected for ties. */
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  /** Exact where the panel is small enough to enumerate, else by chi-square. */
  readonly p: number;
  readonly exact: boolean;
  readonly chiSquareP: number;
}

/**
 * Friedman's test: do the samples' ranks differ more than chance would make them?
 * Ranking shows order, not the size of a difference.
 *
 * Source: ISO 8587:2006 (statistic and tie correction). Published.
 *
 * @param rows one a judge, scores or ranks, ranked inside the row
 * @throws RangeError when every judge ties everything
 */
export function friedmanTest(rows: readonly (readonly number[])[]): FriedmanResult {
  const table = rankRows("friedmanTest", rows);
  const statistic = friedmanStatistic(table);
  const degreesOfFreedom = table.samples - 1;
  const chiSquareP = chiSquareUpperTail(statistic, degreesOfFreedom);
  const exactP = friedmanExactP(table.ranks);
  return { rankSums: table.rankSums, statistic, degreesOfFreedom, p: exactP ?? chiSquareP, exact: exactP !== undefined, chiSquareP };
}

/**
 * Least significant difference of two rank sums. Only after a significant Friedman test, and then
 * still generous: over many pairs some will pass by chance.
 *
 * Source: ISO 8587:2006, z √(J P (P + 1)/6). Published.
 */
export function rankSumDifference(judges: number, samples: number, alpha = 0.05): number {
  requireCount("rankSumDifference", "judges", judges, 2);
  requireCount("rankSumDifference", "samples", samples, 2);
  requireOpenProbability("rankSumDifference", "alpha", alpha);
  return normalUpperQuantile(alpha / 2) * Math.sqrt((judges * samples * (samples + 1)) / 6);
}

function friedmanStatistic({ judges, samples, ranks, rankSums }: RankedTable): number {
  const expected = (judges * (samples + 1)) / 2;
  const spread = rankSums.reduce((total, sum) => total + (sum - expected) ** 2, 0);
  const ties = ranks.flatMap(tieSizes).reduce((total, size) => total + size ** 3 - size, 0);
  const untied = 1 - ties / (judges * samples * (samples ** 2 - 1));
  if (untied <= 0) throw new RangeError("friedmanTest requires a judge who does not tie everything");
  return (12 * spread) / (judges * samples * (samples + 1)) / untied;
}

import type { Batch, RankRow } from "../records/index.js";
import { friedmanTest, pageTest } from "../statistics/index.js";
import { DESCRIBED_ONLY } from "./tasting-limits.js";
import type { RankingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Ranking is for three samples or more; two are a pair. */
const LEAST_SAMPLES = 3;

/** What the ranks add up to, and whether they agree beyond chance; tasters who left a sample out don't count. */
export function rankingReport(rows: readonly RankRow[], tasting: Tasting): RankingReport | undefined {
  const samples = tasting.order ?? [...new Set(rows.map(({ sample }) => sample))];
  if (samples.length < LEAST_SAMPLES) return undefined;
  const ranks = completeRanks(rows, samples);
  if (ranks.length === 0) return undefined;
  const sums = samples.map((sample, column) => ({ sample, sum: ranks.reduce((total, row) => total + (row[column] ?? 0), 0) }));
  return { tasters: ranks.length, sums, ...tested(ranks, tasting.order !== undefined) };
}

function tested(ranks: readonly (readonly number[])[], ordered: boolean): Pick<RankingReport, "p" | "exact" | "ordered"> {
  const untied = ranks.some((row) => new Set(row).size > 1);
  if (ranks.length <= DESCRIBED_ONLY || !untied) return {};
  const { p, exact } = friedmanTest(ranks);
  if (!ordered) return { p, exact };
  return { p, exact, ordered: orderedTest(ranks) };
}

/** Page's test both ways, doubled: rank 1 may stand for the most or for the least. */
function orderedTest(ranks: readonly (readonly number[])[]): NonNullable<RankingReport["ordered"]> {
  const up = pageTest(ranks);
  const down = pageTest(ranks.map((row) => [...row].reverse()));
  const rising = up.p <= down.p;
  return { p: Math.min(1, 2 * Math.min(up.p, down.p)), exact: up.exact && down.exact, rising };
}

/** One row a taster, one column a sample. */
function completeRanks(rows: readonly RankRow[], samples: readonly string[]): number[][] {
  const tasters = [...new Set(rows.map(({ taster }) => taster))];
  return tasters.flatMap((taster) => {
    const ranks = samples.flatMap((sample) => rows.find((row) => row.taster === taster && row.sample === sample)?.rank ?? []);
    return ranks.length === samples.length ? [ranks] : [];
  });
}

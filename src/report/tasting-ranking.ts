import type { Batch, RankRow } from "../records/index.js";
import { friedmanTest, pageTest, rankSumDifference } from "../statistics/index.js";
import { DESCRIBED_ONLY, SHOWN_AT } from "./tasting-limits.js";
import type { RankingReport, RankSum } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Ranking is for three samples or more; two are a pair. */
const LEAST_SAMPLES = 3;

/** What the ranks add up to, and whether they agree beyond chance; tasters who left a sample out don't count. */
export function rankingReport(rows: readonly RankRow[], tasting: Tasting): RankingReport | undefined {
  const samples = tasting.order ?? [...new Set(rows.map(({ sample }) => sample))];
  if (samples.length < LEAST_SAMPLES) return undefined;
  const ranks = completeRanks(rows, samples);
  if (ranks.length === 0) return undefined;
  const sums = samples.map((sample, column) => rankSum(sample, ranks.map((row) => row[column] ?? 0)));
  return { tasters: ranks.length, sums, ...tested(ranks, tasting.order !== undefined) };
}

function rankSum(sample: string, ranks: readonly number[]): RankSum {
  const places = [...new Set(ranks)].toSorted((one, other) => one - other)
    .map((rank) => ({ rank, tasters: ranks.filter((each) => each === rank).length }));
  return { sample, sum: ranks.reduce((total, rank) => total + rank, 0), places };
}

function tested(ranks: readonly (readonly number[])[], ordered: boolean): Pick<RankingReport, "p" | "exact" | "ordered" | "leastDifference"> {
  const untied = ranks.some((row) => new Set(row).size > 1);
  if (ranks.length <= DESCRIBED_ONLY || !untied) return {};
  const { p, exact } = friedmanTest(ranks);
  return {
    p, exact,
    ...(p <= SHOWN_AT ? { leastDifference: rankSumDifference(ranks.length, ranks[0]?.length ?? 0) } : {}),
    ...(ordered ? { ordered: orderedTest(ranks) } : {}),
  };
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

import { pooledReports } from "./pooled.js";
import { groupReport } from "./season-group-report.js";
import { batchSummary, inBrewOrder } from "./season-rows.js";
import { relationReport } from "./season-relation-report.js";
import { seasonQuestions } from "./season-questions.js";
import { seriesReport } from "./season-series.js";
import { seasonSummary } from "./season-summary.js";
import { counted } from "./season-words.js";
import type { BatchReport, SeasonReport } from "./types.js";

/**
 * What a season shows that one batch can't: figures in brew order, one thing against another, and
 * tastings pooled. All that is tested on the page, over time and against each other, shares one chance of
 * a false claim, so that noise alone seldom claims anything.
 *
 * @param batches of the season; their order here plays no part
 */
export function seasonReport(name: string, slug: string, batches: readonly BatchReport[]): SeasonReport {
  const ordered = inBrewOrder(batches);
  const [first] = ordered;
  const held = first === undefined ? undefined : remembered.get(first);
  if (held !== undefined && held.report.season === name && held.report.slug === slug && sameBatches(held.ordered, ordered)) return held.report;
  const report = computeSeason(name, slug, ordered);
  if (first !== undefined) remembered.set(first, { ordered, report });
  return report;
}

/** A season none of whose batches changed gives the same report object again. */
const remembered = new WeakMap<BatchReport, { readonly ordered: readonly BatchReport[]; readonly report: SeasonReport }>();

function sameBatches(one: readonly BatchReport[], other: readonly BatchReport[]): boolean {
  return one.length === other.length && one.every((batch, index) => batch === other[index]);
}

function computeSeason(name: string, slug: string, ordered: readonly BatchReport[]): SeasonReport {
  const { figures, pairs, compared, family } = seasonQuestions(ordered);
  const series = figures.map((figure) => seriesReport(figure, family));
  const relations = pairs.map((pair) => relationReport(pair, family));
  const groups = compared.map((each) => groupReport(each, family));
  const pooled = pooledReports(ordered);
  const told = { batches: ordered.map(({ batch }) => batch), rows: ordered.map(batchSummary), series, relations, groups, pooled };
  return { season: name, slug, ...told, tested: { count: family.size, says: testedSays(family.size) }, summary: seasonSummary(ordered, told, family.size) };
}

function testedSays(count: number): string {
  if (count === 0) return "Nothing could be tested: too few batches have the figures.";
  return `${counted(count, "question was", "questions were")} put to this season's figures. Of that many some would look like an answer by chance alone, so each p is adjusted (Holm) until a season of pure chance brings forth any trend or difference at all in 5 of 100 at most. Four fifths of that chance belong to the questions fixed beforehand (what hops cost, what tasters found of the dose, whether the process drifts), the rest to all other pairs.`;
}

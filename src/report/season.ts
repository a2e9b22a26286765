import { pooledReports } from "./pooled.js";
import { adjustedTogether } from "./season-claims.js";
import { batchSummary, inBrewOrder } from "./season-rows.js";
import { relationReport } from "./season-relation-report.js";
import { seasonRelations } from "./season-relations.js";
import { seasonFigures, seriesReport } from "./season-series.js";
import { seasonSummary } from "./season-summary.js";
import type { BatchReport, SeasonReport } from "./types.js";

/**
 * What a season shows that one batch can't: figures in brew order, one thing against another, and
 * tastings pooled. All trends tested on the page, over time and against each other, share one Holm
 * family, so that noise alone seldom claims anything.
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
  const figures = seasonFigures(ordered);
  const pairs = seasonRelations(ordered);
  const family = adjustedTogether([...figures, ...pairs].flatMap(({ trend }) => trend ?? []));
  const series = figures.map((figure) => seriesReport(figure, family));
  const relations = pairs.map((pair) => relationReport(pair, family));
  const pooled = pooledReports(ordered);
  const told = { batches: ordered.map(({ batch }) => batch), rows: ordered.map(batchSummary), series, relations, pooled };
  return { season: name, slug, ...told, summary: seasonSummary(ordered, told, family.size) };
}

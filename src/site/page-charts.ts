import {
  type Chart, chartContactTemperature, chartControl, chartDiscrimination, chartFermentation, chartForest, chartGroups, chartLedger, chartPairedScores,
  chartPreference, chartRelation, chartSeasonFigure, chartVersionFigure,
} from "../charts/index.js";
import type { BatchReport, LogReport, SeasonReport, SeriesVersions, TastingReport } from "../report/index.js";
import type { UnitSystem } from "../units/index.js";
import { batchPage, seasonPage, seriesPage } from "./page-paths.js";
import { wordsFor } from "./page/use-words.js";

/** The charts of one page, not drawn yet. */
export interface PageCharts {
  /** The page's path without extension: "batches/tp-03". */
  readonly page: string;
  /** Keeps ids of different pages apart when their charts are drawn. */
  readonly prefix: string;
  readonly charts: readonly Chart[];
}

/** Which charts stand on which page. The same report gives the same charts back, without drawing up their specs again. */
export function pageCharts(log: LogReport): readonly PageCharts[] {
  const { units } = log.club;
  return [
    ...log.batches.map((batch) => ({ page: batchPage(batch.slug), prefix: batch.slug, charts: batchCharts(batch, units) })),
    ...log.seasons.map((season) => ({ page: seasonPage(season.slug), prefix: season.slug, charts: seasonCharts(season, units) })),
    ...log.series.map(({ slug, versions }) => ({ page: seriesPage(slug), prefix: slug, charts: seriesCharts(versions, units) })),
  ];
}

const remembered = new WeakMap<object, { readonly units: UnitSystem; readonly charts: readonly Chart[] }>();

function once(report: object, units: UnitSystem, draw: () => (Chart | undefined)[]): readonly Chart[] {
  const known = remembered.get(report);
  if (known?.units === units) return known.charts;
  // Written onto the chart: a copy would have its drawings drawn up.
  const charts = draw().filter((chart) => chart !== undefined).map((chart) => Object.assign(chart, { description: wordsFor(units, chart.description) }));
  remembered.set(report, { units, charts });
  return charts;
}

export function batchCharts(batch: BatchReport, units: UnitSystem): readonly Chart[] {
  const options = { batch: batch.batch, system: units };
  return once(batch, units, () => [
    batch.timeline === undefined ? undefined : chartFermentation(batch.timeline, { ...options, id: "fermentation" }),
    // A band of one addition is a number, not a picture.
    batch.dryHops.length < 2 ? undefined : chartContactTemperature(batch.dryHops, { ...options, id: "contact-temperature" }),
    batch.ledgerDetail === undefined ? undefined : chartLedger(batch.ledgerDetail, { ...options, id: "ledger" }),
    ...batch.tastings.flatMap((tasting, index) => tastingCharts(tasting, `tasting-${index + 1}`)),
  ]);
}

/** The charts of one tasting carry its number, since two tastings may ask the same. */
function tastingCharts(tasting: TastingReport, id: string): (Chart | undefined)[] {
  const named = { before: tasting.samples["before"] ?? "before", after: tasting.samples["after"] ?? "after" };
  const primary = tasting.attributes.find((attribute) => attribute.primary) ?? tasting.attributes[0];
  return [
    primary === undefined ? undefined : chartPairedScores(primary, { ...named, id: `${id}-scores` }),
    // Numbered: two attributes may shorten to one address.
    ...tasting.attributes.filter((attribute) => attribute !== primary).map((attribute, index) => chartPairedScores(attribute, { ...named, id: `${id}-scores-${index + 2}` })),
    ...countCharts(tasting, id),
    tasting.preference === undefined ? undefined : chartPreference(tasting.preference, { ...named, id: `${id}-preference` }),
  ];
}

/** Every test by count as a point and interval against chance; of several pairs the first, which the rest follow. */
function countCharts({ triangle, tetrad, duoTrio, pair }: TastingReport, id: string): (Chart | undefined)[] {
  return ([["triangle", triangle], ["tetrad", tetrad], ["duo-trio", duoTrio], ["pair", pair]] as const)
    .map(([test, count]) => (count === undefined ? undefined : chartDiscrimination(count, { test: test === "pair" && pair !== undefined ? `pair, ${pair.attribute}` : test, id: `${id}-${test}` })));
}

/** Attributes tasted once have nothing to be drawn beside. */
const LEAST_TASTINGS = 2;

export function seasonCharts(season: SeasonReport, units: UnitSystem): readonly Chart[] {
  const options = { system: units };
  const tasted = Object.values(season.pooled).filter(({ tastings }) => tastings.length >= LEAST_TASTINGS);
  return once(season, units, () => [
    ...season.series.map((series) => chartControl(series, options) ?? chartSeasonFigure(series, options)),
    ...season.relations.filter(({ onPage }) => onPage).map((relation) => chartRelation(relation, options)),
    ...season.groups.filter(({ onPage }) => onPage).map((group) => chartGroups(group, options)),
    // Numbered: two attributes may shorten to one address.
    ...tasted.map((pooled, index) => chartForest(pooled, { ...options, id: `pooled-${index + 1}` })),
  ]);
}

export function seriesCharts(versions: SeriesVersions | undefined, units: UnitSystem): readonly Chart[] {
  if (versions === undefined) return [];
  return once(versions, units, () => versions.moved.map((figure) => chartVersionFigure(figure, { system: units })));
}

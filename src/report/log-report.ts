import { slugOf, type BatchRecord, type CivilTime, type Log } from "../records/index.js";
import { batchReport, type BatchScene } from "./batch-report.js";
import { clubReport } from "./club-report.js";
import { compareBatches } from "./comparison.js";
import { comingReport } from "./competition/candidates.js";
import { comingCompetitions } from "./competition/released.js";
import { competitionResults, withCompetitions } from "./competition/with-competitions.js";
import { outlookOf } from "./outlook.js";
import { publishedRecords } from "./published-records.js";
import { seasonReport } from "./season.js";
import { inBrewOrder } from "./season-rows.js";
import { seriesVersions } from "./series-versions.js";
import { seriesTastings } from "./series-tastings.js";
import { withTastingsElsewhere } from "./tasted-elsewhere.js";
import type { BatchReport, LogReport } from "./types.js";

/** What a log is computed for. */
export interface LogReportOptions {
  /** The day the report speaks from: decides what is due and what is released. */
  readonly asOf: CivilTime;
}

/**
 * Computes a whole log: published batches, what each is compared with, seasons,
 * series and hops. A batch that isn't published leaves no trace.
 */
export function buildLogReport(log: Log, { asOf }: LogReportOptions): LogReport {
  const published = publishedRecords(log);
  const scenes = published.map((record) => rememberedScene(record, log, asOf));
  const alone = scenes.map(({ report }) => report);
  const results = competitionResults(log, published, asOf);
  const compared = scenes.map((each, index) => ({ scene: each.scene, report: withNeighbours(each, published[index]?.data.repeats, alone, index) }));
  const brewed = withCompetitions(compared, log, results);
  const reports = withTastingsElsewhere(brewed.map(({ report }) => report));
  return {
    club: clubReport(log, asOf),
    batches: [...reports].reverse(),
    seasons: groups(reports, (batch) => batch.season).map(({ name, slug, members }) => seasonReport(name, slug, members)),
    series: groups(reports, (batch) => batch.series).map(({ name, slug, members }) => {
      const versions = inBrewOrder(members);
      return { name, slug, batches: versions.map((batch) => batch.slug), versions: seriesVersions(versions), ...tastedSeries(versions) };
    }),
    hops: hopGroups(reports),
    competitions: results.map(({ report }) => report),
    coming: comingCompetitions(log, asOf).map((record) => comingReport(record, brewed)),
    leftOut: log.broken.filter(({ publish }) => publish).map(({ file, batch }) => ({ file, why: batch === undefined ? "its problems are listed by check" : `${batch}: its problems are listed by check` })),
  };
}

function tastedSeries(versions: readonly BatchReport[]): Pick<LogReport["series"][number], "tastings"> {
  const tastings = seriesTastings(versions);
  return tastings === undefined ? {} : { tastings };
}

interface Remembered {
  readonly key: readonly unknown[];
  readonly made: BatchScene;
}

const remembered = new WeakMap<BatchRecord, Remembered>();

/** A record that hasn't changed, in a log whose shared files haven't, gives the same report object again. */
function rememberedScene(record: BatchRecord, log: Log, asOf: CivilTime): BatchScene {
  const key = [log.club, log.equipment, log.styles, log.hops, log.malts, asOf.text];
  const held = remembered.get(record);
  if (held !== undefined && held.key.every((part, index) => part === key[index])) return held.made;
  const made = batchReport(record, log, asOf);
  remembered.set(record, { key, made });
  return made;
}

const completed = new WeakMap<BatchReport, { readonly before: BatchReport | undefined; readonly report: BatchReport }>();

/**
 * Adds what changed since the batch it repeats (the one it names, else the one
 * before in its series) and, while it is open, what to expect by this brewery's own batches.
 */
function withNeighbours({ scene, report }: BatchScene, repeats: string | undefined, reports: readonly BatchReport[], index: number): BatchReport {
  const before = repeats === undefined
    ? reports.slice(0, index).findLast((other) => report.series !== undefined && other.series === report.series)
    : reports.find((other) => other.batch === repeats);
  const outlook = outlookOf(scene, reports);
  const held = completed.get(report);
  if (held !== undefined && held.before === before && outlook.length === 0) return held.report;
  if (before === undefined && outlook.length === 0) return report;
  const whole = { ...report, outlook, ...(before === undefined ? {} : { comparison: compareBatches(before, report) }) };
  completed.set(report, { before, report: whole });
  return whole;
}

interface Group {
  readonly name: string;
  readonly slug: string;
  readonly members: readonly BatchReport[];
}

function groups(batches: readonly BatchReport[], nameOf: (batch: BatchReport) => string | undefined): Group[] {
  const byName = new Map<string, BatchReport[]>();
  for (const batch of batches) {
    const name = nameOf(batch);
    if (name === undefined) continue;
    const held = byName.get(name);
    if (held === undefined) byName.set(name, [batch]);
    else held.push(batch);
  }
  return [...byName].map(([name, members]) => ({ name, slug: slugOf(name), members }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function hopGroups(batches: readonly BatchReport[]): LogReport["hops"] {
  const bySlug = new Map<string, { name: string; slug: string; batches: string[] }>();
  for (const batch of batches) {
    const names = new Set([...batch.recipe.kettleHops, ...batch.recipe.dryHops].map((line) => line.what));
    for (const name of names) {
      const slug = slugOf(name);
      const held = bySlug.get(slug);
      if (held === undefined) bySlug.set(slug, { name, slug, batches: [batch.slug] });
      else held.batches.push(batch.slug);
    }
  }
  return [...bySlug.values()].sort((a, b) => (a.slug < b.slug ? -1 : 1));
}

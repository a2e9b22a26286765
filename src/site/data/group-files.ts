import type { BatchReport, CompetitionEntry, CompetitionReport } from "../../report/index.js";
import { competitionPage, seasonPage } from "../page-paths.js";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { reportKey } from "../report-key.js";
import type { SiteFile } from "../site-file.js";
import { figuresCsv } from "./batch-tables.js";
import { csvText } from "./csv.js";

/** The data of pages that tell several batches: their figures as one table, and for hops and series what belongs to them. */
export function groupFiles(site: Site): SiteFile[] {
  const { log } = site.inputs;
  const known = (slugs: readonly string[]): BatchReport[] => slugs.flatMap((slug) => site.batches.get(slug) ?? []);
  const groups = [
    ...log.hops.map((hop) => ({ ...hop, page: `hops/${hop.slug}`, batches: known(hop.batches) })),
    ...log.series.map((series) => ({ ...series, page: `series/${series.slug}`, batches: known(series.batches) })),
  ];
  return [
    ...groups.flatMap(({ page, name, batches }) => [
      textFile(site, `${page}.json`, [name, batches.map(reportKey)], () => groupJson(name, batches)),
      figuresFile(site, page, batches),
    ]),
    ...log.seasons.map(({ slug, rows }) => figuresFile(site, seasonPage(slug), known(rows.map((row) => row.slug)))),
    ...log.competitions.map((competition) => textFile(site, `${competitionPage(competition.slug)}.csv`, [competition.entries], () => entriesCsv(competition))),
    ...methodFiles(site),
  ];
}

function figuresFile(site: Site, page: string, batches: readonly BatchReport[]): SiteFile {
  return textFile(site, `${page}.csv`, [batches.map(reportKey)], () => figuresCsv(batches));
}

function groupJson(name: string, batches: readonly BatchReport[]): string {
  const told = batches.map(({ batch, title, brewed, status, brewer, style, figures, dryHops, aim, tastings }) => ({ batch, title, brewed, status, brewer, style, figures, dryHops, aim, tastings }));
  return `${JSON.stringify({ name, batches: told }, null, 1)}\n`;
}

const ENTRY_COLUMNS: readonly (readonly [name: string, value: (entry: CompetitionEntry) => string | number | undefined])[] = [
  ["entry", ({ entry }) => entry], ["flight", ({ flight }) => flight], ["style", ({ style }) => style], ["title", ({ title }) => title], ["brewer", ({ brewer }) => brewer],
  ["batch", ({ batch }) => batch?.batch], ["place", ({ place }) => place?.place], ["place_shared_by", ({ place }) => place?.shared],
  ["best_of_show", ({ bestOfShow }) => bestOfShow?.place], ["score", ({ score }) => score],
];

/** One row an entry; a cell stays empty where the competition keeps it to itself. */
function entriesCsv({ entries }: CompetitionReport): string {
  return csvText(ENTRY_COLUMNS.map(([name]) => name), entries.map((entry) => ENTRY_COLUMNS.map(([, value]) => value(entry) ?? "")));
}

/** Every relation with its formula, range and source. */
function methodFiles(site: Site): SiteFile[] {
  const { methods } = site.inputs;
  const names = ["id", "title", "subject", "formula", "unit", "range", "source", "status"];
  return [
    textFile(site, "methods/index.json", [methods], () => `${JSON.stringify(methods, null, 1)}\n`),
    textFile(site, "methods/index.csv", [methods], () => csvText(names, methods.map(({ id, title, subject, formula, output, range, source, status }) => [id, title, subject, formula, output.unit, range, source, status]))),
  ];
}

import type { BatchReport } from "../../report/index.js";
import { batchCharts } from "../page-charts.js";
import { batchCard, batchPage, chartCsvPath } from "../page-paths.js";
import { pageFile, textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { AimPart } from "../parts/aim-part.js";
import { BatchOpening } from "../parts/batch-opening.js";
import type { BatchView } from "../parts/batch-view.js";
import { ChangesPart } from "../parts/changes-part.js";
import { DryHopPart } from "../parts/dry-hop-part.js";
import { EntriesPart } from "../parts/entries-part.js";
import { HappenedPart } from "../parts/happened-part.js";
import { LedgerPart } from "../parts/ledger-part.js";
import { PackagePart } from "../parts/package-part.js";
import { RecipePart } from "../parts/recipe-part.js";
import { SharePart } from "../parts/share-part.js";
import { TastersPart } from "../parts/tasters-part.js";
import { WorkingPart } from "../parts/working-part.js";
import { reportKey } from "../report-key.js";
import type { SiteFile } from "../site-file.js";
import { figuresCsv } from "../data/batch-tables.js";
import { chartTableCsv } from "../data/chart-csv.js";
import { batchSheet } from "./batch-sheet.js";
import { brewDaySheet } from "./brew-day-sheet.js";
import { entryNotesPage } from "./entry-notes-page.js";

/** In the order a brewer tells it. */
const PARTS = [
  AimPart, HappenedPart, DryHopPart, LedgerPart, TastersPart, EntriesPart, ChangesPart, PackagePart, RecipePart, WorkingPart,
] as const;

/** A batch's page, its report as JSON, its printed sheets and the numbers of its charts. */
export function batchFiles(site: Site): SiteFile[] {
  return site.inputs.log.batches.flatMap((report) => [
    batchPageFile(site, report),
    textFile(site, `${batchPage(report.slug)}.json`, [reportKey(report)], () => `${JSON.stringify(report, null, 1)}\n`),
    textFile(site, `${batchPage(report.slug)}.csv`, [reportKey(report)], () => figuresCsv([report])),
    batchSheet(site, report, reportKey(report)),
    ...brewDaySheet(site, report, reportKey(report)),
    ...entryNotesPage(site, report, reportKey(report)),
    ...chartFiles(site, report),
  ]);
}

function batchPageFile(site: Site, report: BatchReport): SiteFile {
  const view: BatchView = { site, report, methods: site.methods };
  return pageFile(site, {
    path: `${batchPage(report.slug)}.html`,
    title: `${report.batch}: ${report.title}`,
    description: report.summary,
    card: batchCard(report.slug),
    scripts: ["assets/copy.js"],
    madeFrom: [reportKey(report), photosOf(site, report), linkedBatches(site, report)],
    content: () => (
      <article>
        <BatchOpening view={view} />
        {PARTS.map((Told, index) => <Told key={index} view={view} />)}
        <SharePart view={view} />
      </article>
    ),
  });
}

function chartFiles(site: Site, report: BatchReport): SiteFile[] {
  return batchCharts(report, site.inputs.log.club.units).map((chart) =>
    textFile(site, chartCsvPath(batchPage(report.slug), chart), [site.inputs.log.club.units, chart.table], () => chartTableCsv(chart.table)));
}

function photosOf(site: Site, report: BatchReport): unknown[] {
  return report.photos.map(({ file }) => site.inputs.photos.get(file) ?? null);
}

/** Notes with links may point at other batches: then it matters which exist. */
function linkedBatches(site: Site, report: BatchReport): string[] {
  return report.notes.includes("](") ? [...site.batches.keys()] : [];
}

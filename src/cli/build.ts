import path from "node:path";
import { type Problem, problemKinds } from "../problems/index.js";
import { type CivilTime, type Log, type RecordCache, competitionColumns, recordFields } from "../records/index.js";
import { type LogReport, buildLogReport, releaseProblems } from "../report/index.js";
import { methodAbouts } from "../science/index.js";
import { type SiteAsset, type SiteFile, pageCharts, siteAssets, siteCards, siteFiles } from "../site/index.js";
import { civilTime } from "./as-of.js";
import { usableFolder } from "./cache-folder.js";
import { type ChartDrawing, startDrawing } from "./draw-charts.js";
import type { Effects } from "./effects.js";
import type { Progress } from "./progress.js";
import { drawCards } from "./site-cards.js";
import { preparePhotos } from "./site-photos.js";
import { publishedLogs } from "./published-logs.js";
import { readLog } from "./read-log.js";
import { VERSION } from "./version.js";

export interface BuildOptions {
  /** Absolute path of the log. */
  readonly log: string;
  /** Civil time of the club's zone; without it the log's own as_of, else the clock. */
  readonly asOf?: CivilTime;
  /** Build what has no errors. */
  readonly keepGoing: boolean;
  /** What was read before: with it, only what changed is computed again. */
  readonly remembered?: RecordCache;
}

/** A log read and computed, and its site planned: nothing is written yet, and pages are rendered only when they are. */
export interface PlannedSite {
  readonly problems: readonly Problem[];
  /** What stays out of the site, and why; for --keep-going, and for photos that can't be shown. */
  readonly leftOut: readonly string[];
  /** Absent where errors in the log stop the build. */
  readonly output?: PlannedOutput;
  /** Time spent drawing charts so far, in milliseconds. */
  readonly chartMs?: () => number;
  /** What the clock said today is, where neither the log nor an option does. */
  readonly clock?: { readonly zone: string; readonly says: string };
}

export interface PlannedOutput {
  readonly pages: readonly PlannedPage[];
  readonly assets: readonly SiteAsset[];
}

/** A file that is rendered when it is written. One whose key is known already needn't be written again. */
export interface PlannedPage {
  readonly path: string;
  readonly key: string;
  readonly render: () => Promise<string>;
}

/**
 * The build, in order. Read this first: every folder of src/ is one of its stages.
 *
 * text → records → reports → photos and charts → pages; `commands/build.ts` and `preview.ts` have them written.
 */
export async function planSite(options: BuildOptions, effects: Effects, progress: Progress): Promise<PlannedSite> {
  progress.say("Reading the log");
  const { files, log, problems: found } = readLog(options.log, options.remembered);
  if (stopsBuild(log, found, options.keepGoing)) return { problems: found, leftOut: [] };

  progress.say("Computing the figures");
  const today = options.asOf ?? log.club.asOf;
  const asOf = today ?? civilTime(effects.now(), log.club.zone);
  const report = buildLogReport(log, { asOf });
  const problems = [...found, ...releaseProblems(log, asOf)];

  progress.say("Preparing photos");
  const { photos, refused } = await preparePhotos(report, files, path.join(effects.cacheFolder, "photos"));

  progress.say("Drawing cards");
  const cards = await drawCards(siteCards(report), path.join(effects.cacheFolder, "cards"));

  progress.say("Planning the pages");
  const drawing = startDrawing(pageCharts(report), await usableFolder(path.join(effects.cacheFolder, "charts")));
  const pages = siteFiles({
    log: report, version: VERSION, methods: methodAbouts, recordFields: [...recordFields(), ...competitionColumns()], problemCatalogue: problemKinds(),
    chartMarkup: drawing.markup, photos, logs: publishedLogs(log, report, files),
  });
  return {
    problems,
    leftOut: leftOut(report, refused),
    output: { pages: pages.map((page) => withCharts(page, drawing)), assets: [...siteAssets(), ...photos.values(), ...cards] },
    chartMs: drawing.spentMs,
    ...(today === undefined ? { clock: { zone: log.club.zone, says: asOf.text } } : {}),
  };
}

/** A page that is rendered once its charts are drawn. */
function withCharts(page: SiteFile, drawing: ChartDrawing): PlannedPage {
  return {
    path: page.path,
    get key() {
      return page.key;
    },
    render: async () => {
      await drawing.ready(page.path.replace(/\.html$/, ""));
      return page.render();
    },
  };
}

function stopsBuild(log: Log, problems: readonly Problem[], keepGoing: boolean): boolean {
  const hasErrors = problems.some(({ severity }) => severity === "error");
  return hasErrors && (!keepGoing || log.batches.length === 0);
}

function leftOut(report: LogReport, refusedPhotos: readonly string[]): string[] {
  return [
    ...report.leftOut.map(({ file, why }) => `${file}: ${why}`),
    ...refusedPhotos.map((file) => `${file}: not a picture that can be shown (JPEG, PNG, WebP, AVIF or GIF, at most 100 megapixels)`),
  ];
}

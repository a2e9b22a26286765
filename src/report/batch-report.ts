import { beerColor } from "../science/index.js";
import type { BatchRecord, CivilTime, Log } from "../records/index.js";
import { slugOf } from "../records/index.js";
import { aimReport } from "./aim.js";
import { cautionReports } from "./cautions.js";
import { checkReports } from "./checks/index.js";
import { dryHopReports } from "./dry-hop-rows.js";
import { computeFigure, FIGURES } from "./figures/index.js";
import { figureReport, figureWorking, isMissing, type Result } from "./known.js";
import { ledgerReport } from "./ledger.js";
import { nextSteps } from "./next-steps.js";
import { packageReports } from "./package-rows.js";
import { planRows } from "./plan-rows.js";
import { plannedFigures } from "./planned.js";
import { recipeReport } from "./recipe.js";
import { Scene } from "./scene.js";
import { styleRows } from "./style-rows.js";
import { summaryOf } from "./summary.js";
import { tastingReports } from "./tasting.js";
import { timelineReport } from "./timeline.js";
import type { BatchReport, FigureReport, FigureWorking, SwatchReport } from "./types.js";

/** A batch's report with the scene it was computed from, for what only its neighbours can add. */
export interface BatchScene {
  readonly scene: Scene;
  readonly report: BatchReport;
}

/** Everything computed of one batch alone; comparison and outlook are added where its neighbours are known. */
export function batchReport(record: BatchRecord, log: Log, asOf: CivilTime): BatchScene {
  const scene = new Scene(record, log, asOf, computeFigure);
  const { figures, missing, working } = computeFigures(scene);
  const tastings = tastingReports(record);
  const aim = aimReport(record.data, tastings);
  const planned = plannedFigures(scene);
  const checks = checkReports(scene);
  const told = {
    status: scene.status, figures, missing, planned, checks, cautions: cautionReports(scene, checks), tastings,
    recipe: recipeReport(record.data), next: nextSteps(scene),
    ...(record.data.style === undefined ? {} : { style: record.data.style }),
    ...(aim === undefined ? {} : { aim }),
  };
  const ledger = ledgerReport(scene);
  const timeline = timelineReport(scene);
  const swatch = swatchOf(figures["color"]);
  const report = {
    ...identity(record, scene),
    ...told,
    summary: summaryOf(told),
    ledger: ledger?.entries ?? [],
    ...(ledger === undefined ? {} : { ledgerDetail: ledger }),
    ...(timeline === undefined ? {} : { timeline }),
    dryHops: dryHopReports(scene),
    packages: packageReports(scene),
    styleRows: styleRows(scene, planned),
    planRows: planRows(planned, figures),
    outlook: [],
    working,
    photos: record.photos.map(({ file, alt }) => ({ file, alt })),
    notes: record.body,
    ...(swatch === undefined ? {} : { swatch }),
    assumptions: scene.instruments.assumptions,
  };
  scene.forget();
  return { scene, report };
}

function identity(record: BatchRecord, scene: Scene) {
  const { batch, title, brewed, brewer, season, series, equipment } = record.data;
  return {
    batch, slug: record.slug, title, brewed: brewed.text, file: record.file,
    ...(brewer === undefined ? {} : { brewer }),
    ...(season === undefined ? {} : { season, seasonSlug: slugOf(season) }),
    ...(series === undefined ? {} : { series, seriesSlug: slugOf(series) }),
    ...(equipment === undefined ? {} : { equipment }),
    ...(scene.packagedMoment === undefined ? {} : { packaged: scene.packagedMoment.at }),
  };
}

function computeFigures(scene: Scene) {
  const figures: Record<string, FigureReport> = {};
  const missing: Record<string, string> = {};
  const working: FigureWorking[] = [];
  for (const { id } of FIGURES) {
    const result = scene.status === "planned" && id === "potential-extract" ? NOT_WEIGHED : scene.figure(id);
    if (isMissing(result)) {
      missing[id] = result.missing;
    } else {
      figures[id] = figureReport(result);
      working.push(figureWorking(id, result));
    }
  }
  return { figures, missing, working };
}

/** What a plan's grist could give stands under what is planned. */
const NOT_WEIGHED: Result = { missing: "the grist isn't weighed out yet" };

/** A tasting glass is about this wide where the light comes through. */
const GLASS_CM = 6;

function swatchOf(color: FigureReport | undefined): SwatchReport | undefined {
  if (color === undefined || beerColor.refuses(color.value, GLASS_CM) !== undefined) return undefined;
  const { r, g, b } = beerColor(color.value, GLASS_CM);
  const hex = [r, g, b].map((part) => part.toString(16).padStart(2, "0")).join("");
  return { css: `#${hex}`, glassCm: GLASS_CM, ebc: color.value };
}

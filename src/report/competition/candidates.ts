import type { CompetitionRecord } from "../../records/index.js";
import type { BatchScene } from "../batch-report.js";
import { counted } from "../season-words.js";
import { styleRows } from "../style-rows.js";
import type { BatchEntryReport, BatchReport, CandidateReport, ComingReport } from "../types.js";
import { groupedBy } from "./flight-scores.js";
import { placeWords } from "./places.js";
import { points } from "./points.js";

/** A batch with all it was computed from and, where results are out, its earlier entries. */
export interface Brewed {
  readonly scene: BatchScene["scene"];
  readonly report: BatchReport;
}

const NO_BREWER = "no brewer recorded";

/**
 * Which batch to enter: for each brewer the batches that are in a package on the day, in an order whose every step
 * has its reason. Figures outside the style count first, then what tasters found of the aim, then freshness; nothing
 * is weighed against anything else.
 */
export function comingReport(record: CompetitionRecord, brewed: readonly Brewed[]): ComingReport {
  const day = record.data.date.date;
  const possible = brewed.filter(({ report }) => report.status !== "dumped" && report.packaged !== undefined && report.packaged.slice(0, 10) <= day);
  const byBrewer = groupedBy(possible, ({ report }) => report.brewer ?? NO_BREWER);
  return {
    name: record.data.name, slug: record.slug, date: record.data.date.text,
    brewers: [...byBrewer].sort(([a], [b]) => (a < b ? -1 : 1)).map(([brewer, own]) => ({ brewer, candidates: ranked(own.map((each) => unranked(each, record, brewed))) })),
  };
}

type Unranked = Omit<CandidateReport, "why"> & { readonly aim: number };

function unranked({ scene, report }: Brewed, record: CompetitionRecord, all: readonly Brewed[]): Unranked {
  const enter = (scene.batch.enter ?? []).find(({ competition }) => competition === record.slug);
  const style = enter?.style ?? report.style;
  const rows = styleRows(scene, {}, style);
  const count = (verdict: string): number => rows.filter((row) => row.verdict === verdict).length;
  const { packaged } = report;
  return {
    batch: report.batch, slug: report.slug, title: report.title, ...(style === undefined ? {} : { style }),
    styleRows: rows, outside: count("fail"), onLine: count("watch"), inside: count("pass"),
    ...(packaged === undefined ? {} : { packaged, daysOld: daysBetween(packaged, record.data.date.date) }),
    tasters: tastersFound(report), earlier: earlierOf(report, all), entered: enter !== undefined, aim: AIM_ORDER.indexOf(report.aim?.result ?? "can't tell"),
  };
}

/** Met stands before what can't be told, and that before what wasn't met. */
const AIM_ORDER: readonly string[] = ["met", "can't tell", "not met"];

function tastersFound({ aim, tastings }: BatchReport): string {
  if (tastings.length === 0) return "Not tasted by a panel.";
  return aim?.verdict ?? tastings[0]?.says[0] ?? "Tasted, without a result.";
}

/** Earlier results of its series, its own among them: one line a competition, in order of brew date. */
export function earlierOf(report: BatchReport, all: readonly Brewed[]): string[] {
  const series = all.filter((other) => other.report.batch === report.batch || (report.series !== undefined && other.report.series === report.series));
  const results = series.flatMap((other) => (other.report.entries ?? []).map((entry) => ({ competition: entry.competition, says: `${other.report.batch} ${resultWords(entry)}` })));
  return [...groupedBy(results, ({ competition }) => competition)].map(([competition, own]) => `${competition}: ${own.map(({ says }) => says).join("; ")}.`);
}

function resultWords({ entry: { place, score, bestOfShow }, maximum }: BatchEntryReport): string {
  return [
    place === undefined ? "without a place" : placeWords(place),
    ...(bestOfShow === undefined ? [] : [`${placeWords(bestOfShow)} in best of show`]),
    ...(score === undefined ? [] : [`${points(score)} of ${points(maximum)}`]),
  ].join(", ");
}

function ranked(own: readonly Unranked[]): CandidateReport[] {
  const order = own.toSorted((a, b) => a.outside - b.outside || a.aim - b.aim || (a.daysOld ?? 0) - (b.daysOld ?? 0) || (a.batch < b.batch ? -1 : 1));
  return order.map((candidate, index) => withReason(candidate, order[index + 1]));
}

function withReason({ aim, ...candidate }: Unranked, behind: Unranked | undefined): CandidateReport {
  return { ...candidate, why: behind === undefined ? "Nothing stands behind it." : `Before ${behind.batch}: ${stepWords({ aim, ...candidate }, behind)}.` };
}

/** The one thing that decides between two neighbours. */
function stepWords(before: Unranked, behind: Unranked): string {
  if (before.outside !== behind.outside) return `${outsideWords(before)} outside the style against ${behind.outside}`;
  if (before.aim !== behind.aim) return behind.aim === 2 ? "tasters didn't find what the other was brewed for" : "tasters found what it was brewed for, and of the other that can't be told";
  const fresher = (behind.daysOld ?? 0) - (before.daysOld ?? 0);
  return fresher > 0 ? `as far inside the style, and fresher by ${counted(fresher, "day", "days")}` : "nothing separates the two but their numbers";
}

function outsideWords({ outside }: Unranked): string {
  return outside === 0 ? "no figure" : counted(outside, "figure", "figures");
}

const DAY_MS = 86_400_000;

/** Whole civil days from one date to another. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to.slice(0, 10)}T00:00Z`) - Date.parse(`${from.slice(0, 10)}T00:00Z`)) / DAY_MS);
}

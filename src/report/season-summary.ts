import { figureEntry } from "./figure-table.js";
import { isClaimed } from "./season-claims.js";
import { quantityText } from "./season-quantities.js";
import { counted, listed, uncapitalised } from "./season-words.js";
import { movedText } from "./tasting-score-words.js";
import type { BatchReport, PooledReport, SeasonReport } from "./types.js";

type Told = Pick<SeasonReport, "series" | "relations" | "groups" | "pooled">;

/** Figures whose span the paragraph tells. */
const TOLD = ["dry-hop-dose", "dry-hop-temperature", "transfer-efficiency", "loss-total"];

/**
 * The season in one paragraph: how many batches, only those trends and lifts that the page's own
 * tables claim, and within what spans.
 *
 * @param batches in brew order
 * @param asked trends tested on the page
 */
export function seasonSummary(batches: readonly BatchReport[], told: Told, asked: number): string {
  return [countSentence(batches), ...claimSentences(told, asked), ...tastingSentence(told), ...spanSentence(told)].join(" ");
}

/** Statuses in the order a batch goes through them. */
const STATUSES = ["planned", "brewing", "fermenting", "conditioning", "packaged", "dumped"];

function countSentence(batches: readonly BatchReport[]): string {
  const [first, last] = [batches[0], batches.at(-1)];
  if (first === undefined || last === undefined) return "No batch of this season is recorded.";
  const states = STATUSES.flatMap((status) => {
    const count = batches.filter((batch) => batch.status === status).length;
    return count === 0 ? [] : [`${count} ${status}`];
  });
  const dates = first.brewed.slice(0, 10) === last.brewed.slice(0, 10) ? `on ${first.brewed.slice(0, 10)}` : `from ${first.brewed.slice(0, 10)} to ${last.brewed.slice(0, 10)}`;
  return `${counted(batches.length, "batch", "batches")} with brew dates ${dates}: ${listed(states)}.`;
}

function spanSentence({ series }: Told): string[] {
  const spans = TOLD.flatMap((id) => {
    const points = series.find(({ figure }) => figure === id)?.points ?? [];
    if (points.length < 2) return [];
    const { title, unit } = figureEntry(id);
    const values = points.map(({ value }) => value);
    const words = uncapitalised(title);
    return [`${words} from ${quantityText(Math.min(...values), unit)} to ${quantityText(Math.max(...values), unit)} (${points.length})`];
  });
  return spans.length === 0 ? [] : [`From readings, with the number of batches: ${spans.join("; ")}.`];
}

function claimSentences({ series, relations, groups }: Told, asked: number): string[] {
  if (asked === 0) return ["Too few batches have the figures to ask about any trend."];
  const claimed = [
    ...relations.filter(isClaimed).map(({ says }) => says), ...groups.filter(isClaimed).map(({ says }) => says),
    ...series.filter(isClaimed).map(({ title, says }) => `${title}: ${says}`),
  ].map(withoutTest);
  const bends = relations.flatMap(({ bend, yTitle, xTitle }) => bend?.claim === "shown" ? [`${yTitle} against ${uncapitalised(xTitle)}: ${uncapitalised(bend.says)}`] : []);
  if (claimed.length + bends.length > 0) return [...claimed, ...bends];
  return [`None of the ${counted(asked, "question", "questions")} asked is answered beyond chance.`];
}

/** A claim without its p and what follows it, which stand beside the trend's own chart. */
function withoutTest(says: string): string {
  const cut = says.indexOf("; p ");
  if (cut === -1) return says;
  const kept = says.slice(0, cut);
  return `${kept}${kept.split("(").length > kept.split(")").length ? ")" : ""}.`;
}

function tastingSentence({ pooled }: Told): string[] {
  const reports = Object.values(pooled);
  const estimated = reports.filter((report) => report.estimate !== undefined);
  if (reports.length === 0) return ["No tasting scored an attribute before and after."];
  if (estimated.length === 0) return [`Tastings of ${counted(mostTasted(reports), "batch", "batches")} are too few to pool.`];
  const told = (clear: boolean): string => listed(estimated.filter((report) => (report.clear === true) === clear).map(pooledWords));
  const moved = told(true);
  const unmoved = told(false);
  return [
    ...(moved === "" ? [] : [`From before to after, over the season's tastings together, tasters scored ${moved}.`]),
    ...(unmoved === "" ? [] : [`A change is not shown in ${unmoved}.`]),
  ];
}

function pooledWords({ attribute, estimate = 0, low = estimate, high = estimate, tastings }: PooledReport): string {
  return `${attribute} ${movedText(estimate, low, high)} (${counted(tastings.length, "batch", "batches")})`;
}

function mostTasted(reports: readonly PooledReport[]): number {
  return Math.max(...reports.map(({ tastings }) => tastings.length));
}

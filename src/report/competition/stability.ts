import { entryDifferences, findConnectedGroups, mean, type EntryDifference } from "../../statistics/index.js";
import type { EntryStability, GapReport, PlaceReport, StabilityReport } from "../types.js";
import { completeTable, type CompleteTable, type FlightScore } from "./flight-scores.js";
import { ordinal } from "./places.js";
import { listed } from "../season-words.js";
import { points } from "./points.js";

export interface Awarded {
  readonly entry: string;
  readonly place: PlaceReport;
}

export interface StabilityOptions {
  /** Best first: those with a place, in order. */
  readonly awarded: readonly Awarded[];
  /** The entry behind the last place, where scores are public. */
  readonly next?: string;
  /** Entries whose scores may be shown: a difference in points needs both. */
  readonly shown: ReadonlySet<string>;
}

/**
 * How firmly the order of a flight stands: each place recomputed with one judge left out, and the interval of
 * each difference between neighbours. Both from the scores as first written down; places stay as awarded.
 *
 * @param scores of one flight
 * @returns undefined where fewer than two judges scored all entries
 */
export function stabilityOf(scores: readonly FlightScore[], options: StabilityOptions): StabilityReport | undefined {
  const table = completeTable(scores);
  if (table === undefined || options.awarded.length === 0) return undefined;
  const entries = options.awarded.flatMap(({ entry, place }) => (table.entries.includes(entry) ? [entryStability(table, entry, place)] : []));
  const gaps = gapReports(scores, table, options);
  return { entries, gaps, says: sayStability(entries, gaps, table) };
}

function entryStability(table: CompleteTable, entry: string, { place }: PlaceReport): EntryStability {
  return {
    entry, place, byMean: placeByMean(table, entry, -1),
    without: table.judges.map((judge, column) => ({ judge, place: placeByMean(table, entry, column) })),
  };
}

/** Scores are whole or half points: means this close are equal but for rounding. */
const SAME_POINTS = 1e-9;

/** Place by the mean of the judges but one; entries of equal mean share the best. */
function placeByMean({ entries, rows }: CompleteTable, entry: string, leftOut: number): number {
  const means = rows.map((row) => mean(row.filter((_, column) => column !== leftOut)));
  const own = means[entries.indexOf(entry)] ?? 0;
  return 1 + means.filter((other) => other > own + SAME_POINTS).length;
}

function gapReports(scores: readonly FlightScore[], table: CompleteTable, { awarded, next, shown }: StabilityOptions): GapReport[] {
  const order = [...awarded.map(({ entry }) => entry), ...(next === undefined ? [] : [next])].filter((entry) => table.entries.includes(entry));
  const pairs = order.slice(1).map((second, index) => [order[index] ?? "", second] as const);
  const judged = scores.filter(({ judge }) => table.judges.includes(judge));
  if (findConnectedGroups(judged).length !== 1) return [];
  return entryDifferences(judged, pairs).map((difference, index) => gapReport(pairs[index] ?? ["", ""], difference, shown));
}

function gapReport([first, second]: readonly [string, string], { estimate, interval: { low, high } }: EntryDifference, shown: ReadonlySet<string>): GapReport {
  return { first, second, clear: low > 0, ...(shown.has(first) && shown.has(second) ? { difference: estimate, low, high } : {}) };
}

function sayStability(entries: readonly EntryStability[], gaps: readonly GapReport[], table: CompleteTable): string {
  const close = gaps.filter(({ clear }) => !clear).length;
  const smallest = gaps.map(({ low, high }) => (high ?? 0) - (low ?? 0)).find((width) => width > 0);
  const least = smallest === undefined ? "" : ` In this flight a difference under ${points(smallest / 2)} points is within the judges' own scatter.`;
  return `${sayFirst(entries, table)} ${sayGaps(close, gaps.length)}${least}`.trim();
}

function sayFirst(entries: readonly EntryStability[], table: CompleteTable): string {
  const [first] = entries;
  if (first === undefined) return "";
  const without = first.without.filter(({ place }) => place !== 1);
  const judges = `${table.judges.length} judges`;
  if (first.byMean !== 1) return `By the mean of the first scores the ${ordinal(first.place)} would have come ${ordinal(first.byMean)}; the judges agreed otherwise after talking.`;
  if (without.length === 0) return `The first place stands whichever of the ${judges} is left out.`;
  return `The first place hangs on ${listed(without.map(({ judge }) => judge))}: without, it would go to another.`;
}

function sayGaps(close: number, all: number): string {
  if (all === 0) return "";
  if (close === 0) return "Every step down the places is wider than the judges' scatter.";
  if (close === all) return all === 1 ? "The step between the two is within the judges' scatter: a close call." : "Every step down the places is within the judges' scatter: close calls all.";
  return `${close} of ${all} steps down the places ${close === 1 ? "is" : "are"} within the judges' scatter: close calls.`;
}

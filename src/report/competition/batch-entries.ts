import type { BatchRecord } from "../../records/index.js";
import type { BatchEntryReport, CompetitionEntry, CompetitionReport } from "../types.js";
import { placeWords } from "./places.js";
import { points } from "./points.js";

/** A released competition with the entries that are batches of this log. */
export interface ReleasedEntries {
  readonly report: CompetitionReport;
  /** Registration id → batch number, from the record itself. */
  readonly batches: ReadonlyMap<string, string>;
}

/**
 * A batch's entries in the competitions whose results are out. Where a competition hides handles, a batch only
 * shows its place when its own record says under `enter` that it was entered.
 */
export function batchEntries({ data }: BatchRecord, released: readonly ReleasedEntries[]): BatchEntryReport[] {
  return released.flatMap(({ report, batches }) => {
    const named = report.handles === "shown" || (data.enter ?? []).some(({ competition }) => competition === report.slug);
    if (!named) return [];
    return report.entries.filter(({ entry }) => batches.get(entry) === data.batch).map((entry) => entryOf(report, entry));
  });
}

function entryOf(report: CompetitionReport, entry: CompetitionEntry): BatchEntryReport {
  return { competition: report.name, competitionSlug: report.slug, date: report.date, maximum: report.maximum, entry, says: sayEntry(report, entry) };
}

function sayEntry({ name, maximum, flights }: CompetitionReport, { place, flight, score, bestOfShow, style }: CompetitionEntry): string {
  const size = flights.find((other) => other.flight === flight)?.entries.length;
  const table = flight === undefined ? "" : ` in flight ${flight}${size === undefined ? "" : ` of ${size}`}`;
  const result = place === undefined ? `No place${table}` : `${capital(placeWords(place))}${table}`;
  const best = bestOfShow === undefined ? "" : `, ${placeWords(bestOfShow)} in best of show`;
  const agreed = score === undefined ? "" : `, ${points(score)} of ${points(maximum)} points agreed`;
  return `${result}${best}${agreed}, at the ${name}${style === undefined ? "" : ` as ${style}`}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

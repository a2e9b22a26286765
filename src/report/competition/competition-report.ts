import type { CompetitionRecord, EntryRow } from "../../records/index.js";
import { counted } from "../season-words.js";
import type { CompetitionEntry, CompetitionReport, PlaceReport } from "../types.js";
import { bestOfShowOf } from "./best-of-show.js";
import { entryReport, entrySlugs, type Showing } from "./entry-report.js";
import { distinct, flightScores, groupedBy } from "./flight-scores.js";
import { flightReport } from "./flight-report.js";
import { placesOf } from "./places.js";
import { severityOf } from "./severity.js";

/**
 * Results of one competition. Only call it for one that is released, or for sheets that stay private.
 *
 * @param showing what may be seen; everything else isn't in the report at all
 */
export function competitionReport(record: CompetitionRecord, showing: Showing): CompetitionReport {
  const { data } = record;
  const best = bestOfShowOf(record, showing.scores);
  const entries = entryReports(record, best?.places ?? new Map<string, PlaceReport>(), showing);
  const flights = flightsOf(record.entries).map((flight) => flightReport(record, flight, entries, showing.scores));
  const severity = severityOf(flightScores(record));
  return {
    name: data.name, slug: record.slug, date: data.date.text, released: data.release?.text ?? "",
    sheet: data.sheet.map(({ section, value }) => ({ section, maximum: value })),
    maximum: data.sheet.reduce((sum, { value }) => sum + value, 0),
    agreeWithin: data.agreeWithin, feedback: data.feedback, handles: data.handles,
    says: sayCompetition(record, entries),
    entries, flights,
    ...(best === undefined ? {} : { bestOfShow: showing.scores ? best.report : withoutDecision(best.report) }),
    ...(severity === undefined ? {} : { severity }),
    notes: record.body,
  };
}

/** In the order of their names, as they are called on the day. */
export function flightsOf(entries: readonly EntryRow[]): string[] {
  return distinct(entries.flatMap(({ flight }) => (flight === undefined ? [] : [flight]))).sort((a, b) => a.localeCompare(b, "en", { numeric: true }));
}

function entryReports(record: CompetitionRecord, bestOfShow: ReadonlyMap<string, PlaceReport>, showing: Showing): CompetitionEntry[] {
  const slugs = entrySlugs(record);
  const places = flightPlaces(record);
  const finals = new Map(record.finals.map((final) => [final.code, final]));
  const sheets = groupedBy(record.scores, ({ code }) => code);
  return record.entries.map((row) => {
    const code = row.code ?? "";
    return entryReport(row, slugs.get(row.entry) ?? "", record, {
      place: places.get(code), bestOfShow: bestOfShow.get(row.entry), final: finals.get(code), sheets: sheets.get(code) ?? [],
    }, showing);
  });
}

/** Places by blind code; each flight gives its own. */
function flightPlaces({ finals, data: { places } }: CompetitionRecord): Map<string, PlaceReport> {
  return new Map([...groupedBy(finals, ({ flight }) => flight).values()].flatMap((rows) =>
    [...placesOf(rows.flatMap(({ code, score, place, decision }) => score === undefined ? [] : [{
      code, merit: score, ...(place === undefined ? {} : { place }), ...(decision === undefined ? {} : { decision }),
    }]), places)]));
}

function withoutDecision<Report extends { readonly decision?: string }>({ decision: _decision, ...rest }: Report): Omit<Report, "decision"> {
  return rest;
}

function sayCompetition(record: CompetitionRecord, entries: readonly CompetitionEntry[]): string {
  const flights = flightsOf(record.entries).length;
  const judges = distinct(record.scores.map(({ judge }) => judge)).length;
  const tables = flights === 0 ? "" : ` in ${counted(flights, "flight", "flights")}`;
  const judged = judges === 0 ? "" : `, judged blind by ${counted(judges, "judge", "judges")}`;
  return [`${counted(entries.length, "entry", "entries")}${tables}${judged}.`, sayBest(entries), sayTies(entries)].filter((part) => part !== "").join(" ");
}

function sayBest(entries: readonly CompetitionEntry[]): string {
  const best = entries.filter(({ bestOfShow }) => bestOfShow?.place === 1);
  const [only] = best;
  if (only === undefined) return "";
  if (best.length > 1) return `Best of show is tied between ${best.map(named).join(" and ")}.`;
  return `Best of show: ${named(only)}${only.style === undefined ? "" : `, ${only.style}`}.`;
}

function named({ entry, title, brewer }: CompetitionEntry): string {
  return title === undefined ? `entry ${entry}` : `${title}${brewer === undefined ? "" : ` by ${brewer}`}`;
}

function sayTies(entries: readonly CompetitionEntry[]): string {
  const tied = entries.filter(({ place }) => (place?.shared ?? 1) > 1).length;
  const settled = entries.filter(({ place }) => place?.settled === true).length;
  return [
    settled === 0 ? "" : "A tie was settled by a recorded decision.",
    tied === 0 ? "" : `${tied} entries share a place: no decision between them is recorded.`,
  ].filter((part) => part !== "").join(" ");
}

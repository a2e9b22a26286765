import type { CompetitionRecord } from "../../records/index.js";
import { counted, listed } from "../season-words.js";
import type { CompetitionEntry, FlightReport } from "../types.js";
import { agreementOf } from "./agreement.js";
import { distinct, flightScores } from "./flight-scores.js";
import { stabilityOf } from "./stability.js";

/**
 * One flight: its entries in order, how far its judges agreed and how firmly the order stands.
 *
 * @param showsScores false: nothing in it gives a score away, nor the order of entries without a place
 */
export function flightReport(record: CompetitionRecord, flight: string, all: readonly CompetitionEntry[], showsScores: boolean): FlightReport {
  const entries = inOrder(all.filter((entry) => entry.flight === flight));
  const scores = flightScores(record).filter((score) => score.flight === flight);
  const awarded = entries.flatMap(({ entry, place }) => (place === undefined ? [] : [{ entry, place }]));
  const next = showsScores ? entries[awarded.length]?.entry : undefined;
  const agreement = agreementOf(scores, record.data.agreeWithin, showsScores);
  const stability = stabilityOf(scores, { awarded, shown: new Set(entries.flatMap(({ entry, score }) => (score === undefined ? [] : [entry]))), ...(next === undefined ? {} : { next }) });
  return {
    flight, entries: entries.map(({ entry }) => entry), judges: distinct(scores.map(({ judge }) => judge)),
    ...(agreement === undefined ? {} : { agreement }), ...(stability === undefined ? {} : { stability }),
    notes: notesOf(record, flight, stability === undefined && awarded.length > 0),
  };
}

const LAST = Number.MAX_SAFE_INTEGER;

/** By place, then by the scores that may be shown: an entry that keeps its score to itself doesn't show it by where it stands. */
function inOrder(entries: readonly CompetitionEntry[]): CompetitionEntry[] {
  return entries.toSorted((a, b) => (a.place?.place ?? LAST) - (b.place?.place ?? LAST) || (b.score ?? -1) - (a.score ?? -1) || (a.entry < b.entry ? -1 : 1));
}

function notesOf(record: CompetitionRecord, flight: string, unstable: boolean): string[] {
  const own = record.entries.filter((entry) => entry.flight === flight);
  const finals = new Set(record.finals.map(({ code }) => code));
  const without = own.filter(({ code }) => code === undefined || !finals.has(code)).map(({ entry }) => entry);
  const missing = missingSheets(record, flight);
  return [
    ...(without.length === 0 ? [] : [`No agreed score is recorded for ${without.length > 6 ? counted(without.length, "entry", "entries") : listed(without)}.`]),
    ...(missing === 0 ? [] : [`${counted(missing, "score sheet is", "score sheets are")} missing, so agreement and order rest on the judges who scored every entry.`]),
    ...(unstable ? ["How firmly the order stands can't be told: fewer than two judges scored every entry."] : []),
  ];
}

/** Sheets that a judge of the flight didn't hand in. */
function missingSheets(record: CompetitionRecord, flight: string): number {
  const sheets = record.scores.filter((sheet) => sheet.flight === flight);
  const judges = new Set(sheets.map(({ judge }) => judge)).size;
  const scored = new Set(sheets.map(({ code }) => code)).size;
  return judges * scored - sheets.length;
}

import { problemAt, type Problem } from "../../../problems/index.js";
import { slugOf, type CompetitionRecord, type EntryRow, type Style } from "../../../records/index.js";
import { findConnectedGroups, seededGenerator } from "../../../statistics/index.js";
import { counted, listed } from "../../season-words.js";
import type { CompetitionDay, DayEntry, DayFlight, DayJudge } from "../../types.js";
import { bestOfShowOf } from "../best-of-show.js";
import { competitionReport, flightsOf } from "../competition-report.js";
import { assignJudges, type Table, type TooFewJudges } from "./assign-judges.js";
import { dayFiles } from "./day-files.js";
import { dealFlights, type DealtFlights, FEWEST_IN_FLIGHT, isOwn, joinFlights, MOST_IN_FLIGHT } from "./deal-flights.js";
import { drawCodes, MOST_CODES } from "./draw-codes.js";
import { pullOrder, strengthOf } from "./pull-order.js";

export type PlannedDay = { readonly day: CompetitionDay } | { readonly problems: readonly Problem[] };

/**
 * Plans a competition's day from its seed: blind codes, flights, who judges which, the order of pouring. What is
 * recorded already stays; the same record gives the same plan. What can't be done fairly is a problem, never a guess.
 */
export function planDay(record: CompetitionRecord, styles: ReadonlyMap<string, Style>): PlannedDay {
  const { seed } = record.data;
  const complete = record.entries.every(({ code, flight }) => code !== undefined && flight !== undefined);
  if (record.entries.length === 0) return refuse(record, "entries.csv", "competition/no-entries", {});
  if (seed === undefined && !complete) return refuse(record, "index.md", "competition/seed-missing", {});
  const codes = drawCodes(record.entries, seededGenerator(`${seed ?? ""} codes`));
  if (codes === undefined) return refuse(record, "entries.csv", "competition/codes-run-out", { most: `${MOST_CODES}` });
  const seated = seatAll(record, seed ?? "");
  if ("problems" in seated) return seated;
  return { day: dayOf(record, styles, { codes, ...seated }, seed ?? "") };
}

type Refusal = "competition/no-entries" | "competition/seed-missing" | "competition/codes-run-out" | "competition/assignment-impossible" | "competition/entry-without-flight";

function refuse<Code extends Refusal>(record: CompetitionRecord, name: string, code: Code, given: Parameters<typeof problemAt<Code>>[2], field = ""): { readonly problems: readonly Problem[] } {
  return { problems: [problemAt(code, { file: record.file.replace(/index\.md$/u, name), line: 1, column: 1, field, found: "" }, given)] };
}

interface Seated {
  readonly flights: DealtFlights;
  readonly judges: ReadonlyMap<string, readonly string[]>;
}

/** How many more flights, and ways of dealing each, are tried before it is called impossible. */
const MORE_FLIGHTS = 4;
const TRIES = 20;

function seatAll(record: CompetitionRecord, seed: string): Seated | { readonly problems: readonly Problem[] } {
  let first: TooFewJudges | undefined;
  for (const flights of dealings(record, seed)) {
    const lost = record.entries.filter(({ entry }) => flights.get(entry) === undefined);
    if (lost.length > 0) return refuse(record, "entries.csv", "competition/entry-without-flight", { entries: listed(lost.map(({ entry }) => entry)) });
    if (record.judges.length === 0) return { flights, judges: new Map() };
    const generator = seededGenerator(`${seed} judges`);
    const assigned = assignJudges(tablesOf(record, flights), generator.shuffle(record.judges));
    if ("judges" in assigned) return { flights, judges: assigned.judges };
    first ??= assigned;
  }
  return impossible(record, first);
}

/** Ways of dealing the entries, the plainest first. */
function* dealings(record: CompetitionRecord, seed: string): Generator<DealtFlights> {
  const { entries, judges } = record;
  if (entries.some(({ flight }) => flight !== undefined)) {
    yield joinFlights(entries, judges);
    return;
  }
  const fewest = Math.ceil(entries.length / MOST_IN_FLIGHT);
  for (let count = fewest; count <= fewest + MORE_FLIGHTS && (count === fewest || entries.length / count >= FEWEST_IN_FLIGHT); count += 1) {
    for (let attempt = 0; attempt < TRIES; attempt += 1) yield dealFlights(entries, count, seededGenerator(`${seed} flights ${count} ${attempt}`));
  }
}

function tablesOf({ entries, judges }: CompetitionRecord, flights: DealtFlights): Table[] {
  const names = [...new Set(flights.values())].flatMap((flight) => flight ?? []).sort();
  return names.map((flight) => {
    const own = entries.filter(({ entry }) => flights.get(entry) === flight);
    return { flight, barred: new Set(judges.filter((judge) => own.some((entry) => isOwn(judge, entry))).map(({ judge }) => judge)) };
  });
}

function impossible(record: CompetitionRecord, short: TooFewJudges | undefined): { readonly problems: readonly Problem[] } {
  if (short === undefined) return refuse(record, "entries.csv", "competition/no-entries", {});
  const { flight, free, barred } = short;
  const own = barred.map((judge) => {
    const row = record.judges.find((other) => other.judge === judge);
    return `${judge} (${listed(record.entries.filter((entry) => row !== undefined && isOwn(row, entry)).map(({ entry }) => entry))})`;
  });
  return refuse(record, "judges.csv", "competition/assignment-impossible", { flight, free: free.length === 0 ? "nobody" : listed(free), barred: own.length === 0 ? "nobody" : listed(own) }, `flight ${flight}`);
}

interface Drawn extends Seated {
  readonly codes: ReadonlyMap<string, string>;
}

function dayOf(record: CompetitionRecord, styles: ReadonlyMap<string, Style>, { codes, flights, judges }: Drawn, seed: string): CompetitionDay {
  const { data } = record;
  const entries = record.entries.map((row) => dayEntry(row, codes.get(row.entry) ?? "", flights.get(row.entry) ?? ""));
  const generator = seededGenerator(`${seed} pull order`);
  const tables = flightsOf(entries).map((flight, index): DayFlight => ({
    flight, slug: `${slugOf(flight) || "flight"}-${index + 1}`, judges: [...(judges.get(flight) ?? [])].sort(),
    entries: pullOrder(entries.filter((entry) => entry.flight === flight), styles, generator),
  }));
  const seated = record.judges.map((row) => dayJudge(row, tables, record.entries, styles));
  return {
    name: data.name, slug: record.slug, date: data.date.text, agreeWithin: data.agreeWithin, places: data.places,
    sheet: data.sheet.map(({ section, value }) => ({ section, maximum: value })), maximum: data.sheet.reduce((sum, { value }) => sum + value, 0),
    entries, flights: tables, judges: seated, notes: notesOf(record, tables, seated),
    files: dayFiles(record, entries, (judge) => seated.find((other) => other.judge === judge)?.flights ?? []),
    finalists: finalistsOf(record, codes),
  };
}

function dayEntry({ entry, style, brewer, title, batch, declared, allergens }: EntryRow, code: string, flight: string): DayEntry {
  return {
    entry, code, flight, declared, allergens,
    ...(style === undefined ? {} : { style }), ...(brewer === undefined ? {} : { brewer }), ...(title === undefined ? {} : { title }), ...(batch === undefined ? {} : { batch }),
  };
}

/** A judge's pour, mL, and the density of alcohol, g/mL (0.789 at 20 °C, published). Pours are common practice. */
export const POUR_ML = 50;
const ALCOHOL_G_PER_ML = 0.789;

function dayJudge(row: CompetitionRecord["judges"][number], tables: readonly DayFlight[], entries: readonly EntryRow[], styles: ReadonlyMap<string, Style>): DayJudge {
  const own = tables.filter(({ judges }) => judges.includes(row.judge));
  const poured = own.flatMap((table) => table.entries);
  const alcoholG = poured.reduce((sum, { style }) => sum + POUR_ML * (strengthOf(style, styles).abv / 100) * ALCOHOL_G_PER_ML, 0);
  return {
    judge: row.judge, flights: own.map(({ flight }) => flight), entries: poured.length, millilitres: POUR_ML * poured.length, alcoholG,
    own: entries.filter((entry) => isOwn(row, entry)).map(({ entry }) => entry),
  };
}

/** More than this many beers in a day tires the best palate (common practice puts a sitting at six to eight). */
const MANY = 16;

function notesOf(record: CompetitionRecord, tables: readonly DayFlight[], judges: readonly DayJudge[]): string[] {
  const nameless = record.entries.filter(({ brewer }) => brewer === undefined).map(({ entry }) => entry);
  const idle = judges.filter(({ flights }) => flights.length === 0).map(({ judge }) => judge);
  const burdened = judges.filter(({ entries }) => entries > MANY);
  const groups = findConnectedGroups(tables.flatMap(({ entries, judges: own }) => own.flatMap((judge) => entries.map(({ entry }) => ({ judge, entry, score: 0 })))));
  return [
    ...(record.judges.length === 0 ? ["judges.csv names nobody yet: score sheets are made with the judge left blank, one set a flight, to be copied."] : []),
    ...(nameless.length === 0 ? [] : [`No brewer is recorded for ${nameless.length > MANY ? counted(nameless.length, "entry", "entries") : listed(nameless)}: that no judge meets an own entry can't be told of them.`]),
    ...(idle.length === 0 ? [] : [`In reserve: ${listed(idle)}.`]),
    ...burdened.map(({ judge, entries }) => `${judge} is asked to judge ${entries} beers, more than a palate bears in a day: find another judge, or give them two sittings.`),
    ...(groups.length < 2 ? [] : [`The flights fall into ${groups.length} groups that share no judge: afterwards nobody can tell a severe judge from a weaker table between them. One judge who sits at a table of each links them.`]),
  ];
}

/** Codes of the entries that are first in their flights, or that best of show ranked already. */
function finalistsOf(record: CompetitionRecord, codes: ReadonlyMap<string, string>): string[] {
  if (record.finals.length === 0) return [];
  const ranked = bestOfShowOf(record, true)?.report.entries;
  const { entries } = competitionReport(record, { scores: true, names: true, pageOf: () => "" });
  const first = entries.filter(({ place }) => place?.place === 1).map(({ entry }) => entry);
  return (ranked ?? first).map((entry) => codes.get(entry) ?? "").sort();
}

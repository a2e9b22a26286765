import { folded, nearestName } from "../../problems/index.js";
import type { Lined } from "../csv/competition-tables.js";
import { reportCell, type CompetitionRows } from "../parse-competition.js";

type Entry = CompetitionRows["entries"][number];
type Judge = CompetitionRows["judges"][number];

/** What the rows of one file are held against. */
interface Registry {
  readonly rows: CompetitionRows;
  readonly byCode: ReadonlyMap<string, Entry>;
  readonly flights: ReadonlySet<string>;
  /** The first entry of each brewer in each flight. */
  readonly own: ReadonlyMap<string, Entry>;
  readonly judges: ReadonlyMap<string, Judge>;
}

/** Compares a competition's files with each other and with the log; problems go to the rows. */
export function checkCompetition(rows: CompetitionRows, batches: readonly string[]): void {
  checkEntries(rows, batches);
  const registry = registryOf(rows);
  checkJudges(registry);
  checkScores(registry);
  checkFinals(registry);
  checkBestOfShow(registry);
}

function registryOf(rows: CompetitionRows): Registry {
  const flights = new Set(rows.entries.map(({ flight }) => flight).filter((flight) => flight !== undefined));
  const own = new Map(rows.entries.toReversed().flatMap((entry) => (entry.brewer === undefined ? [] : [[ownKey(entry.flight, entry.brewer), entry]])));
  return {
    rows, flights, own,
    byCode: new Map(rows.entries.flatMap((entry) => (entry.code === undefined ? [] : [[entry.code, entry]]))),
    judges: new Map(rows.judges.map((judge) => [judge.judge, judge])),
  };
}

function checkEntries({ entries }: CompetitionRows, batches: readonly string[]): void {
  const known = new Set(batches);
  const ids = new Map<string, Entry>();
  for (const row of entries) {
    const other = ids.get(row.entry);
    if (other === undefined) ids.set(row.entry, row);
    else if (other.flight !== undefined && row.flight !== undefined && other.flight !== row.flight) reportCell(row, "flight", "competition/two-flights", { flight: other.flight });
    else reportCell(row, "entry", "competition/entry-twice", { line: other.line });
    if (row.batch !== undefined && !known.has(row.batch)) reportCell(row, "batch", "competition/batch-unknown", () => ({ nearest: nearestName(row.batch ?? "", batches), known: "" }));
  }
  once(entries, ({ code }) => code, (row, line) => reportCell(row, "code", "competition/code-twice", { line }));
}

function checkJudges(registry: Registry): void {
  const { judges } = registry.rows;
  once(judges, ({ judge }) => judge, (row, line) => reportCell(row, "judge", "competition/judge-twice", { line }));
  for (const row of judges) {
    for (const flight of row.flights) {
      checkFlight(row, "flights", flight, registry);
      checkOwnEntry(row, "flights", row, flight, registry);
    }
  }
}

function checkScores(registry: Registry): void {
  const { scores } = registry.rows;
  const own = new Set<string>();
  for (const row of scores) {
    checkCode(row, row.flight, registry);
    const judge = checkJudge(row, registry);
    const key = `${row.judge}\u0000${row.flight}`;
    if (judge === undefined || own.has(key)) continue;
    own.add(key);
    checkOwnEntry(row, "judge", judge, row.flight, registry);
  }
  once(scores, ({ judge, code }) => `${judge}\u0000${code}`, (row, line) => reportCell(row, "code", "competition/sheet-twice", { line }));
}

function checkFinals(registry: Registry): void {
  const { finals } = registry.rows;
  for (const row of finals) checkCode(row, row.flight, registry);
  once(finals, ({ code }) => code, (row, line) => reportCell(row, "code", "competition/final-twice", { line }));
}

function checkBestOfShow(registry: Registry): void {
  const { bestOfShow } = registry.rows;
  for (const row of bestOfShow) {
    checkCode(row, undefined, registry);
    checkOwnAtBest(row, checkJudge(row, registry), registry);
  }
  once(bestOfShow, ({ judge, rank }) => `${judge}\u0000${rank}`, (row, line) => reportCell(row, "rank", "competition/rank-twice", { line, what: "rank" }));
  once(bestOfShow, ({ judge, code }) => `${judge}\u0000${code}`, (row, line) => reportCell(row, "code", "competition/rank-twice", { line, what: "code" }));
}

/** A code that no entry has, or an entry of another flight. */
function checkCode(row: Lined<{ readonly code: string }>, flight: string | undefined, registry: Registry): void {
  const entry = registry.byCode.get(row.code);
  if (entry === undefined) reportCell(row, "code", "competition/code-unknown", { nearest: undefined, known: "" });
  if (flight === undefined) return;
  if (entry?.flight !== undefined && entry.flight !== flight) reportCell(row, "flight", "competition/two-flights", { flight: entry.flight });
  else checkFlight(row, "flight", flight, registry);
}

function checkFlight(row: Lined<object>, column: string, flight: string, { flights }: Registry): void {
  if (!flights.has(flight)) reportCell(row, column, "competition/flight-unknown", () => ({ nearest: nearestName(flight, flights), known: listed(flights) }));
}

function checkJudge(row: Lined<{ readonly judge: string }>, { judges }: Registry): Judge | undefined {
  const judge = judges.get(row.judge);
  if (judge === undefined) reportCell(row, "judge", "competition/judge-unknown", () => ({ nearest: nearestName(row.judge, judges.keys()), known: listed(judges.keys()) }));
  return judge;
}

function checkOwnEntry(row: Lined<object>, column: string, judge: Judge, flight: string, registry: Registry): void {
  const handle = judge.brewer;
  if (handle === undefined) return;
  const own = registry.own.get(ownKey(flight, handle));
  if (own !== undefined) reportCell(row, column, "competition/own-entry", { entry: own.entry, brewer: own.brewer ?? handle });
}

/** Nobody judges a round of best of show that holds their own beer. */
function checkOwnAtBest(row: Lined<{ readonly judge: string; readonly code: string }>, judge: Judge | undefined, { byCode }: Registry): void {
  const entry = byCode.get(row.code);
  if (judge?.brewer === undefined || entry?.brewer === undefined || folded(judge.brewer) !== folded(entry.brewer)) return;
  reportCell(row, "judge", "competition/own-entry", { entry: entry.entry, brewer: entry.brewer });
}

const ownKey = (flight: string | undefined, brewer: string): string => `${flight ?? ""}\u0000${folded(brewer)}`;
const LISTED = 12;
const listed = (names: Iterable<string>): string => [...names].slice(0, LISTED).join(", ");

/** Reports each row whose key an earlier row has. */
function once<Row extends Lined<object>>(rows: readonly Row[], keyOf: (row: Row) => string | undefined, report: (row: Row, line: number) => void): void {
  const first = new Map<string, number>();
  for (const row of rows) {
    const key = keyOf(row);
    if (key === undefined) continue;
    const line = first.get(key);
    if (line === undefined) first.set(key, row.line);
    else report(row, line);
  }
}

import type { Competition } from "../schema/index.js";
import { reportCell, type CompetitionRows } from "../parse-competition.js";

type Sheet = CompetitionRows["scores"][number];
type Final = CompetitionRows["finals"][number];

/** Warns of what is missing or left open in a competition without errors. */
export function checkScores(rows: CompetitionRows, data: Competition): void {
  checkSheets(rows);
  checkAgreed(rows, data);
}

/** Warns of sheets that weren't handed in, and of judges at a table that isn't theirs. */
function checkSheets({ scores, judges }: CompetitionRows): void {
  const flightsOf = new Map(judges.map(({ judge, flights }) => [judge, flights]));
  for (const sheets of grouped(scores, ({ flight }) => flight).values()) {
    const codes = new Set(sheets.map(({ code }) => code));
    for (const [judge, own] of grouped(sheets, (sheet) => sheet.judge)) {
      const last = own.at(-1);
      if (last === undefined) continue;
      checkSeat(last, judge, flightsOf.get(judge) ?? []);
      const missing = [...codes].filter((code) => !own.some((sheet) => sheet.code === code));
      if (missing.length > 0) reportCell(last, "judge", "competition/sheet-missing", { judge, codes: listed(missing) });
    }
  }
}

function checkSeat(sheet: Sheet, judge: string, flights: readonly string[]): void {
  if (flights.length > 0 && !flights.includes(sheet.flight)) reportCell(sheet, "flight", "competition/not-assigned", { judge, flights: flights.join(", ") });
}

/** Warns of judges too far apart, of ties and of places against the scores, each where no decision is recorded. */
function checkAgreed({ scores, finals }: CompetitionRows, { agreeWithin, places }: Competition): void {
  const decided = new Set(finals.filter(({ decision }) => decision !== undefined).map(({ code }) => code));
  for (const [code, sheets] of grouped(scores, (sheet) => sheet.code)) {
    const totals = sheets.map(totalOf);
    const apart = Math.max(...totals) - Math.min(...totals);
    const [first] = sheets;
    if (first !== undefined && apart > agreeWithin && !decided.has(code)) reportCell(first, "code", "competition/judges-apart", { apart: plain(apart), within: plain(agreeWithin), code });
  }
  for (const rows of grouped(finals, ({ flight }) => flight).values()) checkPlaces(rows, places);
}

function checkPlaces(rows: readonly Final[], places: number): void {
  const scored = rows.flatMap((row) => (row.score === undefined ? [] : [{ row, score: row.score }]));
  for (const { row, score } of scored) {
    const ahead = scored.filter((other) => other.score > score).length;
    const equal = scored.filter((other) => other.score === score);
    const [first] = equal;
    const wins = equal.some((other) => other.row.place !== undefined) || (ahead < places && rows.every(({ place }) => place === undefined));
    if (equal.length > 1 && wins && first !== undefined && first.row !== row && equal.every((other) => other.row.decision === undefined)) {
      reportCell(row, "score", "competition/tie-open", { line: first.row.line, score: plain(score) });
    }
    const passed = scored.find((other) => other.score > score && row.place !== undefined && (other.row.place ?? Infinity) > row.place && other.row.decision === undefined);
    if (passed !== undefined && row.decision === undefined) reportCell(row, "place", "competition/place-against-score", { line: passed.row.line, score: plain(passed.score) });
  }
}

function totalOf({ sections }: Sheet): number {
  return sections.reduce((sum, { points }) => sum + points, 0);
}

const plain = (points: number): string => `${Number(points.toFixed(2))}`;

const LISTED = 6;

function listed(codes: readonly string[]): string {
  return codes.length > LISTED ? `${codes.length} cups` : codes.join(", ");
}

function grouped<Row>(rows: readonly Row[], keyOf: (row: Row) => string): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group === undefined) groups.set(keyOf(row), [row]);
    else group.push(row);
  }
  return groups;
}

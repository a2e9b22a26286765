import { folded, nearestName, type Place, type Problem } from "../../problems/index.js";
import type { RankRow, ScoreRow } from "../log.js";
import { decodeText } from "../text/decode.js";
import { columnPlaces, RowReader, type Columns } from "./cells.js";
import { MOST_HAND_WRITTEN, parseTable, PLAIN_FORM, type CsvTable } from "./table.js";

export interface ParsedRows<Row> {
  /** Absent when there was a problem. */
  readonly rows?: readonly Row[];
  /** Where each attribute is first written. */
  readonly attributes: readonly Place[];
  readonly problems: readonly Problem[];
}

export interface RowsContent {
  readonly file: string;
  readonly content: string | Uint8Array;
  /** The samples poured; undefined where the record doesn't name them. */
  readonly samples: readonly string[] | undefined;
}

/** Reads a file of scores: taster, sample, attribute, score, and serving where servings repeat. */
export function parseScores(input: RowsContent): ParsedRows<ScoreRow> {
  return parseRows(input, { required: ["taster", "sample", "attribute", "score"], optional: ["serving"] }, (table, places, attributes) => {
    const seen = new Map<string, number>();
    const spellings = new Map<string, string>();
    const context = { table, seen, spellings, attributes, file: input.file, samples: input.samples };
    return table.rows.map((row) => scoreRow(new RowReader(row, places, table.problems), context));
  });
}

/** Reads a file of ranks: taster, sample, rank. */
export function parseRanking(input: RowsContent): ParsedRows<RankRow> {
  return parseRows(input, { required: ["taster", "sample", "rank"], optional: [] }, (table, places) => {
    const seen = new Map<string, number>();
    const rows = table.rows.map((row) => rankRow(new RowReader(row, places, table.problems), { table, seen, spellings: new Map(), attributes: [], file: input.file, samples: input.samples }));
    checkRanks(rows, table);
    return rows.map((row) => (row === undefined ? undefined : { taster: row.taster, sample: row.sample, rank: row.rank }));
  });
}

interface RankedLine extends RankRow {
  readonly line: number;
}

/** Shared ranks may be written rounded, 2.33 for a tie of three. */
const ROUNDED_THIRDS = 0.05;

interface Context {
  readonly table: CsvTable;
  readonly seen: Map<string, number>;
  readonly spellings: Map<string, string>;
  readonly attributes: Place[];
  readonly file: string;
  readonly samples: readonly string[] | undefined;
}

function parseRows<Row>({ file, content }: RowsContent, columns: Columns, read: (table: CsvTable, places: ReadonlyMap<string, number>, attributes: Place[]) => (Row | undefined)[]): ParsedRows<Row> {
  const attributes: Place[] = [];
  const decoded = decodeText(file, content, { most: MOST_HAND_WRITTEN });
  if (decoded.text === "" && decoded.problems.length > 0) return { attributes, problems: decoded.problems };
  const table = parseTable(file, decoded.text, { ...PLAIN_FORM, columns: columns.required.join(",") });
  if (table.header.length === 0) return { attributes, problems: [...decoded.problems, ...table.problems.list()] };
  const places = columnPlaces(table, columns);
  const rows = read(table, places, attributes);
  const problems = [...decoded.problems, ...table.problems.list()];
  return problems.length === 0 ? { rows: rows.filter((row) => row !== undefined), attributes, problems } : { attributes, problems };
}

function scoreRow(row: RowReader, context: Context): ScoreRow | undefined {
  const taster = row.required("taster", "a taster's code");
  const sample = sampleOf(row, context);
  const attribute = row.required("attribute", "an attribute");
  checkSpelling(row, attribute, context);
  const score = row.requiredNumber("score", "a score from 0 to 10");
  if (score !== undefined && (score < 0 || score > 10)) row.report("tasting/score-outside", "score", {});
  const serving = row.wholeNumber("serving", "a serving's number, from 1") ?? 1;
  checkOnce(row, [taster, sample, folded(attribute), String(serving)], context);
  return row.ok && score !== undefined ? { taster, sample, attribute, score, serving } : undefined;
}

function rankRow(row: RowReader, context: Context): RankedLine | undefined {
  const taster = row.required("taster", "a taster's code");
  const sample = sampleOf(row, context);
  const rank = row.requiredNumber("rank", "a rank, 1 for the first");
  if (rank !== undefined && rank < 1) row.report("csv/number", "rank", { expects: "a rank, 1 for the first" });
  checkOnce(row, [taster, sample], context);
  return row.ok && rank !== undefined ? { taster, sample, rank, line: row.line } : undefined;
}

function sampleOf(row: RowReader, { samples }: Context): string {
  const sample = row.required("sample", "a sample's name");
  if (sample !== "" && samples !== undefined && !samples.includes(sample)) {
    row.report("tasting/sample-unknown", "sample", () => ({ nearest: nearestName(sample, samples), known: samples.join(", ") }));
  }
  return sample;
}

function checkOnce(row: RowReader, parts: readonly string[], { seen }: Context): void {
  if (parts.includes("")) return;
  const key = parts.join("\u0000");
  const line = seen.get(key);
  if (line === undefined) seen.set(key, row.line);
  else row.report("tasting/taster-twice", "taster", { line });
}

function checkSpelling(row: RowReader, attribute: string, { spellings, attributes, table, file }: Context): void {
  if (attribute === "") return;
  const key = folded(attribute);
  const first = spellings.get(key);
  if (first === undefined) {
    spellings.set(key, attribute);
    attributes.push(table.problems.placeOf(file, row.cell("attribute")));
  } else if (first !== attribute) row.report("tasting/attribute-spelling", "attribute", { other: first, field: "another row" });
}

/** Each taster's ranks add up to 1 + 2 + … + n, ties included. */
function checkRanks(rows: readonly (RankedLine | undefined)[], { problems }: CsvTable): void {
  const byTaster = new Map<string, RankedLine[]>();
  for (const row of rows) {
    if (row === undefined) return;
    const own = byTaster.get(row.taster);
    if (own === undefined) byTaster.set(row.taster, [row]);
    else own.push(row);
  }
  for (const [taster, own] of byTaster) {
    const right = (own.length * (own.length + 1)) / 2;
    const sum = own.reduce((total, { rank }) => total + rank, 0);
    if (Math.abs(sum - right) < ROUNDED_THIRDS) continue;
    problems.addLine("tasting/rank", own.at(-1)?.line ?? 1, { sum: `${right}` }, `${taster}: ${own.map(({ rank }) => rank).join(", ")}`);
  }
}

import type { Problem } from "../../problems/index.js";
import type { FermentationLog } from "../log.js";
import { decodeText } from "../text/decode.js";
import { civilAt, parseDatePattern, readPlainTime, rowInstant, skippedHour, type TimeReader } from "../time/index.js";
import type { CsvProblems } from "./csv-problems.js";
import { mappedColumns, PLAIN_HEADER, plainColumns, type LogColumns, type LogSource, type Measure, type MeasureColumn } from "./log-columns.js";
import { parseTable, PLAIN_FORM, type CsvRow, type CsvTable } from "./table.js";

export interface ParsedLog {
  /** Absent when there was a problem. */
  readonly log?: FermentationLog;
  readonly problems: readonly Problem[];
}

export interface LogContent {
  /** Path inside the log. */
  readonly file: string;
  readonly content: string | Uint8Array;
  readonly source: LogSource;
  /** The club's zone; the file's own, where the record names one, goes before it. */
  readonly zone: string;
}

/** 20 MB: 400,000 rows of four columns. */
const MOST_LOG = 20 * 1024 * 1024;

/** Reads a log of temperature, gravity and pressure, in the tool's own form or as the record says. */
export function parseFermentationLog({ file, content, source, zone }: LogContent): ParsedLog {
  const decoded = decodeText(file, content, { most: MOST_LOG, allowMark: !source.standard });
  if (decoded.text === "" && decoded.problems.length > 0) return { problems: decoded.problems };
  const form = source.standard ? PLAIN_FORM : { separator: source.separator === "tab" ? "\t" : source.separator, decimal: source.decimal };
  const table = parseTable(file, decoded.text, { ...form, columns: PLAIN_HEADER });
  const columns = source.standard ? plainColumns(table) : mappedColumns(table, source);
  if (columns === undefined) return { problems: [...decoded.problems, ...table.problems.list()] };
  const log = readRows(table, columns, readingOf(source, zone));
  const problems = [...decoded.problems, ...table.problems.list()];
  return problems.length === 0 ? { log: { file, ...log }, problems } : { problems };
}

/** How a file's cells are read. */
interface Reading {
  readonly zone: string;
  readonly readTime: TimeReader;
  readonly pattern: string;
  readonly decimal: "." | ",";
  /** Another device's words for a reading that isn't there. */
  readonly gaps: ReadonlySet<string>;
}

const DEVICE_GAPS: ReadonlySet<string> = new Set(["nan", "null", "none", "n/a", "na", "-", "--", "---"]);

function readingOf(source: LogSource, zone: string): Reading {
  const plain = { zone, readTime: readPlainTime, pattern: "2026-03-18 19:00", decimal: "." as const, gaps: new Set<string>() };
  if (source.standard) return plain;
  const parsed = source.dates === undefined ? undefined : parseDatePattern(source.dates);
  return {
    zone: source.zone ?? zone,
    readTime: parsed?.ok === true ? parsed.read : readPlainTime,
    pattern: source.dates ?? plain.pattern,
    decimal: source.decimal,
    gaps: DEVICE_GAPS,
  };
}

type Columns = Omit<FermentationLog, "file">;

function readRows({ rows, problems }: CsvTable, columns: LogColumns, reading: Reading): Columns {
  const timesMs: number[] = [];
  const values = new Map<Measure, (number | undefined)[]>([...columns.measures.keys()].map((measure) => [measure, []]));
  let aboveMs = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    const timeMs = timeOf(row, columns, reading, aboveMs, problems);
    if (timeMs !== undefined) aboveMs = timeMs;
    timesMs.push(timeMs ?? Number.NaN);
    for (const [measure, column] of columns.measures) values.get(measure)?.push(valueOf(row, measure, column, reading, problems));
  }
  const [temperatureC, gravity, pressureKPa] = [values.get("temperature"), values.get("gravity"), values.get("pressure")];
  return {
    timesMs, gravityUnit: columns.measures.get("gravity")?.unitName === "P" ? "P" : "SG",
    ...(temperatureC === undefined ? {} : { temperatureC }),
    ...(gravity === undefined ? {} : { gravity }),
    ...(pressureKPa === undefined ? {} : { pressureKPa }),
  };
}

function timeOf(row: CsvRow, { time, timeHeader }: LogColumns, reading: Reading, aboveMs: number, problems: CsvProblems): number | undefined {
  const found = (row.cells[time] ?? "").trim();
  const read = reading.readTime(found);
  const cell = { line: row.line, column: timeHeader, index: time, found };
  if (read === undefined) {
    problems.addCell("csv/time", cell, { pattern: reading.pattern });
    return undefined;
  }
  const instant = rowInstant(read, reading.zone, aboveMs);
  if (instant === undefined) {
    const civil = civilAt(read.wallMs, "UTC");
    problems.addCell("record/hour-skipped", cell, { zone: reading.zone, next: skippedHour(civil, reading.zone)?.text ?? "the hour after" });
    return undefined;
  }
  if (instant < aboveMs) problems.addCell("csv/time-backwards", cell, { before: civilAt(aboveMs, reading.zone).text });
  return instant;
}

const NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/u;
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/u;

interface Limits {
  readonly low: number;
  readonly high: number;
  readonly says: string;
}

/** What a probe in beer can read; gauge pressure may be a little under the air's. */
const LIMITS: Readonly<Record<Measure, Limits>> = {
  temperature: { low: -40, high: 120, says: "a temperature between -40 and 120 C" },
  gravity: { low: 0.98, high: 1.2, says: "a specific gravity between 0.980 and 1.200" },
  pressure: { low: -101.325, high: 5000, says: "a pressure between -101 and 5000 kPa" },
};
const PLATO: Limits = { low: -5, high: 45, says: "a gravity between -5 and 45 P" };

function valueOf(row: CsvRow, measure: Measure, column: MeasureColumn, reading: Reading, problems: CsvProblems): number | undefined {
  const found = (row.cells[column.index] ?? "").trim();
  if (found === "" || reading.gaps.has(found.toLowerCase())) return undefined;
  const cell = (): { line: number; column: string; index: number; found: string } => ({ line: row.line, column: column.header, index: column.index, found });
  const pointed = reading.decimal === "," ? found.replace(",", ".") : found;
  if (!NUMBER.test(pointed)) {
    if (DECIMAL_COMMA.test(pointed)) problems.addCell("csv/decimal-comma", cell(), { repaired: found.replace(",", ".") });
    else problems.addCell("csv/number", cell(), { expects: `a bare number in ${column.unitName}` });
    return undefined;
  }
  const value = Number(pointed) * column.unit.factor + (column.unit.offset ?? 0);
  const { low, high, says } = column.unitName === "P" ? PLATO : LIMITS[measure];
  if (value >= low && value <= high) return value;
  if (measure === "gravity" && value >= 980 && value <= 1200) problems.addCell("record/gravity-without-point", cell(), { repaired: (value / 1000).toFixed(4).replace(/0$/u, "") });
  else problems.addCell("record/out-of-range", cell(), { between: says });
  return undefined;
}

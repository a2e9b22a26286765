import { CsvError, parse } from "csv-parse/sync";
import { CsvProblems } from "./csv-problems.js";

export interface CsvRow {
  /** In the file, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A CSV file's cells as text; every row has as many cells as the header. */
export interface CsvTable {
  readonly header: readonly string[];
  readonly rows: readonly CsvRow[];
  readonly problems: CsvProblems;
}

export interface CsvForm {
  readonly separator: string;
  /** A comma for files that another program wrote with one. */
  readonly decimal: "." | ",";
  /** What the header should name, for a file without one. */
  readonly columns: string;
}

const MOST_COLUMNS = 500;

/** 2 MB: of what people fill in by hand, far more than any panel or competition. */
export const MOST_HAND_WRITTEN = 2 * 1024 * 1024;

export const PLAIN_FORM = { separator: ",", decimal: "." } as const;

/**
 * Reads a CSV file strictly. Semicolons are reported once and the file is then read by them, so that
 * its other problems show in the same run; rows of the wrong length are reported and left out.
 */
export function parseTable(file: string, text: string, form: CsvForm): CsvTable {
  // Lines are only cut where there is something to say of one.
  let lines: readonly string[] | undefined;
  const lineText = (line: number): string => (lines ??= text.split("\n"))[line - 1] ?? "";
  const [first = ""] = text.split("\n", 1);
  const hasSemicolons = form.separator === "," && count(first, ";") > count(first, ",");
  const separator = hasSemicolons ? ";" : form.separator;
  const problems = new CsvProblems(file, lineText, separator);
  if (first.trim() === "") {
    problems.addLine("csv/empty", 1, { columns: form.columns });
    return { header: [], rows: [], problems };
  }
  if (count(first, separator) >= MOST_COLUMNS) {
    problems.addLine("log/too-large", 1, { limit: `${MOST_COLUMNS} columns` }, `${count(first, separator) + 1} columns`);
    return { header: [], rows: [], problems };
  }
  if (hasSemicolons) problems.addLine("csv/semicolons", 1, { header: first.replaceAll(";", ",") });
  const [head, ...rest] = parseRows(text, separator, problems);
  const header = (head?.cells ?? []).map((cell) => cell.trim());
  reportTwice(header, problems);
  return { header, rows: rest.filter((row) => hasRightLength(row, header.length, form, problems)), problems };
}

function parseRows(text: string, separator: string, problems: CsvProblems): CsvRow[] {
  const rows: CsvRow[] = [];
  const options = { delimiter: separator, relax_column_count: true };
  try {
    // Without quotes each line is a row and each separator separates: the long logs of devices need no parser.
    if (!text.includes('"')) {
      for (const [index, line] of text.split("\n").entries()) if (line.trim() !== "") rows.push({ line: index + 1, cells: line.split(separator) });
    } else {
      parse(text, { ...options, on_record: (cells: string[], { lines }) => { if (!isBlank(cells)) rows.push({ line: lines, cells }); return null; } });
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error["lines"] === "number" ? error["lines"] : 1;
    problems.addLine("csv/quotes", error.code === "CSV_QUOTE_NOT_CLOSED" ? (rows.at(-1)?.line ?? 0) + 1 : line, {});
  }
  return rows;
}

const isBlank = (cells: readonly string[]): boolean => cells.length === 1 && cells[0]?.trim() === "";

function reportTwice(header: readonly string[], problems: CsvProblems): void {
  for (const [index, column] of header.entries()) {
    if (header.indexOf(column) < index) problems.addCell("csv/column-twice", { line: 1, column, index, found: column }, { column });
  }
}

function hasRightLength({ line, cells }: CsvRow, columns: number, { decimal }: CsvForm, problems: CsvProblems): boolean {
  if (cells.length === columns) return true;
  const split = cells.length > columns && decimal === "." ? splitNumber(cells) : undefined;
  if (split === undefined) problems.addLine("csv/cells", line, { columns: `${columns} cells` });
  else problems.addCell("csv/decimal-comma", { line, column: `cell ${split.index + 1}`, index: split.index, found: split.written }, { repaired: split.written.replace(",", ".") });
  return false;
}

/** Two neighbouring cells that look like one number cut at its decimal comma. */
function splitNumber(cells: readonly string[]): { index: number; written: string } | undefined {
  const index = cells.findIndex((cell, at) => /^\s*-?\d{1,4}$/u.test(cell) && /^\d{1,4}\s*$/u.test(cells[at + 1] ?? ""));
  return index === -1 ? undefined : { index, written: `${cells[index]?.trim() ?? ""},${cells[index + 1]?.trim() ?? ""}` };
}

const count = (text: string, letter: string): number => text.split(letter).length - 1;

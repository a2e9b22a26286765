import { nearestName, type Given, type ProblemCode } from "../../problems/index.js";
import type { CsvProblems } from "./csv-problems.js";
import type { CsvRow, CsvTable } from "./table.js";

/** The columns a file may have. */
export interface Columns {
  readonly required: readonly string[];
  readonly optional: readonly string[];
}

/** Where each column stands; reports those that are missing or unknown. */
export function columnPlaces({ header, problems }: CsvTable, { required, optional }: Columns): ReadonlyMap<string, number> {
  const known = [...required, ...optional];
  const meant = new Set<string>();
  for (const [index, column] of header.entries()) {
    if (known.includes(column)) continue;
    const nearest = nearestName(column, known.filter((name) => !header.includes(name)));
    if (nearest !== undefined) meant.add(nearest);
    problems.addCell("csv/column-unknown", { line: 1, column, index, found: column }, { nearest, known: known.join(", ") });
  }
  for (const column of required) {
    if (!header.includes(column) && !meant.has(column)) problems.addLine("csv/column-missing", 1, { column });
  }
  return new Map(known.filter((name) => header.includes(name)).map((name) => [name, header.indexOf(name)]));
}

/** Reads one row's cells by column name, and reports what is wrong with one. */
export class RowReader {
  readonly #row: CsvRow;
  readonly #places: ReadonlyMap<string, number>;
  readonly #problems: CsvProblems;
  /** Whether every cell so far could be read. */
  ok = true;

  constructor(row: CsvRow, places: ReadonlyMap<string, number>, problems: CsvProblems) {
    this.#row = row;
    this.#places = places;
    this.#problems = problems;
  }

  get line(): number {
    return this.#row.line;
  }

  cell(column: string): { line: number; column: string; index: number; found: string } {
    const index = this.#places.get(column) ?? -1;
    return { line: this.#row.line, column, index, found: (this.#row.cells[index] ?? "").trim() };
  }

  /** Empty where the cell is, or the column isn't there. */
  text(column: string): string {
    return this.cell(column).found;
  }

  /** Names separated by ;. */
  names(column: string): string[] {
    return this.text(column).split(";").map((name) => name.trim()).filter((name) => name !== "");
  }

  required(column: string, expects: string): string {
    const cell = this.cell(column);
    if (cell.found === "" && cell.index >= 0) this.report("csv/cell-empty", column, { expects, fix: `Write ${expects}, or remove the row` });
    return cell.found;
  }

  /** A bare number; undefined where the cell is empty or wrong. */
  number(column: string, expects: string): number | undefined {
    const cell = this.cell(column);
    if (cell.found === "") return undefined;
    if (/^[+-]?\d+,\d+$/u.test(cell.found)) {
      this.report("csv/decimal-comma", column, { repaired: cell.found.replace(",", ".") });
      return undefined;
    }
    if (/^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/u.test(cell.found)) return Number(cell.found);
    this.report("csv/number", column, { expects });
    return undefined;
  }

  requiredNumber(column: string, expects: string): number | undefined {
    return this.required(column, expects) === "" ? undefined : this.number(column, expects);
  }

  /** A whole number from 1 on. */
  wholeNumber(column: string, expects: string): number | undefined {
    const value = this.number(column, expects);
    if (value === undefined || (Number.isInteger(value) && value >= 1)) return value;
    this.report("csv/number", column, { expects });
    return undefined;
  }

  /** `given` may be made only when it is needed: the problems of a file beyond the first are merely counted. */
  report<Code extends ProblemCode>(code: Code, column: string, given: Given<Code> | (() => Given<Code>)): void {
    this.ok = false;
    this.#problems.addCell(code, this.cell(column), given);
  }
}

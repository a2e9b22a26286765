import { problemAt, type Given, type Place, type Problem, type ProblemCode } from "../../problems/index.js";

const MOST_LISTED = 200;

/** The problems of one CSV file: the first ones in full, the rest as a number. */
export class CsvProblems {
  readonly #file: string;
  readonly #listed: Problem[] = [];
  #more = 0;
  #moreFrom = 1;
  readonly #lineText: (line: number) => string;
  readonly #separator: string;

  constructor(file: string, lineText: (line: number) => string, separator: string) {
    this.#file = file;
    this.#lineText = lineText;
    this.#separator = separator;
  }

  /** At a cell: `column` is its name, `index` its position in the row. */
  addCell<Code extends ProblemCode>(code: Code, cell: CellPlace, given: Given<Code> | (() => Given<Code>)): void {
    this.#add(cell.line, () => problemAt(code, this.placeOf(this.#file, cell), typeof given === "function" ? (given as () => Given<Code>)() : given));
  }

  placeOf(file: string, { line, column, index, found }: CellPlace): Place {
    const start = index < 0 ? 1 : cellStart(this.#lineText(line), index, this.#separator);
    return { file, line, column: start, field: `row ${line}, ${column}`, found };
  }

  /** At a whole line. */
  addLine<Code extends ProblemCode>(code: Code, line: number, given: Given<Code>, found = this.#lineText(line)): void {
    this.#add(line, () => problemAt(code, { file: this.#file, line, column: 1, field: line === 1 ? "header" : `row ${line}`, found }, given));
  }

  list(): Problem[] {
    if (this.#more === 0) return this.#listed;
    const place = { file: this.#file, line: this.#moreFrom, column: 1, field: "", found: "" };
    return [...this.#listed, problemAt("csv/more", place, { count: this.#more.toLocaleString("en") })];
  }

  get isEmpty(): boolean {
    return this.#listed.length === 0;
  }

  #add(line: number, problem: () => Problem): void {
    if (this.#listed.length < MOST_LISTED) this.#listed.push(problem());
    else {
      if (this.#more === 0) this.#moreFrom = line;
      this.#more += 1;
    }
  }
}

export interface CellPlace {
  readonly line: number;
  readonly column: string;
  /** From 0; -1 for a column that isn't there. */
  readonly index: number;
  readonly found: string;
}

/** The column, from 1, at which a cell of a line begins. */
export function cellStart(line: string, index: number, separator: string): number {
  let quoted = false;
  let left = index;
  for (let at = 0; at < line.length && left >= 0; at += 1) {
    if (left === 0) return at + 1;
    const letter = line[at];
    if (letter === '"') quoted = !quoted;
    else if (letter === separator && !quoted) left -= 1;
  }
  return line.length + 1;
}

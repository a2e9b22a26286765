import { readFileSync } from "node:fs";

/** One line of a fixture by column; asking for a column it lacks is a mistake in the test. */
export interface FixtureRow {
  text(column: string): string;
  number(column: string): number;
}

/** Reads tests/report-parts/fixtures/<name>.csv, copied from the reference on sensory work and trends. */
export function fixture(name: string): FixtureRow[] {
  const text = readFileSync(new URL(`fixtures/${name}.csv`, import.meta.url), "utf8");
  const [head = "", ...lines] = text.trimEnd().split(/\r?\n/u);
  const columns = head.split(",");
  return lines.map((line) => rowOf(columns, line.split(",")));
}

/** The `value` of the line of an example whose `stat` is the one asked for. */
export function expectedValue(name: string, stat: string, example?: string): number {
  const found = fixture(name).find((row) => row.text("stat") === stat && (example === undefined || row.text("example") === example));
  if (found === undefined) throw new Error(`${name} has no ${stat}`);
  return found.number("value");
}

function rowOf(columns: readonly string[], cells: readonly string[]): FixtureRow {
  const text = (column: string): string => {
    const cell = cells[columns.indexOf(column)];
    if (cell === undefined) throw new Error(`fixture has no column ${column}`);
    return cell;
  };
  return { text, number: (column) => numberOf(text(column), column) };
}

function numberOf(cell: string, column: string): number {
  if (cell === "" || cell === "NA") throw new Error(`fixture has an empty cell in ${column}`);
  return cell === "Inf" ? Infinity : Number(cell);
}

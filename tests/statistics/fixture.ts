import { readFileSync } from "node:fs";

/** One line of a fixture; asking for a column it lacks is a mistake in the test. */
export class Row {
  constructor(private readonly cells: ReadonlyMap<string, string>) {}

  text(column: string): string {
    const cell = this.cells.get(column);
    if (cell === undefined) throw new Error(`fixture has no column ${column}`);
    return cell;
  }

  number(column: string): number {
    const text = this.text(column);
    if (text === "" || text === "NA") throw new Error(`fixture has an empty cell in ${column}`);
    return text === "Inf" ? Infinity : Number(text);
  }

  has(column: string): boolean {
    return !["", "NA"].includes(this.text(column));
  }
}

/** Reads tests/statistics/fixtures/<name>.csv. */
export function fixture(name: string): Row[] {
  const text = readFileSync(new URL(`fixtures/${name}.csv`, import.meta.url), "utf8");
  const [head, ...lines] = text.trimEnd().split(/\r?\n/).map(splitLine);
  if (head === undefined) throw new Error(`fixture ${name} is empty`);
  return lines.map((cells) => new Row(new Map(head.map((column, index) => [column, cells[index] ?? ""]))));
}

/** The `value` of the line whose `key` column says `stat`, for the fixtures of that shape. */
export function expected(rows: readonly Row[], key: string, stat: string): Row {
  const row = rows.find((candidate) => candidate.text(key) === stat);
  if (row === undefined) throw new Error(`fixture has no line ${stat}`);
  return row;
}

/** Decimal digits in which two numbers agree, relative to the expected one (NIST's log relative error). */
export function agreeingDigits(actual: number, certified: number): number {
  if (actual === certified) return 16;
  return -Math.log10(Math.abs(actual - certified) / (certified === 0 ? 1 : Math.abs(certified)));
}

function splitLine(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((match) => match[1]?.replaceAll('""', '"') ?? match[2] ?? "");
}

/** Lines with the same key together, in order of first appearance. */
export function groupedBy<Key>(rows: readonly Row[], key: (row: Row) => Key): Map<Key, Row[]> {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) groups.set(key(row), [...(groups.get(key(row)) ?? []), row]);
  return groups;
}

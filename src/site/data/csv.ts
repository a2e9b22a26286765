/** Cells that a spreadsheet would run as a formula, when they come from a record. */
const FORMULA = /^[=+\-@\t\r]/u;
const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/iu;

/**
 * A table as CSV (RFC 4180, but with line feeds, as git keeps them).
 * Text that a spreadsheet would take for a formula is set off with an apostrophe.
 */
export function csvText(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [head, ...rows].map((row) => row.map(csvCell).join(",")).join("\n") + "\n";
}

function csvCell(cell: string | number): string {
  const text = String(cell);
  const inert = typeof cell === "string" && FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return /[",\n\r]/u.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

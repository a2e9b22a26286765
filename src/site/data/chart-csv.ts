import type { ChartTable } from "../../charts/index.js";
import { csvText } from "./csv.js";

/** The numbers of a chart: units in the heads, an empty cell where nothing was measured. */
export function chartTableCsv(table: ChartTable): string {
  const head = table.columns.map(({ title, unit }) => (unit === undefined ? title : `${title} [${unit}]`));
  return csvText(head, table.rows.map((row) => row.map((cell) => cell.replaceAll("−", "-"))));
}

import type { CompetitionRecord } from "../../../records/index.js";
import type { CompetitionDay, DayEntry } from "../../types.js";

/** entries.csv and judges.csv as they were, with what was drawn filled in. */
export function dayFiles(record: CompetitionRecord, entries: readonly DayEntry[], flightsOf: (judge: string) => readonly string[]): CompetitionDay["files"] {
  const rows = entries.map(({ entry, code, flight, style = "", brewer = "", title = "", batch = "", allergens, declared }) =>
    [entry, code, flight, style, brewer, title, batch, allergens.join(";"), declared.join(";")]);
  const judges = record.judges.map(({ judge, brewer = "" }) => [judge, brewer, flightsOf(judge).join(";")]);
  return [
    { name: "entries.csv", text: csv([["entry", "code", "flight", "style", "brewer", "title", "batch", "allergens", "declared"], ...rows]) },
    ...(judges.length === 0 ? [] : [{ name: "judges.csv", text: csv([["judge", "brewer", "flights"], ...judges]) }]),
  ];
}

function csv(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => `${cells.map(cell).join(",")}\n`).join("");
}

function cell(text: string): string {
  return /[",\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

import type { BestOfShowRow, EntryRow, FinalRow, JudgeRow, SheetRow } from "../competition-record.js";
import type { Competition } from "../schema/index.js";
import { type RowReader, type Columns } from "./cells.js";

/** A row as read, with the line it stands on. */
export type Lined<Row> = Row & { readonly line: number; readonly reader: RowReader };

/** How one of a competition's files is read: a row comes back where its keys are there, so that it can still be compared. */
export interface CompetitionTable<Row> {
  readonly file: string;
  readonly columns: (sheet: Competition["sheet"]) => Columns;
  readonly read: (row: RowReader, sheet: Competition["sheet"]) => Row | undefined;
}

export const ENTRIES: CompetitionTable<EntryRow> = {
  file: "entries.csv",
  columns: () => ({ required: ["entry"], optional: ["code", "flight", "style", "brewer", "title", "batch", "allergens", "declared"] }),
  read: (row) => {
    const entry = row.required("entry", "a registration id");
    return entry !== "" ? { entry, ...given(row, ["code", "flight", "style", "brewer", "title", "batch"]), allergens: row.names("allergens"), declared: row.names("declared") } : undefined;
  },
};

export const JUDGES: CompetitionTable<JudgeRow> = {
  file: "judges.csv",
  columns: () => ({ required: ["judge"], optional: ["brewer", "flights"] }),
  read: (row) => {
    const judge = row.required("judge", "a judge's code");
    return judge !== "" ? { judge, ...given(row, ["brewer"]), flights: row.names("flights") } : undefined;
  },
};

export const SCORES: CompetitionTable<SheetRow> = {
  file: "scores.csv",
  columns: (sheet) => ({
    required: ["flight", "judge", "code", ...sheet.map(({ section }) => section)],
    optional: ["total", "comment", ...sheet.map(({ section }) => `comment_${section}`)],
  }),
  read: (row, sheet) => {
    const flight = row.required("flight", "a flight of entries.csv");
    const judge = row.required("judge", "a judge of judges.csv");
    const code = row.required("code", "a code of entries.csv");
    const sections = sheet.map(({ section, value }) => sectionOf(row, section, value));
    checkTotal(row, sections);
    return ![flight, judge, code].includes("") ? { flight, judge, code, sections, ...given(row, ["comment"]) } : undefined;
  },
};

export const FINALS: CompetitionTable<FinalRow> = {
  file: "finals.csv",
  columns: () => ({ required: ["flight", "code"], optional: ["score", "place", "decision"] }),
  read: (row, sheet) => {
    const flight = row.required("flight", "a flight of entries.csv");
    const code = row.required("code", "a code of entries.csv");
    const score = row.number("score", "the agreed score");
    const most = sheet.reduce((sum, { value }) => sum + value, 0);
    if (score !== undefined && (score < 0 || score > most)) row.report("competition/score-above", "score", { maximum: `${most}` });
    const place = row.wholeNumber("place", "a place, 1 for the first");
    return ![flight, code].includes("") ? { flight, code, ...(score === undefined ? {} : { score }), ...(place === undefined ? {} : { place }), ...given(row, ["decision"]) } : undefined;
  },
};

export const BEST_OF_SHOW: CompetitionTable<BestOfShowRow> = {
  file: "best-of-show.csv",
  columns: () => ({ required: ["judge", "code", "rank"], optional: ["place", "decision"] }),
  read: (row) => {
    const judge = row.required("judge", "a judge of judges.csv");
    const code = row.required("code", "a code of entries.csv");
    row.required("rank", "a rank, 1 for the first");
    const rank = row.wholeNumber("rank", "a rank, 1 for the first");
    const place = row.wholeNumber("place", "a place, 1 for the first");
    return ![judge, code].includes("") && rank !== undefined ? { judge, code, rank, ...(place === undefined ? {} : { place }), ...given(row, ["decision"]) } : undefined;
  },
};

function sectionOf(row: RowReader, section: string, maximum: number): SheetRow["sections"][number] {
  const points = row.requiredNumber(section, `points from 0 to ${maximum}`) ?? 0;
  if (points < 0 || points > maximum) row.report("competition/section-above", section, { section, maximum: `${maximum}` });
  const comment = row.text(`comment_${section}`);
  return { section, points, ...(comment === "" ? {} : { comment }) };
}

/** Points are given in halves at the finest: sums this close are equal but for rounding. */
const SAME_POINTS = 1e-6;

function checkTotal(row: RowReader, sections: SheetRow["sections"]): void {
  const total = row.number("total", "the sum of the sections");
  const sum = sections.reduce((all, { points }) => all + points, 0);
  if (total !== undefined && Math.abs(total - sum) > SAME_POINTS) row.report("competition/total-differs", "total", { sum: `${Number(sum.toFixed(2))}` });
}

/** The cells that aren't empty, by column name. */
function given<Name extends string>(row: RowReader, names: readonly Name[]): { readonly [Key in Name]?: string } {
  return Object.fromEntries(names.map((name) => [name, row.text(name)]).filter(([, text]) => text !== "")) as { [Key in Name]?: string };
}

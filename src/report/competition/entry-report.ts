import { slugOf, type CompetitionRecord, type EntryRow, type FinalRow, type SheetRow } from "../../records/index.js";
import { mean } from "../../statistics/index.js";
import type { CompetitionEntry, PlaceReport, SheetReport } from "../types.js";
import { totalOf } from "./flight-scores.js";

/** Who may see what of a competition's entries. */
export interface Showing {
  /** Agreed scores, sheets, comments and the words of decisions. */
  readonly scores: boolean;
  /** Brewers, titles and batches: false where the competition hides handles. */
  readonly names: boolean;
  /** The page of a batch number; undefined where it isn't published. */
  readonly pageOf: (batch: string) => string | undefined;
}

/** What is known of one entry besides its row. */
export interface EntryResults {
  readonly place: PlaceReport | undefined;
  readonly bestOfShow: PlaceReport | undefined;
  readonly final: FinalRow | undefined;
  readonly sheets: readonly SheetRow[];
}

/** One entry as it may be shown. Of an entry whose batch isn't published neither words nor scores are. */
export function entryReport(row: EntryRow, slug: string, record: CompetitionRecord, results: EntryResults, showing: Showing): CompetitionEntry {
  const { entry, flight, style } = row;
  const isHidden = row.batch !== undefined && showing.pageOf(row.batch) === undefined;
  return {
    entry, slug,
    ...(flight === undefined ? {} : { flight }), ...(style === undefined ? {} : { style }),
    ...(isHidden || !showing.names ? {} : namesOf(row, showing)),
    ...(results.place === undefined ? {} : { place: results.place }),
    ...(results.bestOfShow === undefined ? {} : { bestOfShow: results.bestOfShow }),
    ...(isHidden || !showing.scores ? {} : scoresOf(record, results)),
  };
}

function namesOf({ title, brewer, batch }: EntryRow, { pageOf }: Showing): Partial<CompetitionEntry> {
  const slug = batch === undefined ? undefined : pageOf(batch);
  return {
    ...(title === undefined ? {} : { title }), ...(brewer === undefined ? {} : { brewer }),
    ...(batch === undefined || slug === undefined ? {} : { batch: { batch, slug } }),
  };
}

function scoresOf({ data: { sheet } }: CompetitionRecord, { final, sheets }: EntryResults): Partial<CompetitionEntry> {
  return {
    ...(final?.score === undefined ? {} : { score: final.score }),
    ...(final?.decision === undefined ? {} : { decision: final.decision }),
    ...(sheets.length === 0 ? {} : {
      sheets: sheets.map(sheetReport),
      sections: sheet.map(({ section, value }, index) => ({ section, maximum: value, mean: mean(sheets.map(({ sections }) => sections[index]?.points ?? 0)) })),
    }),
  };
}

function sheetReport(row: SheetRow): SheetReport {
  return { judge: row.judge, total: totalOf(row), sections: row.sections, ...(row.comment === undefined ? {} : { comment: row.comment }) };
}

/** Page names of entries, each its own: `E01` → `e01`. */
export function entrySlugs(record: CompetitionRecord): Map<string, string> {
  const taken = new Set<string>();
  return new Map(record.entries.map(({ entry }, index) => {
    const plain = slugOf(entry);
    const slug = plain === "" || taken.has(plain) ? `${plain === "" ? "entry" : plain}-row-${index + 1}` : plain;
    taken.add(slug);
    return [entry, slug];
  }));
}

import type { Competition } from "./schema/index.js";

export interface EntryRow {
  /** Registration id. */
  readonly entry: string;
  /** Blind code; absent until drawn. */
  readonly code?: string;
  readonly flight?: string;
  readonly style?: string;
  readonly brewer?: string;
  readonly title?: string;
  /** A batch of this log. */
  readonly batch?: string;
  readonly allergens: readonly string[];
  readonly declared: readonly string[];
}

export interface JudgeRow {
  readonly judge: string;
  /** Their own handle, if they also enter. */
  readonly brewer?: string;
  readonly flights: readonly string[];
}

/** One judge's sheet for one entry, as first written down. */
export interface SheetRow {
  readonly flight: string;
  readonly judge: string;
  readonly code: string;
  /** In the order of the sheet. */
  readonly sections: readonly { readonly section: string; readonly points: number; readonly comment?: string }[];
  readonly comment?: string;
}

export interface FinalRow {
  readonly flight: string;
  readonly code: string;
  /** Agreed after discussion. */
  readonly score?: number;
  readonly place?: number;
  /** How a tie or a change was settled. */
  readonly decision?: string;
}

export interface BestOfShowRow {
  readonly judge: string;
  readonly code: string;
  readonly rank: number;
  /** Where the judges agreed on it after all, as recorded; over the sum of ranks. */
  readonly place?: number;
  /** How a tie was settled. */
  readonly decision?: string;
}

/** A competition without a problem. Files that aren't there yet give empty lists. */
export interface CompetitionRecord {
  /** Path of index.md inside the log. */
  readonly file: string;
  /** The folder's name. */
  readonly slug: string;
  readonly data: Competition;
  readonly body: string;
  readonly entries: readonly EntryRow[];
  readonly judges: readonly JudgeRow[];
  readonly scores: readonly SheetRow[];
  readonly finals: readonly FinalRow[];
  readonly bestOfShow: readonly BestOfShowRow[];
}

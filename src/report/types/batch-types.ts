import type { DryHopReport, LedgerEntry, LedgerReport, PackageReport, TimelineReport } from "./cellar-types.js";
import type { BatchEntryReport, EntryNotesReport } from "./entry-types.js";
import type { CautionReport, CheckReport, FigureReport, FigureWorking, OutlookLine, PlanRow, PlannedReport, StyleRow } from "./figure-types.js";
import type { AimReport, TastedElsewhere, TastingReport } from "./tasting-types.js";

// One batch, whole.

export interface RecipeLine {
  readonly what: string;
  readonly amount: string;
  readonly detail: string;
  /** Share of the grist by mass, %, or of the batch; absent where it says nothing. */
  readonly share?: number;
}

export interface RecipeReport {
  readonly grist: readonly RecipeLine[];
  readonly kettleHops: readonly RecipeLine[];
  readonly dryHops: readonly RecipeLine[];
  readonly yeast?: RecipeLine;
  readonly water: readonly RecipeLine[];
  readonly mash: readonly RecipeLine[];
  readonly additions: readonly RecipeLine[];
}

/** One row of "what changed": the same thing in both batches. */
export interface ChangeRow {
  readonly part: "recipe" | "process" | "result";
  readonly what: string;
  readonly before: string;
  readonly after: string;
  /** changed: beyond the readings' uncertainty, or different text; within: a difference the readings can't tell from none. */
  readonly change: "changed" | "within" | "same" | "unknown";
}

export interface ComparisonReport {
  readonly with: string;
  readonly withSlug: string;
  readonly withTitle: string;
  readonly rows: readonly ChangeRow[];
  /** One sentence. */
  readonly says: string;
}

export interface NextStep {
  /** Permanent, for addresses and calendars: "dry-hop". */
  readonly id: string;
  readonly step: string;
  readonly state: "due" | "overdue" | "blocked" | "later";
  /** Civil time in the club's zone, as planned. */
  readonly when: string;
  /** The same as an instant, "2026-03-18T19:00:00.000Z"; absent where only the day is planned. */
  readonly instant?: string;
  readonly says: string;
}

export interface PhotoReport {
  readonly file: string;
  readonly alt: string;
}

export interface SwatchReport {
  /** "#rrggbb" */
  readonly css: string;
  readonly glassCm: number;
  readonly ebc: number;
}

export interface BatchReport {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly status: string;
  readonly brewed: string;
  readonly file: string;
  readonly brewer?: string;
  readonly season?: string;
  readonly seasonSlug?: string;
  readonly series?: string;
  readonly seriesSlug?: string;
  readonly style?: string;
  readonly equipment?: string;
  readonly packaged?: string;
  /** One or two sentences: what was tried and whether it worked. */
  readonly summary: string;
  readonly aim?: AimReport;
  readonly figures: Readonly<Record<string, FigureReport>>;
  readonly missing: Readonly<Record<string, string>>;
  readonly planned: Readonly<Record<string, PlannedReport>>;
  readonly checks: readonly CheckReport[];
  /** Each once, and none that a check tells. */
  readonly cautions?: readonly CautionReport[];
  readonly tastings: readonly TastingReport[];
  /** Tastings of other batches in which this one was poured too. */
  readonly tastedElsewhere?: readonly TastedElsewhere[];
  readonly ledger: readonly LedgerEntry[];
  readonly ledgerDetail?: LedgerReport;
  readonly timeline?: TimelineReport;
  readonly dryHops: readonly DryHopReport[];
  readonly packages: readonly PackageReport[];
  readonly styleRows: readonly StyleRow[];
  readonly recipe: RecipeReport;
  readonly comparison?: ComparisonReport;
  readonly next: readonly NextStep[];
  /** Plan against actual; empty without a plan. */
  readonly planRows: readonly PlanRow[];
  /** What to prepare and expect; empty for a finished batch. */
  readonly outlook: readonly OutlookLine[];
  readonly working: readonly FigureWorking[];
  readonly photos: readonly PhotoReport[];
  /** Markdown, as written; untrusted. */
  readonly notes: string;
  /** The beer's colour as sRGB, computed from the spectrum for a stated width of glass. */
  readonly swatch?: SwatchReport;
  /** Its entries in competitions whose results are out; absent where there are none. */
  readonly entries?: readonly BatchEntryReport[];
  /** For the printed entry notes; absent where the record enters nothing. */
  readonly entryNotes?: EntryNotesReport;
  /** Instruments whose limits were taken from common practice, said on the page. */
  readonly assumptions: readonly string[];
}

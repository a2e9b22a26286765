// Figures, how they came about, and what they are held against.

/** measured: read from an instrument, at most carried to another scale or to its reference temperature; computed: worked out from readings. */
export type FigureBasis = "measured" | "computed";

/** A value from readings, in the unit of the figures table. */
export interface FigureReport {
  readonly value: number;
  readonly unit: string;
  /** Half-width at 95 % (k = 2) of what the readings leave open; absent where no reading carries a limit. */
  readonly plusMinus?: number;
  /** What the relation itself is worth at 95 %, stated apart, in `unit`; absent where no scatter is known. */
  readonly model?: number;
  readonly basis: FigureBasis;
  readonly method: string;
  /** Figures and readings it was computed from, each once. */
  readonly from: readonly string[];
  /** What a reader must know: a stand-in used, a default taken. Whole sentences. */
  readonly notes?: readonly string[];
}

/** A value that the plan or the recipe predicts; no reading stands behind it. */
export interface PlannedReport {
  readonly value: number;
  readonly unit: string;
  /** Where the plan gives a band instead of one value. */
  readonly low?: number;
  readonly high?: number;
  readonly method: string;
  readonly from?: readonly string[];
  readonly notes?: readonly string[];
}

/** How a figure came about, as a tree that ends in readings and stated assumptions. */
export interface WorkingStep {
  /** Figure id, reading field ("fermenter.gravity") or a short name. */
  readonly label: string;
  readonly kind: "figure" | "reading" | "assumed" | "step";
  readonly value: number;
  readonly unit: string;
  readonly plusMinus?: number;
  /** As the record wrote it, for readings. */
  readonly written?: string;
  /** For assumptions: what was assumed and why. */
  readonly says?: string;
  readonly method?: string;
  /** The symbol this value has in the step above it. */
  readonly symbol?: string;
  readonly inputs?: readonly WorkingStep[];
}

/** One line of "which reading to improve": its share of the figure's variance, 0 to 1. */
export interface ReadingShare {
  readonly reading: string;
  readonly share: number;
}

export interface FigureWorking {
  readonly id: string;
  readonly step: WorkingStep;
  /** Largest first; empty where nothing carries a limit. */
  readonly shares: readonly ReadingShare[];
}

export type Verdict = "pass" | "watch" | "fail" | "unknown";

export interface CheckReport {
  readonly id: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** One or two plain sentences with the numbers. */
  readonly says: string;
  /** "plan" when held against the record's own plan, "common practice" otherwise. */
  readonly against: "plan" | "common practice" | "record" | "style";
  /** Figures and readings it rests on. */
  readonly from: readonly string[];
  /** What to be careful of, beside the number it concerns. */
  readonly caution?: string;
  /** Relations whose numbers the sentence gives and no figure does, by method id. */
  readonly methods?: readonly string[];
}

/** What to be careful of where no check says it, in the part of the page that holds its number. */
export interface CautionReport {
  readonly id: string;
  readonly part: "aim" | "what-happened" | "dry-hop" | "ledger" | "package";
  readonly says: string;
}

export interface StyleRow {
  readonly figure: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly value?: number;
  /** The value is the plan's: nothing is read yet. */
  readonly planned?: boolean;
  /** Of a value from readings. */
  readonly basis?: FigureBasis;
  /** Readings' and relation's half-widths together. */
  readonly plusMinus?: number;
  readonly verdict: Verdict;
  readonly says: string;
}

/** A planned figure beside what the readings gave. */
export interface PlanRow {
  readonly figure: string;
  readonly title: string;
  readonly planned: PlannedReport;
  readonly actual?: FigureReport;
  /** Actual less planned (less the nearer end of a planned band), in the figure's unit. */
  readonly difference?: number;
  /** as planned: inside the readings' uncertainty; differs: beyond it; open: not read yet. */
  readonly verdict: "as planned" | "differs" | "open";
  readonly says: string;
}

/** Something to expect or to prepare, worked out before it happens. */
export interface OutlookLine {
  readonly id: string;
  readonly what: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  /** Whose number it is: the recipe's own, common practice, or what this brewery's batches show. */
  readonly basis: "recipe" | "common practice" | "this brewery";
  /** How many batches stand behind it. */
  readonly batches?: number;
  readonly method?: string;
  /** Where it comes from, and what it leaves out. Whole sentences. */
  readonly says: string;
  readonly caution?: string;
}

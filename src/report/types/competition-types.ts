// A competition that is released.

/** Where an entry came: its place, and how many share it where no recorded decision settles it. */
export interface PlaceReport {
  readonly place: number;
  /** 1 unless the place is shared. */
  readonly shared: number;
  /** Entries with the same score stand apart only because of a recorded decision. */
  readonly settled?: boolean;
}

export interface SheetReport {
  readonly judge: string;
  /** Sum of the sections, as first written down. */
  readonly total: number;
  readonly sections: readonly { readonly section: string; readonly points: number; readonly comment?: string }[];
  readonly comment?: string;
}

/** One entry. What the competition keeps private isn't in it at all. */
export interface CompetitionEntry {
  /** Registration id; the blind code is never published. */
  readonly entry: string;
  readonly slug: string;
  readonly flight?: string;
  readonly style?: string;
  readonly title?: string;
  readonly brewer?: string;
  /** The batch of this log, where it is published. */
  readonly batch?: { readonly batch: string; readonly slug: string };
  readonly place?: PlaceReport;
  readonly bestOfShow?: PlaceReport;
  /** Agreed after discussion. */
  readonly score?: number;
  readonly decision?: string;
  /** One a judge, as first written down. */
  readonly sheets?: readonly SheetReport[];
  /** Mean of the judges, section by section, with the section's maximum. */
  readonly sections?: readonly { readonly section: string; readonly mean: number; readonly maximum: number }[];
}

/** How often and how far two judges of a flight were apart, before they talked. */
export interface JudgePairReport {
  readonly judges: readonly [string, string];
  readonly entries: number;
  /** First judge's total less the second's, mean. */
  readonly meanDifference: number;
  readonly meanApart: number;
  readonly mostApart: number;
  /** Entries on which they were within `agreeWithin` points. */
  readonly within: number;
}

export interface EstimateReport {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export interface AgreementReport {
  /** Judges and entries of the complete table it was computed from. */
  readonly judges: number;
  readonly entries: number;
  /** ICC(2,1): what one judge's score is worth; and ICC(2,k): the mean of these judges. Absolute agreement. */
  readonly single?: EstimateReport;
  readonly average?: EstimateReport;
  /** Kendall's W with what chance gives on average, 1/judges. */
  readonly concordance?: { readonly w: number; readonly chance: number; readonly p: number };
  readonly pairs: readonly JudgePairReport[];
  /** Entries on which the judges were further apart than `agreeWithin`; named where scores are public. */
  readonly apart: number;
  readonly apartEntries?: readonly string[];
  readonly says: string;
}

/** A place recomputed from the scores as first written down. */
export interface EntryStability {
  readonly entry: string;
  /** As awarded. */
  readonly place: number;
  /** By the mean of all judges, and with each left out. */
  readonly byMean: number;
  readonly without: readonly { readonly judge: string; readonly place: number }[];
}

/** Two entries next to each other, best first, and whether the judges' scatter leaves the order open. */
export interface GapReport {
  readonly first: string;
  readonly second: string;
  readonly clear: boolean;
  /** In points; absent where scores are private. */
  readonly difference?: number;
  readonly low?: number;
  readonly high?: number;
}

export interface StabilityReport {
  readonly entries: readonly EntryStability[];
  /** From the first place down to the last one given and the entry behind it. */
  readonly gaps: readonly GapReport[];
  readonly says: string;
}

export interface FlightReport {
  readonly flight: string;
  /** Best first; where scores are private, those without a place follow in order of registration. */
  readonly entries: readonly string[];
  readonly judges: readonly string[];
  readonly agreement?: AgreementReport;
  readonly stability?: StabilityReport;
  /** What is missing or can't be told; whole sentences. */
  readonly notes: readonly string[];
}

export interface BestOfShowReport {
  readonly judges: readonly string[];
  /** Best first. */
  readonly entries: readonly string[];
  readonly ranks?: readonly { readonly entry: string; readonly sum: number; readonly ranks: readonly { readonly judge: string; readonly rank: number }[] }[];
  readonly decision?: string;
  readonly concordance?: { readonly w: number; readonly chance: number; readonly p: number };
  readonly says: string;
}

export interface SeverityReport {
  readonly linked: boolean;
  /** Points above (lenient) or below (severe) the average judge, with the half-width at 95 %. Empty where flights aren't linked. */
  readonly judges: readonly { readonly judge: string; readonly severity: number; readonly plusMinus: number; readonly sheets: number }[];
  readonly groups: readonly { readonly flights: readonly string[]; readonly judges: readonly string[] }[];
  readonly p?: number;
  readonly says: string;
}

export interface CompetitionReport {
  readonly name: string;
  readonly slug: string;
  readonly date: string;
  readonly released: string;
  readonly sheet: readonly { readonly section: string; readonly maximum: number }[];
  /** All sections together. */
  readonly maximum: number;
  readonly agreeWithin: number;
  readonly feedback: "private" | "entrants" | "public";
  readonly handles: "shown" | "hidden";
  /** One or two sentences. */
  readonly says: string;
  readonly entries: readonly CompetitionEntry[];
  readonly flights: readonly FlightReport[];
  readonly bestOfShow?: BestOfShowReport;
  readonly severity?: SeverityReport;
  /** Markdown, as written; untrusted. */
  readonly notes: string;
}

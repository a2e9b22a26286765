import type { BatchReport, SwatchReport } from "./batch-types.js";
import type { CompetitionReport } from "./competition-types.js";
import type { ComingReport } from "./entry-types.js";
import type { FigureReport } from "./figure-types.js";
import type { SeriesTastings } from "./tasting-types.js";

// Seasons, lists, and the whole log.

export interface SeasonPoint {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly brewed: string;
  readonly value: number;
  readonly plusMinus?: number;
}

/** One figure over the season's batches, in brew order. */
export interface SeasonSeries {
  readonly figure: string;
  readonly title: string;
  readonly unit: string;
  readonly points: readonly SeasonPoint[];
  /** Batches without it, and why. */
  readonly without: readonly { readonly batch: string; readonly why: string }[];
  /** Of a trend over time; absent where that isn't asked: what the brewers set is told, not tested. */
  readonly claim?: Claim;
  /** Individuals and moving ranges, for what tells whether the process holds. */
  readonly control?: ControlReport;
  /** The chart's description: the trend in words, or that there are too few batches. */
  readonly says: string;
}

/** Limits from the moving range, and what is beyond them. */
export interface ControlReport {
  /** none: under eight batches, nothing is drawn but the points; provisional: under fifteen. */
  readonly standing: "none" | "provisional" | "set";
  readonly center: number;
  readonly lower: number;
  readonly upper: number;
  /** From one batch to the next: one fewer than the points. */
  readonly movingRanges: readonly number[];
  readonly meanMovingRange: number;
  readonly movingRangeUpper: number;
  readonly signals: readonly SignalReport[];
  /** Whether it holds, in words. */
  readonly says: string;
}

export interface SignalReport {
  /** The batch beyond the limit, or the last of the run. */
  readonly batch: string;
  readonly slug: string;
  readonly rule: "beyond-limit" | "run-of-eight";
  readonly side: "above" | "below";
  /** First batch of the run. */
  readonly since?: string;
  /** What sets it apart from the season's other batches, by the record; empty where nothing does. */
  readonly different: readonly string[];
  readonly says: string;
}

export type Claim = "none" | "too-few" | "possible" | "shown";

export interface RelationReport {
  readonly x: string;
  readonly xTitle: string;
  readonly xUnit: string;
  readonly y: string;
  readonly yTitle: string;
  readonly yUnit: string;
  readonly n: number;
  readonly points: readonly { readonly batch: string; readonly slug: string; readonly x: number; readonly y: number }[];
  readonly slope?: number;
  readonly low?: number;
  readonly high?: number;
  readonly p?: number;
  readonly adjusted?: number;
  readonly claim: Claim;
  /** The fitted line with its 95 % interval of the mean, drawn over the data's own range. */
  readonly line?: readonly { readonly x: number; readonly y: number; readonly low: number; readonly high: number }[];
  /** Theil–Sen: the median of the slopes between all pairs of batches; its interval where so few batches allow one. */
  readonly robust?: { readonly slope: number; readonly low?: number; readonly high?: number };
  /** Other figures that moved together with `x` (variance inflation above 5); `inflation` absent: one follows exactly from the other. */
  readonly together?: readonly TogetherReport[];
  /** One of the questions put to every season; the others share a smaller part of the chance of a false claim. */
  readonly first: boolean;
  /** Worth a picture on the page; the others stand in a table. */
  readonly onPage: boolean;
  /** Whether the line bends; absent where that isn't asked. */
  readonly bend?: BendReport;
  readonly says: string;
}

export interface TogetherReport {
  readonly figure: string;
  readonly title: string;
  readonly inflation?: number;
}

/** A curve held against the straight line. Where it is shown, `line` is the curve. */
export interface BendReport {
  readonly p: number;
  readonly adjusted: number;
  readonly claim: Claim;
  /** Slope of the curve at the least and at the most of x, with its 95 % interval. */
  readonly ends: readonly { readonly x: number; readonly slope: number; readonly low: number; readonly high: number }[];
  readonly says: string;
}

/** One outcome by something that is named: form, hop, yeast, vessel. */
export interface GroupReport {
  readonly by: string;
  readonly byTitle: string;
  readonly y: string;
  readonly yTitle: string;
  readonly yUnit: string;
  readonly n: number;
  /** Largest group first. */
  readonly groups: readonly {
    readonly name: string;
    readonly mean: number;
    readonly points: readonly { readonly batch: string; readonly slug: string; readonly y: number }[];
  }[];
  /** The group that lies furthest from all the others, where any two could be compared. */
  readonly apart?: {
    readonly group: string;
    readonly difference: number;
    readonly low: number;
    readonly high: number;
    readonly p: number;
    readonly adjusted: number;
  };
  readonly claim: Claim;
  readonly together?: readonly TogetherReport[];
  readonly onPage: boolean;
  readonly says: string;
}

/** One attribute over the season's tastings. */
export interface PooledReport {
  readonly attribute: string;
  readonly tastings: readonly {
    readonly batch: string;
    readonly slug: string;
    readonly lift: number;
    readonly tasters: number;
    /** 95 % t-interval of the mean difference; absent for one taster, or where all differences are equal. */
    readonly low?: number;
    readonly high?: number;
  }[];
  /** Random effects with Knapp–Hartung interval; absent under five batches. */
  readonly estimate?: number;
  readonly low?: number;
  readonly high?: number;
  /** Standard deviation of the true lifts between batches, and the share of the scatter that is more than the tasters' own (I²). */
  readonly between?: number;
  readonly heterogeneity?: number;
  /** Where the lift of one more such batch would lie, 95 %. */
  readonly nextLow?: number;
  readonly nextHigh?: number;
  /** The pooled lift is clear of 0 with all pooled attributes allowed for. */
  readonly clear?: boolean;
  readonly says: string;
}

export interface SeasonReport {
  readonly season: string;
  readonly slug: string;
  readonly batches: readonly string[];
  readonly rows: readonly BatchSummary[];
  readonly series: readonly SeasonSeries[];
  readonly relations: readonly RelationReport[];
  readonly groups: readonly GroupReport[];
  /** How many trends and comparisons were tested on the page, and how chance is kept in check. */
  readonly tested: { readonly count: number; readonly says: string };
  /** By attribute. */
  readonly pooled: Readonly<Record<string, PooledReport>>;
  readonly summary: string;
}

/** What lists need of a batch. */
export interface BatchSummary {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly status: string;
  readonly brewed: string;
  readonly brewer?: string;
  readonly season?: string;
  readonly series?: string;
  readonly style?: string;
  readonly hops: readonly string[];
  readonly summary: string;
  readonly figures: Readonly<Record<string, FigureReport>>;
  readonly swatch?: SwatchReport;
}

/** One line of a series' table: the same thing in every version. */
export interface VersionRow {
  readonly part: "recipe" | "process" | "result";
  readonly what: string;
  /** One a version, oldest first; `changed`: differs from the version before by more than the readings leave open. */
  readonly cells: readonly { readonly text: string; readonly changed: boolean }[];
  /** Changed in any version. */
  readonly changed: boolean;
}

/** One figure over the versions, where it moved. */
export interface VersionFigure {
  readonly figure: string;
  readonly title: string;
  readonly unit: string;
  readonly points: readonly { readonly batch: string; readonly value: number; readonly plusMinus?: number }[];
  readonly says: string;
}

/** One beer, version after version. */
export interface SeriesVersions {
  readonly rows: readonly VersionRow[];
  /** Only those that moved, those that say most first. */
  readonly moved: readonly VersionFigure[];
  readonly says: string;
}

export interface ClubReport {
  readonly name: string;
  readonly zone: string;
  readonly units: "metric" | "us";
  readonly url?: string;
  readonly asOf: string;
  /** Cautions the club wrote for its own place. */
  readonly cautions: readonly string[];
}

/** The whole log, computed: what charts and pages are made from. */
export interface LogReport {
  readonly club: ClubReport;
  /** Published batches, newest brew date first. */
  readonly batches: readonly BatchReport[];
  readonly seasons: readonly SeasonReport[];
  /** Series name → batch slugs in order of brew date. */
  readonly series: readonly { readonly name: string; readonly slug: string; readonly batches: readonly string[]; readonly versions?: SeriesVersions; readonly tastings?: SeriesTastings }[];
  readonly hops: readonly { readonly name: string; readonly slug: string; readonly batches: readonly string[] }[];
  /** Results that are released, newest first. Nothing of any other competition's results is in here. */
  readonly competitions: readonly CompetitionReport[];
  /** Competitions still to be held, the next one first: which batch to enter. */
  readonly coming: readonly ComingReport[];
  /** What the build left out, for --keep-going: file and why. */
  readonly leftOut: readonly { readonly file: string; readonly why: string }[];
}

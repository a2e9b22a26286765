import type { FigureReport } from "./figure-types.js";

// What happened in the cellar: the timeline, the hops, the ledger, the package.

export type LedgerDestination = "samples" | "dumps" | "left" | "package" | "unaccounted";

/** One flow of beer, at 20 °C. The litres of all entries sum to what went in. */
export interface LedgerEntry {
  readonly to: LedgerDestination;
  readonly litres: number;
  readonly plusMinus?: number;
  /** Which of several: "keg", "6 bottles", "2026-03-23 19:00". */
  readonly what?: string;
  readonly from: readonly string[];
}

export interface LedgerReport {
  /** Fermenter volume plus additions, L at 20 °C. */
  readonly into: number;
  readonly intoPlusMinus?: number;
  readonly transferred?: number;
  readonly transferredPlusMinus?: number;
  readonly entries: readonly LedgerEntry[];
  readonly unaccountedPlusMinus?: number;
  /** Beer held by hops that common practice expects in the unaccounted and left parts, L. */
  readonly hopLoss?: { readonly low: number; readonly high: number; readonly source: string };
  /** One sentence: whether it closes, by how much not, which reading would settle it. */
  readonly says: string;
}

export type EventKind =
  | "pitch" | "addition" | "sample" | "dry-hop" | "hops-out" | "crash" | "dump" | "transfer" | "package" | "reading" | "tasting";

export interface EventReport {
  readonly kind: EventKind;
  /** Civil time as the record wrote it. */
  readonly at: string;
  /** Hours since pitching. */
  readonly hour: number;
  /** True where only a date is recorded: drawn at noon. */
  readonly dateOnly: boolean;
  /** Short, for direct labels: "110 g Cascade". */
  readonly label: string;
  /** True when it hasn't happened yet: a planned date. */
  readonly planned?: boolean;
}

export type PhaseKind = "fermentation" | "dry hop" | "crash";

export interface PhaseReport {
  readonly kind: PhaseKind;
  readonly fromHour: number;
  readonly toHour: number;
}

/** A column thinned for drawing: envelope-preserving, gaps kept as separate runs. */
export interface SeriesReport {
  readonly unit: string;
  readonly source: "log" | "hand";
  /** Runs without a gap; [hour, value]. */
  readonly runs: readonly (readonly (readonly [number, number])[])[];
}

export interface TimelineReport {
  readonly start: string;
  readonly events: readonly EventReport[];
  readonly phases: readonly PhaseReport[];
  readonly temperature?: SeriesReport;
  readonly gravity?: SeriesReport;
  /** Hand readings of gravity, SG 20/20. */
  readonly gravityReadings?: SeriesReport;
  readonly pressure?: SeriesReport;
  /** Stretches longer than two log steps and two hours with no row. */
  readonly gaps: readonly { readonly fromHour: number; readonly toHour: number }[];
  /** Set point of the crash, °C. */
  readonly crashSet?: number;
  /** One or two sentences that state the trend: the chart's description. */
  readonly says: string;
  /** What the log doesn't cover or has out of order; whole sentences. */
  readonly notes: readonly string[];
}

export interface DryHopReport {
  readonly hop: string;
  readonly slug: string;
  readonly form: string;
  readonly held?: string;
  readonly into: "fermenter" | "keg";
  readonly grams?: number;
  readonly alpha?: number;
  readonly oil?: number;
  readonly added: string;
  readonly out?: string;
  readonly contactDays?: number;
  readonly temperatureMean?: number;
  readonly temperatureLow?: number;
  readonly temperatureHigh?: number;
  /** Hours outside the planned (or common-practice) band. */
  readonly hoursOutside?: number;
  readonly dose?: number;
  readonly purged?: boolean;
  readonly notes: readonly string[];
}

export interface PackageReport {
  readonly into: "keg" | "bottles" | "cask";
  readonly count: number;
  readonly date?: string;
  readonly litres?: number;
  readonly carbonationAsked?: number;
  readonly carbonationMeasured?: number;
  readonly temperatureC?: number;
  /** Gauge, kPa, for the carbonation and temperature asked. */
  readonly pressure?: FigureReport;
  readonly primingSugar?: FigureReport;
  readonly sugar?: string;
  /** Why there is no pressure, sugar or oxygen figure. */
  readonly missing: readonly string[];
  readonly oxygen?: FigureReport;
  readonly limitKPa?: number;
  readonly purge?: string;
}

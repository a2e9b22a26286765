/**
 * Brewing relations: numbers in, numbers out. Each is one file with its function and its
 * descriptor; `relations.ts` is the table of contents, `methods` the list that pages print.
 */
export type { MethodAbout, MethodCheck, MethodInput, SourceStatus } from "./method-about.js";
export { methodSubjects, type MethodSubject } from "./method-subject.js";
export { defineMethod, type Described, type Method } from "./method.js";
export { defineRelation, type Relation } from "./relation.js";
export { methodAbouts, methods } from "./methods.js";
export * from "./relations.js";

// What relations take and return besides numbers
export type { ScreenColor } from "./beer-color.js";
export type { Tristimulus } from "./beer-tristimulus.js";
export type { Band, HoursWithin } from "./hours-within.js";
export type { SeriesExtremes } from "./series-extremes.js";
export type { SteepestFall } from "./steepest-fall.js";
export type { TerminalRun } from "./terminal-run.js";
export type { TimedValue, TimeWindow } from "./timed-series.js";
export type { TimeWeightedMean } from "./time-weighted-mean.js";
export type { WarmestHour } from "./warmest-hour.js";

// Tables and constants with a source
export { dryHopLoss, type HopForm, type HopHeld, type HopLossRange } from "./dry-hop-loss.js";
export { standardAtmosphereKPa } from "./gas.js";
export { oxygenInAir } from "./package-oxygen.js";
export { primingSugars, type SugarKind } from "./priming-sugar.js";
export { settlingAssumptions } from "./settling-velocity.js";
export { grainAbsorption } from "./water-needed.js";

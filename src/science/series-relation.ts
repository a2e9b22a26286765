import { type MethodInput } from "./method-about.js";
import { type TimedValue, type TimeWindow } from "./timed-series.js";

const hours = (symbol: string, meaning: string, low = -1e6): MethodInput => ({ symbol, meaning, unit: "h", low, high: 1e6 });

/** How the descriptors of all relations on a log in a window begin. */
export const windowInputs: readonly MethodInput[] = [
  hours("t1", "beginning of the window"),
  hours("t2", "end of the window"),
  hours("g", "longest step between readings that isn't a gap", 0),
];

/** One reading, and so on for each. */
export const readingInputs: readonly MethodInput[] = [
  hours("t", "time of a reading"),
  { symbol: "x", meaning: "its value", unit: "as logged", low: -1e9, high: 1e9 },
];

/** Reads `t1, t2, g, t, x, t, x, …` as a check gives them. */
export function readWindowed(given: readonly number[]): [readonly TimedValue[], TimeWindow, number] {
  const [fromHours = NaN, toHours = NaN, longestGapHours = NaN, ...readings] = given;
  return [readReadings(readings), { fromHours, toHours }, longestGapHours];
}

/** Reads `t, x, t, x, …`. */
export function readReadings(given: readonly number[]): readonly TimedValue[] {
  return given.flatMap((hours, index) => (index % 2 === 0 ? [{ hours, value: given[index + 1] ?? NaN }] : []));
}

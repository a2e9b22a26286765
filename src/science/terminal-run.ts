import { defineRelation } from "./relation.js";
import { seriesRefusal } from "./series-refusal.js";
import { readingInputs, readReadings } from "./series-relation.js";
import { type TimedValue } from "./timed-series.js";

/** The readings at the end of a series that agree with the last one. */
export interface TerminalRun {
  readonly fromHours: number;
  readonly toHours: number;
  /** How many readings it rests on; one alone shows nothing. */
  readonly count: number;
}

/** Slack for gravities as decimals, which 1.010 - 1.009 misses by. */
const rounding = 1e-9;

/** How far back gravity has been unchanged. */
export const terminalRun = defineRelation(
  {
    id: "terminal-run",
    title: "Unchanged gravity",
    subject: "log",
    says: "How far back the unbroken run of readings reaches that agree with the latest one. Fermentation counts as over when gravity stays within 0.001 for two to three days (common practice).",
    inputs: [{ symbol: "δ", meaning: "how far apart readings may be and still agree", unit: "as logged", low: 0, high: 1e9 }, ...readingInputs],
    output: { symbol: "h", unit: "h" },
    formula: "the readings before the last, back to the first one that is further than δ from the last",
    range: "two readings or more; nothing is known between them",
    source: "the same reading within 0.001 over two to three days: common practice",
    status: "common practice",
    checks: [
      { given: [0.001, 0, 1.02, 24, 1.011, 48, 1.01, 72, 1.01], part: "fromHours", gives: 24, within: 1e-9, source: "by hand: 1.011 agrees with 1.010 within 0.001, 1.020 does not" },
      { given: [0.001, 0, 1.01, 24, 1.013, 48, 1.01], part: "count", gives: 1, within: 1e-9, source: "by hand: the reading between breaks the run" },
    ],
  },
  (readings: readonly TimedValue[], within: number): TerminalRun => {
    const last = readings.at(-1) ?? { hours: NaN, value: NaN };
    const lastOutside = readings.findLastIndex(({ value }) => Math.abs(value - last.value) > within + rounding);
    const first = readings[lastOutside + 1] ?? last;
    return { fromHours: first.hours, toHours: last.hours, count: readings.length - lastOutside - 1 };
  },
  {
    refuses: (readings, within) => seriesRefusal(readings) ?? (within >= 0 ? undefined : "the readings' distance must not be negative"),
    read: ([within = NaN, ...readings]) => [readReadings(readings), within],
  },
);

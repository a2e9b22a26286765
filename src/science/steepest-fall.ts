import { hourStarts, sweepValue } from "./moving-hour.js";
import { defineRelation } from "./relation.js";
import { coverageRefusal } from "./series-refusal.js";
import { readingInputs, readWindowed, windowInputs } from "./series-relation.js";
import { sameHours, type TimedValue, type TimeWindow } from "./timed-series.js";
import { spanHours, unbrokenRuns } from "./unbroken-runs.js";

export interface SteepestFall {
  /** How far the log fell in that hour; 0 when it never fell. */
  readonly fall: number;
  /** When that hour began. */
  readonly fromHours: number;
}

/** Largest fall of a log over an hour. */
export const steepestFall = defineRelation(
  {
    id: "steepest-fall",
    title: "Steepest fall",
    subject: "log",
    says: "The most a log fell over any 60 minutes: how fast a crash really cooled the beer.",
    inputs: [...windowInputs, ...readingInputs],
    output: { symbol: "r", unit: "per h" },
    formula: "r = largest x(t) - x(t + 1 h), straight lines between readings, no gap within the hour",
    range: "an unbroken hour or more; slower logs than hourly show no more than their own mean slope",
    source: "definition",
    status: "published",
    checks: [
      { given: [0, 4, 2, 0, 20, 1, 20, 2, 14, 3, 13], part: "fall", gives: 6, within: 1e-9, source: "by hand: from 20 at 1 h to 14 at 2 h" },
      { given: [0, 4, 2, 0, 20, 0.5, 20, 1, 16, 1.5, 12, 3, 12], part: "fall", gives: 8, within: 1e-9, source: "by hand: from 20 at 0.5 h to 12 at 1.5 h" },
    ],
  },
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): SteepestFall => {
    let best: SteepestFall = { fall: 0, fromHours: window.fromHours };
    for (const run of unbrokenRuns(series, window, longestGapHours)) {
      if (spanHours(run) < 1 - sameHours) continue;
      const [now, anHourOn] = [sweepValue(run), sweepValue(run)];
      for (const fromHours of hourStarts(run)) {
        const fall = now(fromHours) - anHourOn(fromHours + 1);
        if (fall > best.fall) best = { fall, fromHours };
      }
    }
    return best;
  },
  { refuses: (series, window, longestGapHours) => coverageRefusal(series, window, longestGapHours, 1), read: readWindowed },
);

import { defineRelation } from "./relation.js";
import { coverageRefusal } from "./series-refusal.js";
import { readingInputs, readWindowed, windowInputs } from "./series-relation.js";
import { type TimedValue, type TimeWindow } from "./timed-series.js";
import { spanHours, sumOverLines, unbrokenRuns, type Run } from "./unbroken-runs.js";

export interface TimeWeightedMean {
  readonly mean: number;
  /** Hours of the window that rest on readings, and hours that don't; together the window. */
  readonly coveredHours: number;
  readonly gapHours: number;
}

/** Mean of a log in which each stretch of time counts by its length. */
export const timeWeightedMean = defineRelation(
  {
    id: "time-weighted-mean",
    title: "Mean over time",
    subject: "log",
    says: "The mean of a log over a stretch of time, each moment counted alike: readings close together don't count for more. Gaps are left out and said.",
    inputs: [...windowInputs, ...readingInputs],
    output: { symbol: "x̄", unit: "as logged" },
    formula: "x̄ = ∫ x dt / ∫ dt over the parts of t1 to t2 without a gap, by trapezoids",
    range: "a log of two readings or more; hourly and minutely logs of the same course give the same mean",
    source: "definition of the mean over time, straight lines between readings",
    status: "published",
    checks: [
      { given: [0, 4, 5, 0, 10, 1, 20, 4, 20], part: "mean", gives: 18.75, within: 1e-9, source: "by hand: one hour at a mean of 15 and three at 20" },
      { given: [0, 12, 2, 0, 10, 1, 10, 11, 20, 12, 20], part: "gapHours", gives: 10, within: 1e-9, source: "by hand: nothing read from 1 h to 11 h" },
    ],
  },
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): TimeWeightedMean => {
    const runs = unbrokenRuns(series, window, longestGapHours);
    const coveredHours = runs.reduce((sum, run) => sum + spanHours(run), 0);
    const mean = runs.reduce((sum, run) => sum + area(run), 0) / coveredHours;
    return { mean, coveredHours, gapHours: Math.max(0, window.toHours - window.fromHours - coveredHours) };
  },
  { refuses: (series, window, longestGapHours) => coverageRefusal(series, window, longestGapHours, 0), read: readWindowed },
);

function area(run: Run): number {
  return sumOverLines(run, (a, b) => ((a.value + b.value) / 2) * (b.hours - a.hours));
}

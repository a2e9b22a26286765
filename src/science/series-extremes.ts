import { defineRelation } from "./relation.js";
import { windowRefusal } from "./series-refusal.js";
import { readingInputs, readWindowed, windowInputs } from "./series-relation.js";
import { type TimedValue, type TimeWindow } from "./timed-series.js";
import { unbrokenRuns, type Run } from "./unbroken-runs.js";

export interface SeriesExtremes {
  readonly lowest: number;
  /** The first time it was reached. */
  readonly lowestAtHours: number;
  readonly highest: number;
  readonly highestAtHours: number;
}

/** Lowest and highest of a log in a stretch of time. */
export const seriesExtremes = defineRelation(
  {
    id: "series-extremes",
    title: "Lowest and highest",
    subject: "log",
    says: "The lowest and the highest a log shows in a stretch of time, its ends included.",
    inputs: [...windowInputs, ...readingInputs],
    output: { symbol: "min, max", unit: "as logged" },
    formula: "smallest and largest x from t1 to t2; at the ends on the straight line between readings that aren't a gap apart",
    range: "one reading or more in the stretch; what happened between readings isn't known",
    source: "definition",
    status: "published",
    checks: [
      { given: [1, 3, 5, 0, 10, 2, 14, 4, 12], part: "highest", gives: 14, within: 1e-9, source: "by hand: the reading at 2 h" },
      { given: [1, 3, 5, 0, 10, 2, 14, 4, 12], part: "lowest", gives: 12, within: 1e-9, source: "by hand: half way from 10 to 14 at 1 h" },
    ],
  },
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): SeriesExtremes => {
    const runs = unbrokenRuns(series, window, longestGapHours);
    const lowest = first(runs, (a, b) => a < b);
    const highest = first(runs, (a, b) => a > b);
    return { lowest: lowest.value, lowestAtHours: lowest.hours, highest: highest.value, highestAtHours: highest.hours };
  },
  {
    refuses: (series, window, longestGapHours) =>
      windowRefusal(series, window, longestGapHours) ??
      (unbrokenRuns(series, window, longestGapHours).length > 0 ? undefined : "the log has no readings in this window"),
    read: readWindowed,
  },
);

function first(runs: readonly Run[], isBetter: (a: number, b: number) => boolean): TimedValue {
  const better = (best: TimedValue, reading: TimedValue): TimedValue => (isBetter(reading.value, best.value) ? reading : best);
  return runs.map((run) => run.reduce(better)).reduce(better);
}

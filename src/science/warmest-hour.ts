import { hourStarts, sweepArea, sweepValue } from "./moving-hour.js";
import { defineRelation } from "./relation.js";
import { coverageRefusal } from "./series-refusal.js";
import { readingInputs, readWindowed, windowInputs } from "./series-relation.js";
import { sameHours, type TimedValue, type TimeWindow } from "./timed-series.js";
import { spanHours, unbrokenRuns, type Run } from "./unbroken-runs.js";

export interface WarmestHour {
  readonly mean: number;
  /** When that hour began. */
  readonly fromHours: number;
}

/** The 60 minutes with the highest mean. */
export const warmestHour = defineRelation(
  {
    id: "warmest-hour",
    title: "Warmest hour",
    subject: "log",
    says: "The highest mean over any 60 minutes: beer gives off carbon dioxide for as long as it is warm, so a single high reading counts for little.",
    inputs: [...windowInputs, ...readingInputs],
    output: { symbol: "x̄1", unit: "as logged" },
    formula: "x̄1 = largest ∫ x dt over any hour from t1 to t2, straight lines between readings, no gap within the hour",
    range: "an unbroken hour or more",
    source: "definition",
    status: "published",
    checks: [
      { given: [0, 4, 2, 0, 18, 1, 20, 2, 20, 3, 18], part: "mean", gives: 20, within: 1e-9, source: "by hand: the level hour from 1 h to 2 h" },
      { given: [0, 2, 2, 0, 18, 1, 20, 2, 18], part: "mean", gives: 19.5, within: 1e-9, source: "by hand: half an hour up from 19 to 20 and half an hour down" },
    ],
  },
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): WarmestHour =>
    unbrokenRuns(series, window, longestGapHours)
      .filter((run) => spanHours(run) >= 1 - sameHours)
      .map((run) => warmestOf(run))
      .reduce((best, hour) => (hour.mean > best.mean ? hour : best)),
  { refuses: (series, window, longestGapHours) => coverageRefusal(series, window, longestGapHours, 1), read: readWindowed },
);

/** The mean is highest where a line begins or ends, or where the hour is as warm at its end as at its start. */
function warmestOf(run: Run): WarmestHour {
  const [now, anHourOn, areaBefore, areaTo] = [sweepValue(run), sweepValue(run), sweepArea(run), sweepArea(run)];
  let best: WarmestHour = { mean: -Infinity, fromHours: NaN };
  let last: TimedValue | undefined;
  const tryFrom = (fromHours: number) => {
    const mean = areaTo(fromHours + 1) - areaBefore(fromHours);
    if (mean > best.mean) best = { mean, fromHours };
  };
  for (const hours of hourStarts(run)) {
    const lead = { hours, value: anHourOn(hours + 1) - now(hours) };
    if (last !== undefined && last.value > 0 && lead.value < 0) tryFrom(zeroBetween(last, lead));
    tryFrom(hours);
    last = lead;
  }
  return best;
}

function zeroBetween(a: TimedValue, b: TimedValue): number {
  return a.hours + ((b.hours - a.hours) * a.value) / (a.value - b.value);
}

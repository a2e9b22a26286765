import { sameHours, type TimedValue, type TimeWindow } from "./timed-series.js";
import { spanHours, unbrokenRuns } from "./unbroken-runs.js";

/** Why a series can't be used, or undefined when it can: one reading or more, finite, times strictly rising. */
export function seriesRefusal(series: readonly TimedValue[]): string | undefined {
  if (series.length === 0) return "a series needs at least one reading";
  let before = -Infinity;
  for (const { hours, value } of series) {
    if (!Number.isFinite(hours) || !Number.isFinite(value)) return "every reading must have a time and a value";
    if (hours <= before) return `times must rise from reading to reading, got ${hours} h after ${before} h`;
    before = hours;
  }
  return undefined;
}

/** Why a window of a log can't be computed on, or undefined when it can. */
export function windowRefusal(series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): string | undefined {
  if (!(window.fromHours < window.toHours)) return "the window must begin before it ends";
  if (!(longestGapHours > 0)) return "the longest gap must be above 0 h";
  return seriesRefusal(series);
}

/** As windowRefusal; also refuses a window in which no two readings are joined for at least `leastHours`. */
export function coverageRefusal(series: readonly TimedValue[], window: TimeWindow, longestGapHours: number, leastHours: number): string | undefined {
  const refusal = windowRefusal(series, window, longestGapHours);
  if (refusal !== undefined) return refusal;
  const covered = unbrokenRuns(series, window, longestGapHours).some((run) => spanHours(run) > 0 && spanHours(run) >= leastHours - sameHours);
  return covered ? undefined : "the log has no unbroken readings in this window";
}

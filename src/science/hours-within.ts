import { defineRelation } from "./relation.js";
import { windowRefusal } from "./series-refusal.js";
import { readingInputs, readWindowed, windowInputs } from "./series-relation.js";
import { type TimedValue, type TimeWindow } from "./timed-series.js";
import { spanHours, sumOverLines, unbrokenRuns } from "./unbroken-runs.js";

export interface Band {
  readonly low: number;
  readonly high: number;
}

/** Hours of a window by where the log was; the four add up to the window. */
export interface HoursWithin {
  readonly withinHours: number;
  readonly belowHours: number;
  readonly aboveHours: number;
  readonly gapHours: number;
}

const bandInputs = [
  { symbol: "a", meaning: "lower end of the band", unit: "as logged", low: -1e9, high: 1e9 },
  { symbol: "b", meaning: "upper end of the band", unit: "as logged", low: -1e9, high: 1e9 },
];

/** Hours a log spent within a band. */
export const hoursWithin = defineRelation(
  {
    id: "hours-within",
    title: "Hours within a band",
    subject: "log",
    says: "How long a log stayed between two values, and how long below, above and unread. Crossings are read off the straight line between readings.",
    inputs: [...windowInputs, ...bandInputs, ...readingInputs],
    output: { symbol: "h", unit: "h" },
    formula: "time from t1 to t2 for which a ≤ x ≤ b, straight lines between readings",
    range: "gaps count as unread, never as within",
    source: "definition",
    status: "published",
    checks: [
      { given: [0, 10, 20, 12, 14, 0, 10, 10, 20], part: "withinHours", gives: 2, within: 1e-9, source: "by hand: one degree an hour from 10 to 20 takes 2 h from 12 to 14" },
      { given: [0, 10, 20, 12, 14, 0, 10, 10, 20], part: "aboveHours", gives: 6, within: 1e-9, source: "by hand: from 14 to 20" },
      { given: [0, 12, 2, 0, 20, 0, 10, 1, 10], part: "gapHours", gives: 11, within: 1e-9, source: "by hand: nothing read after 1 h" },
    ],
  },
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number, band: Band): HoursWithin => {
    const runs = unbrokenRuns(series, window, longestGapHours);
    const hoursOf = (share: (a: number, b: number) => number) =>
      runs.reduce((sum, run) => sum + sumOverLines(run, (a, b) => (b.hours - a.hours) * share(a.value, b.value)), 0);
    const belowHours = hoursOf((a, b) => shareBelow(a, b, band.low));
    const aboveHours = hoursOf((a, b) => shareBelow(-a, -b, -band.high));
    const coveredHours = runs.reduce((sum, run) => sum + spanHours(run), 0);
    const gapHours = Math.max(0, window.toHours - window.fromHours - coveredHours);
    return { withinHours: Math.max(0, coveredHours - belowHours - aboveHours), belowHours, aboveHours, gapHours };
  },
  {
    refuses: (series, window, longestGapHours, { low, high }) =>
      windowRefusal(series, window, longestGapHours) ?? (low <= high ? undefined : "the band's lower end must not be above its upper end"),
    read: ([from = NaN, to = NaN, gap = NaN, low = NaN, high = NaN, ...readings]) => [...readWindowed([from, to, gap, ...readings]), { low, high }],
  },
);

/** The share of a straight line from a to b that lies below a limit. */
function shareBelow(a: number, b: number, limit: number): number {
  if (a >= limit && b >= limit) return 0;
  if (a < limit && b < limit) return 1;
  return (limit - Math.min(a, b)) / Math.abs(b - a);
}

import { defineRelation } from "./relation.js";
import { seriesRefusal } from "./series-refusal.js";
import { readingInputs, readReadings } from "./series-relation.js";
import { between, firstAtOrAfter, sameHours, type TimedValue } from "./timed-series.js";

/** What a log shows at a moment. */
export const valueAt = defineRelation(
  {
    id: "value-at",
    title: "Value at a moment",
    subject: "log",
    says: "What a log shows at a moment: its reading then, or the straight line between the readings before and after, unless they are a gap apart.",
    inputs: [
      { symbol: "t0", meaning: "the moment", unit: "h", low: -1e6, high: 1e6 },
      { symbol: "g", meaning: "longest step between readings that isn't a gap", unit: "h", low: 0, high: 1e6 },
      ...readingInputs,
    ],
    output: { symbol: "x", unit: "as logged" },
    formula: "x = x1 + (x2 - x1) (t0 - t1) / (t2 - t1)",
    range: "from the first reading to the last, outside gaps",
    source: "definition",
    status: "published",
    checks: [{ given: [1.5, 2, 0, 10, 1, 12, 2, 16], gives: 14, within: 1e-9, source: "by hand: half way from 12 to 16" }],
  },
  (series: readonly TimedValue[], hours: number, _longestGapHours: number): number => {
    const [a, b] = around(series, hours);
    if (b === undefined) throw new RangeError(`value-at: nothing is read at ${hours} h`);
    return a === undefined || b.hours === hours ? b.value : between(a, b, hours);
  },
  {
    refuses: (series, hours, longestGapHours) => {
      const refusal = seriesRefusal(series);
      if (refusal !== undefined) return refusal;
      const [a, b] = around(series, hours);
      if (b?.hours === hours) return undefined;
      if (a === undefined || b === undefined) return "the moment lies outside the log";
      return b.hours - a.hours <= longestGapHours + sameHours ? undefined : "the moment lies in a gap of the log";
    },
    read: ([hours = NaN, longestGapHours = NaN, ...readings]) => [readReadings(readings), hours, longestGapHours],
  },
);

/** The readings before a moment and at or after it. */
function around(series: readonly TimedValue[], hours: number): [TimedValue | undefined, TimedValue | undefined] {
  const after = firstAtOrAfter(series, hours);
  return [series[after - 1], series[after]];
}

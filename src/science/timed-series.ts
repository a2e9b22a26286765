/** One reading of a log: hours on the log's own clock, and the value. */
export interface TimedValue {
  readonly hours: number;
  readonly value: number;
}

/** A stretch of time on the same clock. */
export interface TimeWindow {
  readonly fromHours: number;
  readonly toHours: number;
}

/** Slack for times that were computed from minutes or days. */
export const sameHours = 1e-9;

/** The value on the straight line between two readings. */
export function between(a: TimedValue, b: TimedValue, hours: number): number {
  return a.value + ((b.value - a.value) * (hours - a.hours)) / (b.hours - a.hours);
}

/** Where in a series (times rising) the first reading at or after a moment is; its length when there is none. */
export function firstAtOrAfter(series: readonly TimedValue[], hours: number): number {
  let [low, high] = [0, series.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((series[middle]?.hours ?? Infinity) < hours) low = middle + 1;
    else high = middle;
  }
  return low;
}

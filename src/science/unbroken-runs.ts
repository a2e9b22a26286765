import { between, firstAtOrAfter, sameHours, type TimedValue, type TimeWindow } from "./timed-series.js";

/** Readings without a gap between them, clipped to a window; its ends are read off the line between readings. */
export type Run = readonly TimedValue[];

/** The last question and its answer: a relation is asked whether it can be computed, and then computed, on the same stretch. */
let last: { readonly series: readonly TimedValue[]; readonly window: TimeWindow; readonly longestGapHours: number; readonly runs: readonly Run[] } | undefined;

/**
 * The parts of a log that lie in a window and have no gap: two readings further apart than
 * `longestGapHours` are not joined. A run may be a single reading. Takes time in proportion to
 * the readings in the window.
 */
export function unbrokenRuns(series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): readonly Run[] {
  if (last?.series === series && last.longestGapHours === longestGapHours && isSame(last.window, window)) return last.runs;
  const runs = findRuns(series, window, longestGapHours);
  last = { series, window, longestGapHours, runs };
  return runs;
}

function isSame(one: TimeWindow, other: TimeWindow): boolean {
  return one.fromHours === other.fromHours && one.toHours === other.toHours;
}

function findRuns(series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): Run[] {
  // One reading on either side, for the line that crosses the window's edge.
  const from = Math.max(0, firstAtOrAfter(series, window.fromHours) - 1);
  const to = Math.min(series.length, firstAtOrAfter(series, window.toHours) + 1);
  const runs: Run[] = [];
  let start = from;
  for (let index = from + 1; index <= to; index += 1) {
    if (index < to && !isGap(series[index - 1], series[index], longestGapHours)) continue;
    runs.push(clipped(series.slice(start, index), window));
    start = index;
  }
  return runs.filter((run) => run.length > 0);
}

/** From the first to the last reading of a run. */
export function spanHours(run: Run): number {
  return (run.at(-1)?.hours ?? 0) - (run[0]?.hours ?? 0);
}

/** Adds up what each straight line of a run contributes, from reading to reading. */
export function sumOverLines(run: Run, contribution: (a: TimedValue, b: TimedValue) => number): number {
  let sum = 0;
  let [a] = run;
  for (const b of run) {
    if (a !== undefined && a !== b) sum += contribution(a, b);
    a = b;
  }
  return sum;
}

function isGap(a: TimedValue | undefined, b: TimedValue | undefined, longestGapHours: number): boolean {
  return a !== undefined && b !== undefined && b.hours - a.hours > longestGapHours + sameHours;
}

function clipped(run: Run, { fromHours, toHours }: TimeWindow): Run {
  const first = firstAtOrAfter(run, fromHours);
  const last = firstAtOrAfter(run, toHours);
  const inside = run.slice(first, run[last]?.hours === toHours ? last + 1 : last);
  return onLine(run, first, fromHours).concat(inside, onLine(run, last, toHours));
}

/** The value strictly between two readings of a run; nothing on a reading itself or outside the run. */
function onLine(run: Run, after: number, hours: number): Run {
  const [a, b] = [run[after - 1], run[after]];
  if (a === undefined || b === undefined || b.hours === hours) return [];
  return [{ hours, value: between(a, b, hours) }];
}

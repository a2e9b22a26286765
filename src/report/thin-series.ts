import type { TimedValue } from "../science/index.js";
import type { LogColumn } from "./log-series.js";

type Point = readonly [hour: number, value: number];

/** About as many points as a chart a text column wide can show. */
const MOST_POINTS = 400;

/**
 * Thins a column for drawing: runs split at gaps, and in each slice of time the
 * lowest and highest value kept, so that no peak is lost.
 *
 * @returns runs of [hour, value], hours to 0.01 and values to 0.0001
 */
export function thinColumn(column: LogColumn): Point[][] {
  const runs = splitAtGaps(column);
  const first = column.series[0]?.hours ?? 0;
  const last = column.series.at(-1)?.hours ?? 0;
  if (column.series.length <= MOST_POINTS) return runs.map((run) => run.map(rounded));
  const slice = (last - first) / (MOST_POINTS / 2);
  return runs.map((run) => thinRun(run, slice));
}

/** Where nothing is known: stretches longer than the column's longest step. */
export function gapsOf({ series, longestGapHours }: LogColumn): { readonly fromHour: number; readonly toHour: number }[] {
  const gaps: { fromHour: number; toHour: number }[] = [];
  let [before] = series;
  for (const reading of series) {
    if (before !== undefined && reading.hours - before.hours > longestGapHours) gaps.push({ fromHour: before.hours, toHour: reading.hours });
    before = reading;
  }
  return gaps;
}

function splitAtGaps({ series, longestGapHours }: LogColumn): (readonly TimedValue[])[] {
  const runs: (readonly TimedValue[])[] = [];
  let start = 0;
  for (let index = 1; index <= series.length; index += 1) {
    const before = series[index - 1];
    const reading = series[index];
    if (before !== undefined && reading !== undefined && reading.hours - before.hours <= longestGapHours) continue;
    runs.push(series.slice(start, index));
    start = index;
  }
  return runs.filter((run) => run.length > 0);
}

function thinRun(run: readonly TimedValue[], sliceHours: number): Point[] {
  const slices = new Map<number, { low: TimedValue; high: TimedValue }>();
  for (const reading of run) {
    const key = Math.floor(reading.hours / sliceHours);
    const held = slices.get(key);
    if (held === undefined) slices.set(key, { low: reading, high: reading });
    else if (reading.value < held.low.value) held.low = reading;
    else if (reading.value > held.high.value) held.high = reading;
  }
  const ends = [run[0], run.at(-1)].filter((end) => end !== undefined);
  const kept = new Set([...ends, ...[...slices.values()].flatMap(({ low, high }) => [low, high])]);
  return [...kept].sort((a, b) => a.hours - b.hours).map(rounded);
}

function rounded(reading: TimedValue): Point {
  return [Math.round(reading.hours * 100) / 100, Math.round(reading.value * 10_000) / 10_000];
}

import { isMissing, missing, readingOf, type Result } from "./known.js";
import type { LogColumn } from "./log-series.js";

/** One gravity of the fermenting beer, SG 20/20. */
export interface GravityPoint {
  readonly field: string;
  readonly at: string;
  readonly hour: number;
  readonly dateOnly: boolean;
  readonly gravity: Result;
  readonly source: "hand" | "log";
}

const BUCKET_H = 6;

/**
 * A floating probe's column as one point every six hours: the median of that
 * stretch, since single readings scatter with bubbles and hops. The point stands
 * at the stretch's end, whatever the log's step, and at the last reading where
 * the log stops before. Its error is one error shared by the whole column.
 *
 * @param limitSg what the column can be trusted to, SG
 * @param civilAt names an hour as civil time
 */
export function gravityPointsOfLog(column: LogColumn, limitSg: number, civilAt: (hour: number) => string): GravityPoint[] {
  const buckets = new Map<number, { hours: number; value: number }[]>();
  for (const reading of column.series) {
    const bucket = Math.floor(reading.hours / BUCKET_H);
    const held = buckets.get(bucket);
    if (held === undefined) buckets.set(bucket, [reading]);
    else held.push(reading);
  }
  return [...buckets].map(([bucket, readings]) => {
    const hour = endOf(column, (bucket + 1) * BUCKET_H, readings.at(-1)?.hours ?? 0);
    const value = median(readings.map((reading) => reading.value));
    const at = civilAt(hour);
    return {
      field: GRAVITY_LOG_FIELD, at, hour, dateOnly: false, source: "log" as const,
      gravity: value === undefined ? missing("the log's gravity column is empty") : readingOf(GRAVITY_LOG_FIELD, value, "SG", limitSg, `median of ${readings.length} readings up to ${at}`),
    };
  });
}

function endOf({ series, longestGapHours }: LogColumn, endHour: number, lastHour: number): number {
  const goesOn = lastHour !== series.at(-1)?.hours && endHour - lastHour <= longestGapHours;
  return goesOn ? endHour : lastHour;
}

export const GRAVITY_LOG_FIELD = "fermentation.log gravity";

function median(values: readonly number[]): number | undefined {
  const sorted = Float64Array.from(values).sort();
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  const lower = sorted[sorted.length % 2 === 1 ? middle : middle - 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
}

/**
 * The last gravity after pitching, at or before an hour: a hand reading before a
 * probe's, since a probe in the beer reads hops and bubbles too; but not one
 * since when the probe shows that gravity fell.
 */
export function lastGravityBefore(points: readonly GravityPoint[], hour: number): GravityPoint | undefined {
  const before = points.filter((point) => point.hour > 0 && point.hour <= hour);
  const hand = before.findLast((point) => point.source === "hand");
  const probe = before.findLast((point) => point.source === "log");
  if (hand === undefined || probe === undefined) return hand ?? probe;
  if (probe.hour - hand.hour <= BUCKET_H) return hand;
  const then = before.findLast((point) => point.source === "log" && point.hour <= hand.hour) ?? hand;
  return fell(then, probe) ? probe : hand;
}

/** More than a probe in the beer strays by; common practice for what a fall after the dry hop may be. */
const STRAY_SG = 0.002;

function fell({ gravity: before }: GravityPoint, { gravity: after }: GravityPoint): boolean {
  return !isMissing(before) && !isMissing(after) && before.value - after.value > STRAY_SG;
}

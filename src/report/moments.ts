import { instantMs, type CivilTime } from "../records/index.js";
import { readingOf, type Known } from "./known.js";

/** A point in time of a batch: what the record wrote, and hours since pitching. */
export interface Moment {
  readonly field: string;
  /** As written. */
  readonly at: string;
  readonly hour: number;
  /** Only the day is recorded: taken as noon, give or take twelve hours. */
  readonly dateOnly: boolean;
}

const HOUR_MS = 3_600_000;
const HALF_DAY_H = 12;

/** Places civil times on one axis: hours elapsed since `start`, a change of clocks counted. */
export function momentsFrom(start: CivilTime, zone: string): (field: string, civil: CivilTime) => Moment {
  const startMs = instantMs(start, zone);
  return (field, civil) => ({
    field, at: civil.text, hour: (instantMs(civil, zone) - startMs) / HOUR_MS, dateOnly: civil.time === undefined,
  });
}

/** The last hour a moment can mean: the end of its day where no time is recorded. */
export function latestHour({ hour, dateOnly }: Moment): number {
  return dateOnly ? hour + HALF_DAY_H : hour;
}

/** The first hour a moment can mean. */
export function earliestHour({ hour, dateOnly }: Moment): number {
  return dateOnly ? hour - HALF_DAY_H : hour;
}

/** A moment as a reading in hours: exact where the clock was noted, ± 12 h where only the day was. */
export function momentReading(moment: Moment): Known {
  return readingOf(moment.field, moment.hour, "h", moment.dateOnly ? HALF_DAY_H : undefined, moment.at);
}

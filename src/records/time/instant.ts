import { Temporal } from "temporal-polyfill";
import type { CivilTime } from "./civil-time.js";

const NOON = "12:00";
const DAY_MS = 86_400_000;

/**
 * The instant of a civil time in a zone, in milliseconds since 1970-01-01T00:00Z. A date without a time is
 * noon. An hour that occurs twice is its first occurrence.
 *
 * @throws RangeError for a time in an hour that the zone skipped; `skippedHour` asks first
 */
export function instantMs(civil: CivilTime, zone: string): number {
  const wall = wallMs(civil);
  const [first] = instantsOf(wall, zone);
  if (first === undefined) throw new RangeError(`${civil.text} did not exist in ${zone}`);
  return first;
}

/** Every instant at which a zone's clocks showed a wall time: none in a skipped hour, two in a repeated one. */
export function instantsOf(wall: number, zone: string): readonly number[] {
  const steady = steadyOffset(wall, zone);
  if (steady !== undefined) return [wall - steady];
  const offsets = new Set([offsetMs(wall - DAY_MS, zone), offsetMs(wall + DAY_MS, zone)]);
  return [...offsets].map((offset) => wall - offset).filter((instant) => instant + offsetMs(instant, zone) === wall).toSorted((a, b) => a - b);
}

/** The wall time a clock set forward would show instead, or undefined when the time existed. */
export function skippedHour(civil: CivilTime, zone: string): CivilTime | undefined {
  const wall = wallMs(civil);
  return instantsOf(wall, zone).length > 0 ? undefined : civilAt(wall - offsetMs(wall - DAY_MS, zone), zone);
}

/** The civil time, to the minute, that a zone's clocks show at an instant. */
export function civilAt(instant: number, zone: string): CivilTime {
  const [date = "", time = ""] = new Date(instant + offsetMs(instant, zone)).toISOString().split("T");
  const minute = time.slice(0, 5);
  return { text: `${date} ${minute}`, date, time: minute };
}

/** A civil time counted as if its zone were UTC. */
export function wallMs({ date, time = NOON }: CivilTime): number {
  return Date.parse(`${date}T${time}Z`);
}

/** Offsets of a zone by day; undefined for a day near a change of its clocks. */
const steadyDays = new Map<string, Map<number, number | undefined>>();
const MOST_DAYS = 20_000;

/** A zone's offset on a day whose clocks don't change the day before or after; found once a day. */
function steadyOffset(wall: number, zone: string): number | undefined {
  const day = Math.floor(wall / DAY_MS);
  let days = steadyDays.get(zone);
  if (days === undefined || days.size > MOST_DAYS) {
    days = new Map();
    steadyDays.set(zone, days);
  }
  if (!days.has(day)) days.set(day, offsetAround(day, zone));
  return days.get(day);
}

function offsetAround(day: number, zone: string): number | undefined {
  const before = offsetMs((day - 1) * DAY_MS, zone);
  const after = offsetMs((day + 2) * DAY_MS, zone);
  const middle = offsetMs(day * DAY_MS + DAY_MS / 2, zone);
  return before === after && before === middle ? before : undefined;
}

function offsetMs(instant: number, zone: string): number {
  return Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone).offsetNanoseconds / 1_000_000;
}

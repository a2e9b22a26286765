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
  const [before, after] = [offsetMs(wall - DAY_MS, zone), offsetMs(wall + DAY_MS, zone)];
  if (before === after) return [wall - before];
  return [wall - before, wall - after].filter((instant) => instant + offsetMs(instant, zone) === wall).toSorted((a, b) => a - b);
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

/** A stretch of time in which a zone's clocks aren't changed. */
interface Steady {
  readonly fromMs: number;
  readonly untilMs: number;
  readonly offsetMs: number;
}

/** By zone, the latest asked for first; found once, since a log asks for every row. */
const steady = new Map<string, Steady[]>();

function offsetMs(instant: number, zone: string): number {
  const known = steady.get(zone) ?? [];
  const held = known.find(({ fromMs, untilMs }) => instant >= fromMs && instant < untilMs);
  if (held !== undefined) return held.offsetMs;
  const found = steadyAround(instant, zone);
  steady.set(zone, [found, ...known]);
  return found.offsetMs;
}

function steadyAround(instant: number, zone: string): Steady {
  const at = (ms: number): Temporal.ZonedDateTime => Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone);
  return {
    // A change at the instant itself counts as before it.
    fromMs: at(instant + 1).getTimeZoneTransition("previous")?.epochMilliseconds ?? Number.NEGATIVE_INFINITY,
    untilMs: at(instant).getTimeZoneTransition("next")?.epochMilliseconds ?? Number.POSITIVE_INFINITY,
    offsetMs: at(instant).offsetNanoseconds / 1_000_000,
  };
}

import type { CivilTime } from "../records/index.js";
import { ExpectedFailure } from "./expected-failure.js";

const CIVIL = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2}))?$/;

/**
 * Reads `--as-of`: `2026-06-20T12:00`, or a date alone, which stands for noon.
 *
 * @returns civil time of the club's zone
 * @throws ExpectedFailure when it isn't a time that exists
 */
export function parseAsOf(text: string): CivilTime {
  const [, year, month, day, hour = "12", minute = "00"] = CIVIL.exec(text) ?? [];
  const civil = `${year ?? ""}-${month ?? ""}-${day ?? ""} ${hour}:${minute}`;
  if (year === undefined || !isOnCalendar(civil)) {
    throw new ExpectedFailure(`--as-of expects a date or a time such as 2026-06-20T12:00, found "${text}".`);
  }
  return toCivilTime(civil);
}

const toCivilTime = (text: string): CivilTime => ({ text, date: text.slice(0, 10), time: text.slice(11) });

/** Date.parse rolls some impossible days over, so the text must survive the way there and back. */
function isOnCalendar(civil: string): boolean {
  const milliseconds = Date.parse(`${civil.replace(" ", "T")}:00Z`);
  return !Number.isNaN(milliseconds) && civilOf(milliseconds) === civil;
}

const civilOf = (milliseconds: number): string => new Date(milliseconds).toISOString().slice(0, 16).replace("T", " ");

/**
 * What a clock on the wall in `zone` shows at `instant`, to the minute.
 *
 * @param zone IANA name, already checked
 */
export function civilTime(instant: Date, zone: string): CivilTime {
  const format = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone, hourCycle: "h23", year: "numeric", month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit",
  });
  const part = new Map(format.formatToParts(instant).map(({ type, value }) => [type, value]));
  const get = (type: Intl.DateTimeFormatPartTypes): string => part.get(type) ?? "";
  return toCivilTime(`${get("year").padStart(4, "0")}-${get("month")}-${get("day")} ${get("hour")}:${get("minute")}`);
}

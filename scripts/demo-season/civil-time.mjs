/** Civil times of the club's zone and the moments they name; every log is made in moments and written in civil time. */

import { Temporal } from "temporal-polyfill";

const CLUB_ZONE = "Europe/London";

/**
 * The moment a civil time names. Throws on one that never was (the hour skipped in March) or was twice (October).
 * @param {string} civil "2026-03-07 16:00" @returns {number} milliseconds since 1970
 */
export function momentOf(civil) {
  const dateTime = Temporal.PlainDateTime.from(civil.replace(" ", "T"));
  return dateTime.toZonedDateTime(CLUB_ZONE, { disambiguation: "reject" }).epochMilliseconds;
}

/** @param {number} moment @param {string} zone @returns {Temporal.ZonedDateTime} */
function zonedTime(moment, zone) {
  return Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(zone);
}

/** @param {number} moment @returns {string} "2026-03-07 16:00" in the club's zone */
export function formatCivil(moment) {
  return zonedTime(moment, CLUB_ZONE).toPlainDateTime().toString({ smallestUnit: "minute" }).replace("T", " ");
}

/** @param {number} moment @returns {number} hours since midnight in the club's zone */
export function hourOfDay(moment) {
  const time = zonedTime(moment, CLUB_ZONE);
  return time.hour + time.minute / 60;
}

/** @param {number} moment @returns {string} "2/14/2026 3:05 PM" in UTC, as the borrowed probe exports it */
export function formatProbeExport(moment) {
  const time = zonedTime(moment, "UTC");
  const half = time.hour < 12 ? "AM" : "PM";
  const minute = String(time.minute).padStart(2, "0");
  return `${time.month}/${time.day}/${time.year} ${time.hour % 12 || 12}:${minute} ${half}`;
}

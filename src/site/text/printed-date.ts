const MONTHS = [
  "January", "February", "March", "April", "May", "June",
  "July", "August", "September", "October", "November", "December",
];
const CIVIL = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{2}:\d{2}))?/u;

/**
 * A civil date as a book prints it: `2026-03-07 19:00` → `7 March 2026, 19:00`.
 * Civil times stay as recorded: no zone, no locale, no clock.
 * Text that isn't such a date comes back as it is.
 */
export function printedDate(civil: string): string {
  const match = CIVIL.exec(civil);
  if (match === null) return civil;
  const [, year = "", month = "", day = "", time] = match;
  const date = `${Number(day)} ${MONTHS[Number(month) - 1] ?? month} ${year}`;
  return time === undefined ? date : `${date}, ${time}`;
}

/** The same for columns: `7 Mar 2026`, `7 Mar, 19:00` when a time is known. */
export function shortDate(civil: string): string {
  const match = CIVIL.exec(civil);
  if (match === null) return civil;
  const [, year = "", month = "", day = "", time] = match;
  const date = `${Number(day)} ${(MONTHS[Number(month) - 1] ?? month).slice(0, 3)}`;
  return time === undefined ? `${date} ${year}` : `${date}, ${time}`;
}

/** The month of a civil date: `March 2026`. */
export function printedMonth(civil: string): string {
  const match = CIVIL.exec(civil);
  return match === null ? civil : `${MONTHS[Number(match[2]) - 1] ?? ""} ${match[1] ?? ""}`;
}

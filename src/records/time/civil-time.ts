/** A date, and a time where it is known, as written: civil time in the club's zone, never shifted. */
export interface CivilTime {
  /** As written, without surrounding space. */
  readonly text: string;
  /** `2026-03-18` */
  readonly date: string;
  /** `19:00`; absent means some time that day. */
  readonly time?: string;
}

export type CivilFault = { readonly reason: "malformed" } | { readonly reason: "impossible"; readonly why: string };
export type ParsedCivilTime = { readonly ok: true; readonly civil: CivilTime } | { readonly ok: false; readonly fault: CivilFault };

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})(?: (\d{2}):(\d{2}))?$/u;
const FIRST_YEAR = 1900;
const LAST_YEAR = 2199;

/** Reads `2026-03-18` or `2026-03-18 19:00`; whether the hour existed in a zone is asked elsewhere. */
export function parseCivilTime(text: string): ParsedCivilTime {
  const trimmed = text.trim();
  const match = WRITTEN.exec(trimmed);
  if (match === null) return { ok: false, fault: { reason: "malformed" } };
  const [, year = "", month = "", day = "", hour, minute] = match;
  const why = whyImpossible(Number(year), Number(month), Number(day), Number(hour ?? 0), Number(minute ?? 0));
  if (why !== undefined) return { ok: false, fault: { reason: "impossible", why } };
  const date = `${year}-${month}-${day}`;
  return { ok: true, civil: { text: trimmed, date, ...(hour === undefined ? {} : { time: `${hour}:${minute}` }) } };
}

/** Says in words why no calendar or clock shows this, or undefined when they do. */
export function whyImpossible(year: number, month: number, day: number, hour: number, minute: number): string | undefined {
  if (year < FIRST_YEAR || year > LAST_YEAR) return `Years run from ${FIRST_YEAR} to ${LAST_YEAR}`;
  if (month < 1 || month > 12) return "Months run from 01 to 12";
  const days = daysInMonth(year, month);
  if (day < 1 || day > days) return `Days of ${year}-${String(month).padStart(2, "0")} run from 01 to ${days}`;
  if (hour > 23) return "Hours run from 00 to 23; midnight is 00:00 of the next day";
  return minute > 59 ? "Minutes run from 00 to 59" : undefined;
}

function daysInMonth(year: number, month: number): number {
  if (month !== 2) return [4, 6, 9, 11].includes(month) ? 30 : 31;
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
}

import { whyImpossible } from "./civil-time.js";
import type { ReadTime, TimeReader } from "./date-pattern.js";
import { instantsOf } from "./instant.js";

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})(?: (\d{2}):(\d{2})(?::(\d{2}))?)?$/u;

/** Reads times as logs of the tool's own form hold them: `2026-03-18 19:00`, seconds allowed, noon where there is no time. */
export const readPlainTime: TimeReader = (cell) => {
  const match = WRITTEN.exec(cell);
  if (match === null) return undefined;
  const [, year, month, day, hour = "12", minute = "00", second = "00"] = match;
  if (Number(second) > 59 || whyImpossible(Number(year), Number(month), Number(day), Number(hour), Number(minute)) !== undefined) return undefined;
  return { wallMs: Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute), Number(second)) };
};

/**
 * The instant of a row's time. Where clocks went back and the time occurred twice, the row's place decides:
 * the first occurrence that isn't before the row above.
 *
 * @returns undefined for a time in a skipped hour
 */
export function rowInstant({ wallMs, offsetMinutes }: ReadTime, zone: string, aboveMs: number): number | undefined {
  if (offsetMinutes !== undefined) return wallMs - offsetMinutes * 60_000;
  const instants = instantsOf(wallMs, zone);
  return instants.find((instant) => instant >= aboveMs) ?? instants[0];
}

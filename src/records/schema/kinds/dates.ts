import { z } from "zod";
import { nearestName } from "../../../problems/index.js";
import { parseCivilTime, parseDatePattern, type CivilTime } from "../../time/index.js";
import { about, refuse, type FieldWords } from "./about.js";

const EXPECTS = 'a date such as "2026-03-18", or with its time "2026-03-18 19:00"';

/** A date, with a time where it is known: civil time in the club's zone. */
export function civilTime(says: string, example = "2026-03-18 19:00") {
  const schema = z.string().transform((written, context): CivilTime => {
    const parsed = parseCivilTime(written);
    if (parsed.ok) return parsed.civil;
    return parsed.fault.reason === "impossible"
      ? refuse(context, "record/date-impossible", { why: parsed.fault.why })
      : refuse(context, "record/date", { expects: EXPECTS });
  });
  return about(schema, {
    says, expects: EXPECTS, example, holds: "text", pattern: String.raw`^\d{4}-\d{2}-\d{2}( \d{2}:\d{2})?$`,
  });
}

/** A zone of the IANA time zone database, or UTC. */
export function timeZone(says: string, words: FieldWords = {}) {
  const schema = z.string().transform((written, context) => (isZone(written.trim()) ? written.trim()
    : refuse(context, "record/zone-unknown", { nearest: nearestName(written, Intl.supportedValuesOf("timeZone")) })));
  return about(schema, { says, expects: "a time zone such as Europe/London", example: "Europe/London", holds: "text", ...words });
}

/** How another program writes times, in the Unicode field symbols. */
export function datePattern(says: string) {
  const schema = z.string().transform((written, context) => {
    const parsed = parseDatePattern(written.trim());
    return parsed.ok ? written.trim() : refuse(context, "log/dates-pattern", { why: parsed.why });
  });
  return about(schema, { says, expects: "a date pattern such as M/d/yyyy h:mm a", example: "M/d/yyyy h:mm a", holds: "text" });
}

const zones = new Map<string, boolean>();

function isZone(written: string): boolean {
  const known = zones.get(written) ?? isZoneOfSystem(written);
  if (zones.size < 1000) zones.set(written, known);
  return known;
}

function isZoneOfSystem(written: string): boolean {
  try {
    return new Intl.DateTimeFormat("en", { timeZone: written }).resolvedOptions().timeZone !== "";
  } catch {
    return false;
  }
}

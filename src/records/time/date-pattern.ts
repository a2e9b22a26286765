import { whyImpossible } from "./civil-time.js";

/** A time as read from a cell: a wall time counted as if in UTC, and the offset written beside it, if one was. */
export interface ReadTime {
  readonly wallMs: number;
  /** Minutes east of UTC. */
  readonly offsetMinutes?: number;
}

export type TimeReader = (cell: string) => ReadTime | undefined;
export type ParsedPattern = { readonly ok: true; readonly read: TimeReader } | { readonly ok: false; readonly why: string };

/** What a field symbol, repeated, reads; after the date field symbols of Unicode Technical Standard 35. */
interface Reads {
  readonly part: string;
  readonly expression: string;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const DIGITS: Readonly<Record<string, string>> = { d: "day", H: "hour", h: "hour12", m: "minute", s: "second" };

/**
 * Makes a reader of times from a pattern such as `M/d/yyyy h:mm a`.
 *
 * Letters are field symbols (y M d H h m s S a E X Z); text in single quotes and every other sign stands
 * for itself. Names of months are English.
 */
export function parseDatePattern(pattern: string): ParsedPattern {
  const parts: string[] = [];
  let expression = "^\\s*";
  for (const token of pattern.match(/'(?:[^']|'')*'|([A-Za-z])\1*|[^A-Za-z']+|'/gu) ?? []) {
    const reads = readsOf(token);
    if (typeof reads === "string") return { ok: false, why: reads };
    if (reads.part !== "") parts.push(reads.part);
    expression += reads.expression;
  }
  const why = whyIncomplete(parts);
  if (why !== undefined) return { ok: false, why };
  const matcher = new RegExp(`${expression}\\s*$`, "iu");
  return { ok: true, read: (cell) => readTime(matcher.exec(cell), parts) };
}

function readsOf(token: string): Reads | string {
  const symbol = token.charAt(0);
  const length = token.length;
  if (symbol === "'") return token.length < 2 ? "Close the single quote" : { part: "", expression: escaped(token === "''" ? "'" : token.slice(1, -1).replaceAll("''", "'")) };
  if (!/[A-Za-z]/u.test(symbol)) return { part: "", expression: escaped(token).replaceAll(/\s+/gu, "\\s+") };
  if (symbol === "y") return length === 2 ? { part: "year2", expression: "(\\d{2})" } : { part: "year", expression: "(\\d{4})" };
  if (symbol === "M") return length >= 3 ? { part: "monthName", expression: "([A-Za-z]{3,9})" } : { part: "month", expression: digits(length) };
  if (symbol === "S") return { part: "fraction", expression: "(\\d{1,9})" };
  if (symbol === "a") return { part: "half", expression: "([ap])\\.?m\\.?" };
  if (symbol === "E") return { part: "", expression: "[A-Za-z]{2,9}" };
  if (symbol === "X" || symbol === "x" || symbol === "Z") return { part: "offset", expression: "(z|[+-]\\d{2}:?(?:\\d{2})?)" };
  const part = DIGITS[symbol];
  return part === undefined ? `${symbol} isn't a field of a date here; put plain words in single quotes` : { part, expression: digits(length) };
}

function whyIncomplete(parts: readonly string[]): string | undefined {
  const has = (...any: string[]): boolean => any.some((part) => parts.includes(part));
  if (!has("year", "year2") || !has("month", "monthName") || !has("day")) return "The pattern needs a year (yyyy), a month (M) and a day (d)";
  if (has("hour12") && !has("half")) return "h is an hour from 1 to 12 and needs a for am or pm; write H for 0 to 23";
  if (has("half") && !has("hour12")) return "a is for am and pm and needs h, an hour from 1 to 12";
  return new Set(parts).size < parts.length ? "Each field of a date can stand once in the pattern" : undefined;
}

function readTime(match: RegExpExecArray | null, parts: readonly string[]): ReadTime | undefined {
  if (match === null) return undefined;
  const value = (part: string): string | undefined => match[parts.indexOf(part) + 1];
  const has = (part: string): boolean => parts.includes(part);
  const year = has("year") ? Number(value("year")) : 2000 + Number(value("year2"));
  const month = has("month") ? Number(value("month")) : MONTHS.indexOf((value("monthName") ?? "").slice(0, 3).toLowerCase()) + 1;
  const hour = has("hour12") ? hourOfDay(Number(value("hour12")), value("half") ?? "a") : has("hour") ? Number(value("hour")) : 12;
  const minute = has("minute") ? Number(value("minute")) : 0;
  const second = has("second") ? Number(value("second")) : 0;
  const day = Number(value("day"));
  if (hour === undefined || second > 59 || whyImpossible(year, month, day, hour, minute) !== undefined) return undefined;
  const fraction = has("fraction") ? Number(`0.${value("fraction") ?? "0"}`) : 0;
  const wallMs = Date.UTC(year, month - 1, day, hour, minute, second) + Math.round(fraction * 1000);
  const offset = has("offset") ? offsetMinutes(value("offset") ?? "z") : undefined;
  return { wallMs, ...(offset === undefined ? {} : { offsetMinutes: offset }) };
}

function hourOfDay(hour12: number, half: string): number | undefined {
  if (hour12 < 1 || hour12 > 12) return undefined;
  return (hour12 % 12) + (half.toLowerCase() === "p" ? 12 : 0);
}

function offsetMinutes(written: string): number {
  if (written.toLowerCase() === "z") return 0;
  const [, sign = "+", hours = "0", minutes = "0"] = /^([+-])(\d{2}):?(\d{2})?$/u.exec(written) ?? [];
  return (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

const digits = (length: number): string => (length === 1 ? "(\\d{1,2})" : `(\\d{${length}})`);
const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`);

import { describe, expect, test } from "vitest";
import { civilTime, parseAsOf } from "../../src/cli/as-of.js";

describe("parseAsOf", () => {
  test.each([
    ["2026-06-20T12:00", "2026-06-20 12:00"],
    ["2026-06-20 08:05", "2026-06-20 08:05"],
    ["2026-06-20", "2026-06-20 12:00"],
    ["2028-02-29", "2028-02-29 12:00"],
  ])("reads %s as %s", (text, civil) => {
    expect(parseAsOf(text)).toEqual({ text: civil, date: civil.slice(0, 10), time: civil.slice(11) });
  });

  test.each(["2026-02-29", "2026-13-01", "2026-06-31T12:00", "2026-06-20T24:00", "2026-06-20T12:60", "20-06-2026", "", "now", "2026-06-20T12:00Z"])("refuses %s", (text) => {
    expect(() => parseAsOf(text)).toThrow(/--as-of expects/);
  });
});

// Offsets: IANA time zone database (Europe/London UTC+1 in summer; America/New_York UTC−5 in winter; Asia/Kathmandu UTC+5:45).
describe("civilTime shows what a wall clock in the zone shows", () => {
  test.each([
    ["2026-06-20T11:00:00Z", "Europe/London", "2026-06-20 12:00"],
    ["2026-01-01T02:30:00Z", "America/New_York", "2025-12-31 21:30"],
    ["2026-01-01T00:00:00Z", "Asia/Kathmandu", "2026-01-01 05:45"],
    ["2026-03-01T00:00:59Z", "UTC", "2026-03-01 00:00"],
  ])("%s in %s is %s", (instant, zone, civil) => {
    expect(civilTime(new Date(instant), zone).text).toBe(civil);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { civilAt, instantMs, logFilesOf, parseLog, type CivilTime, type FermentationLog } from "../../src/records/index.js";
import { parseDatePattern } from "../../src/records/time/index.js";

const civil = (text: string): CivilTime => {
  const [date = "", time] = text.split(" ");
  return { text, date, ...(time === undefined ? {} : { time }) };
};
const HOUR_MS = 3_600_000;

describe("elapsed time", () => {
  // Transitions as the IANA time zone database has them.
  test.each([
    ["Europe/London", "2026-03-28 12:00", "2026-03-29 12:00", 23],
    ["Europe/London", "2026-10-24 12:00", "2026-10-25 12:00", 25],
    ["America/New_York", "2026-03-07 12:00", "2026-03-08 12:00", 23],
    ["Australia/Lord_Howe", "2026-04-04 12:00", "2026-04-05 12:00", 24.5],
    ["Asia/Kolkata", "2026-03-28 12:00", "2026-03-29 12:00", 24],
    ["UTC", "2026-03-28 12:00", "2026-03-29 12:00", 24],
  ])("in %s from %s to %s is %d h", (zone, from, to, hours) => {
    expect((instantMs(civil(to), zone) - instantMs(civil(from), zone)) / HOUR_MS).toBe(hours);
  });

  test("of a date without a time begins at noon", () => {
    expect(instantMs(civil("2026-07-01"), "Europe/London")).toBe(Date.parse("2026-07-01T11:00Z"));
  });

  test("begins at the first of two equal times", () => {
    expect(instantMs(civil("2026-10-25 01:30"), "Europe/London")).toBe(Date.parse("2026-10-25T00:30Z"));
  });

  test("has no instant in a skipped hour", () => {
    expect(() => instantMs(civil("2026-03-29 01:30"), "Europe/London")).toThrow(RangeError);
    // Samoa left out the whole of 30 December 2011 when it crossed the date line.
    expect(() => instantMs(civil("2011-12-30 12:00"), "Pacific/Apia")).toThrow(RangeError);
  });

  test("agrees with the zone's own clock, both ways, at any minute", () => {
    const zones = fc.constantFrom("Europe/London", "America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu", "America/St_Johns", "UTC");
    fc.assert(fc.property(zones, fc.integer({ min: Date.parse("2000-01-01") / 60_000, max: Date.parse("2037-01-01") / 60_000 }), (zone, minute) => {
      const shown = civilAt(minute * 60_000, zone);
      const clock = new Intl.DateTimeFormat("en-CA", { timeZone: zone, dateStyle: "short", timeStyle: "short", hourCycle: "h23" }).format(minute * 60_000).replace(", ", " ");
      expect(shown.text).toBe(clock);
      const back = instantMs(shown, zone);
      expect([0, HOUR_MS, HOUR_MS / 2]).toContain(minute * 60_000 - back);
    }), { numRuns: 300, seed: 20260329 });
  });
});

describe("a date pattern", () => {
  const wall = (pattern: string, cell: string): string | undefined => {
    const parsed = parseDatePattern(pattern);
    if (!parsed.ok) throw new Error(parsed.why);
    const read = parsed.read(cell);
    return read === undefined ? undefined : new Date(read.wallMs).toISOString() + (read.offsetMinutes === undefined ? "" : ` ${read.offsetMinutes}`);
  };

  // Field symbols as in Unicode Technical Standard 35, part 4.
  test.each([
    ["M/d/yyyy h:mm a", "3/8/2026 1:30 PM", "2026-03-08T13:30:00.000Z"],
    ["M/d/yyyy h:mm a", "12/31/2026 12:05 am", "2026-12-31T00:05:00.000Z"],
    ["M/d/yyyy h:mm a", "12/31/2026 12:05 p.m.", "2026-12-31T12:05:00.000Z"],
    ["dd.MM.yy HH:mm:ss", "08.03.26 07:09:59", "2026-03-08T07:09:59.000Z"],
    ["yyyy-MM-dd'T'HH:mm:ss.SSSXXX", "2026-03-08T07:09:59.250+01:00", "2026-03-08T07:09:59.250Z 60"],
    ["yyyy-MM-dd'T'HH:mm:ssX", "2026-03-08T07:09:59Z", "2026-03-08T07:09:59.000Z 0"],
    ["EEE, d MMM yyyy 'at' H:mm", "Sun, 8 Mar 2026 at 7:09", "2026-03-08T07:09:00.000Z"],
    ["MMMM d, yyyy", "March 8, 2026", "2026-03-08T12:00:00.000Z"],
  ])("%s reads %s", (pattern, cell, expected) => {
    expect(wall(pattern, cell)).toBe(expected);
  });

  test.each([
    ["M/d/yyyy H:mm", "13/8/2026 1:30"], ["M/d/yyyy H:mm", "2/30/2026 1:30"], ["M/d/yyyy h:mm a", "3/8/2026 13:30 PM"],
    ["M/d/yyyy H:mm", "3/8/2026 1:30 PM"], ["d MMM yyyy", "8 Mrz 2026"], ["yyyy.MM.dd", "2026-03-08"],
  ])("%s doesn't read %s", (pattern, cell) => {
    expect(wall(pattern, cell)).toBeUndefined();
  });

  test.each([["M/d h:mm a"], ["M/d/yyyy h:mm"], ["M/d/yyyy H:mm a"], ["M/d/yyyy yyyy"], ["Q/d/yyyy"], ["M/d/yyyy '"], [""]])("%s is refused with a reason", (pattern) => {
    const parsed = parseDatePattern(pattern);
    expect(parsed.ok ? "" : parsed.why).not.toBe("");
  });
});

describe("a log", () => {
  function logOf(mapping: string, csv: string, club = "zone: Europe/London\n"): FermentationLog {
    const { log, problems } = parseLog(logFilesOf({
      "shared/club.yaml": club, "batches/a.csv": csv,
      "batches/a.md": `---\ntitle: T\nbatch: A\nbrewed: 2026-03-01\nfermentation: {log: ${mapping}}\n---\n`,
    }));
    expect(problems).toEqual([]);
    const [read] = log.batches[0]?.logs ?? [];
    if (read === undefined) throw new Error("no log was read");
    return read;
  }

  test("through the night the clocks go back keeps its hours apart", () => {
    const { timesMs } = logOf("a.csv", "time,temperature [C]\n2026-10-25 00:30,18\n2026-10-25 01:00,18\n2026-10-25 01:30,18\n2026-10-25 01:00,18\n2026-10-25 01:30,18\n2026-10-25 02:00,18\n");
    expect(timesMs.map((time) => (time - (timesMs[0] ?? 0)) / HOUR_MS)).toEqual([0, 0.5, 1, 1.5, 2, 2.5]);
  });

  test("of another device is read as the record says, in its own zone and units, and gaps stay gaps", () => {
    const read = logOf('{file: a.csv, zone: UTC, time: Date, temperature: "Beer temp (F)", gravity: P, pressure: "Head [psi]", units: {temperature: F, gravity: P}, dates: "M/d/yyyy h:mm a"}',
      "\uFEFFDate,Room,Beer temp (F),P,Head [psi]\n7/8/2026 1:30 PM,x,66.2,12.1,14.5\n7/8/2026 2:30 PM,,--,,\n");
    expect(read.timesMs).toEqual([Date.parse("2026-07-08T13:30Z"), Date.parse("2026-07-08T14:30Z")]);
    expect(read.temperatureC?.[0]).toBeCloseTo(19, 12); // 66.2 °F is 19 °C exactly
    expect(read.temperatureC?.[1]).toBeUndefined();
    expect(read).toMatchObject({ gravity: [12.1, undefined], gravityUnit: "P" });
    expect(read.pressureKPa?.[0]).toBeCloseTo(99.974, 3); // NIST SP 811: 1 psi = 6.894 757 kPa
  });

  test("with semicolons and decimal commas is read where the record says so", () => {
    const read = logOf('{file: a.csv, time: Zeit, temperature: Temp, units: {temperature: C}, dates: "dd.MM.yyyy HH:mm", separator: ";", decimal: ","}', "Zeit;Temp\n08.07.2026 13:30;18,5\n");
    expect(read.temperatureC).toEqual([18.5]);
    expect(read.timesMs).toEqual([Date.parse("2026-07-08T12:30Z")]);
  });

  test("may be several, in the order they are named", () => {
    const { log } = parseLog(logFilesOf({
      "batches/a.csv": "time,temperature [C]\n2026-03-02,18\n", "batches/b.csv": "time,gravity [SG]\n2026-03-02 08:00:30,1.030\n",
      "batches/a.md": "---\ntitle: T\nbatch: A\nbrewed: 2026-03-01\nfermentation: {log: [b.csv, a.csv]}\n---\n",
    }));
    expect(log.batches[0]?.logs.map(({ file, timesMs }) => [file, ...timesMs])).toEqual([
      ["batches/b.csv", Date.parse("2026-03-02T08:00:30Z")], ["batches/a.csv", Date.parse("2026-03-02T12:00Z")],
    ]);
  });
});

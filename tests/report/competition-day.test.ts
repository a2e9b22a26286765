import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildPrivateReport, type CompetitionDay, type PrivateReport } from "../../src/report/index.js";
import { competitionLog, type CompetitionFiles } from "./competition-log.js";

const asOf = { text: "2026-09-01", date: "2026-09-01" };

function sheetsOf(files: CompetitionFiles): PrivateReport {
  const log = competitionLog({ head: "seed: harbour\n", ...files });
  const [record] = log.competitions;
  if (record === undefined) throw new Error("no competition");
  return buildPrivateReport(log, { kind: "competition", record }, asOf);
}

function dayOf(files: CompetitionFiles): CompetitionDay {
  const { day, problems } = sheetsOf(files);
  if (day === undefined) throw new Error(JSON.stringify(problems));
  return day;
}

const entriesCsv = (rows: readonly (readonly [brewer: string, style: string])[]): string =>
  `entry,brewer,style\n${rows.map(([brewer, style], index) => `E${String(index + 1)},${brewer},${style}\n`).join("")}`;

/** Judges who meet an own entry. */
function conflicts(day: CompetitionDay, brewerOf: ReadonlyMap<string, string>): string[] {
  return day.flights.flatMap(({ judges, entries }) => judges.filter((judge) => entries.some(({ brewer }) => brewer !== undefined && brewer.toLowerCase() === brewerOf.get(judge)?.toLowerCase())));
}

const handle = fc.constantFrom("ash", "Birch", "cedar", "elm", "fir");
const competition = fc.record({
  entries: fc.array(fc.tuple(handle, fc.constantFrom("Best Bitter", "American Pale Ale", "Blonde Ale")), { minLength: 1, maxLength: 30 }),
  judges: fc.array(fc.option(fc.constantFrom("ash", "birch", "CEDAR", "elm", "fir"), { nil: "" }), { minLength: 1, maxLength: 8 }),
  seed: fc.stringMatching(/^[a-z]{3,8}$/u),
});

describe("a competition's day", () => {
  it("over random competitions seats no judge at a table with an own entry, two or more at each, or is refused", () => {
    fc.assert(fc.property(competition, ({ entries, judges, seed }) => {
      const report = sheetsOf({ head: `seed: ${seed}x\n`, entries: entriesCsv(entries), judges: `judge,brewer\n${judges.map((brewer, index) => `J${String(index)},${brewer}\n`).join("")}` });
      if (report.problems !== undefined) {
        expect(report.problems.map(({ code }) => code)).toEqual(["competition/assignment-impossible"]);
        expect(report.day).toBeUndefined();
        return;
      }
      const day = report.day;
      expect(conflicts(day ?? fail(), new Map(judges.map((brewer, index) => [`J${String(index)}`, brewer])))).toEqual([]);
      for (const flight of day?.flights ?? []) expect(flight.judges.length).toBeGreaterThanOrEqual(2);
      expect(new Set(day?.entries.map(({ code }) => code)).size).toBe(entries.length);
    }), { numRuns: 150 });
  });

  it("is never refused where two judges enter nothing", () => {
    fc.assert(fc.property(competition, ({ entries, judges }) => {
      const all = [...judges, "", ""];
      expect(sheetsOf({ entries: entriesCsv(entries), judges: `judge,brewer\n${all.map((brewer, index) => `J${String(index)},${brewer}\n`).join("")}` }).problems).toBeUndefined();
    }), { numRuns: 60 });
  });

  it("says of an impossible seating which flight, who is free and whose entries stand in the way", () => {
    const { problems } = sheetsOf({ entries: entriesCsv([["ash", "Best Bitter"], ["birch", "Best Bitter"]]), judges: "judge,brewer\nJ1,ash\nJ2,Birch\nJ3,\n" });
    expect(problems).toEqual([{
      code: "competition/assignment-impossible", severity: "error", file: "shared/competitions/cup/judges.csv", line: 1, column: 1, field: "flight A",
      expected: "two judges or more for flight A without an entry of their own in it", found: "J3",
      fix: expect.stringMatching(/J1 \(E1\).*J2 \(E2\)|J2 \(E2\).*J1 \(E1\)/u) as string,
    }]);
  });

  it("keeps codes, flights and seats that are recorded, and draws the rest around them", () => {
    const day = dayOf({ entries: "entry,code,flight,brewer\nE1,417,North,ash\nE2,,,elm\nE3,268,South,fir\nE4,,South,ash\n", judges: "judge,brewer,flights\nJ1,,North;South\nJ2,elm,South\nJ3,,\n" });
    expect(day.entries.map(({ code }) => code)).toEqual(["417", expect.stringMatching(/^\d{3}$/u), "268", expect.stringMatching(/^\d{3}$/u)]);
    expect(day.entries.map(({ flight }) => flight)).toEqual(["North", "North", "South", "South"]);
    expect(day.flights.map(({ judges }) => judges)).toEqual([["J1", "J3"], ["J1", "J2"]]);
    expect(day.files[0]?.text).toContain("E1,417,North");
  });

  it("is the same again from the same seed, and another from another", () => {
    const entries = entriesCsv(Array.from({ length: 18 }, (_, index) => [`b${String(index)}`, "Best Bitter"] as const));
    expect(dayOf({ entries })).toEqual(dayOf({ entries }));
    expect(dayOf({ entries, head: "seed: tide\n" }).entries).not.toEqual(dayOf({ entries }).entries);
  });

  it("deals 400 entries into flights of ten at most, sizes one apart, every code its own", () => {
    const rows = Array.from({ length: 400 }, (_, index) => [`b${String(index % 90)}`, ["Best Bitter", "Blonde Ale", "American IPA"][index % 3] ?? ""] as const);
    const day = dayOf({ entries: entriesCsv(rows), judges: `judge,brewer\n${Array.from({ length: 60 }, (_, index) => `J${String(index)},b${String(index)}\n`).join("")}` });
    const sizes = day.flights.map(({ entries }) => entries.length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(400);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(10);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    expect(new Set(day.entries.map(({ code }) => code)).size).toBe(400);
    expect(conflicts(day, new Map(Array.from({ length: 60 }, (_, index) => [`J${String(index)}`, `b${String(index)}`])))).toEqual([]);
  });

  it.each([
    ["no entries", { entries: "entry\n" }, "competition/no-entries"],
    ["no seed while something is to be drawn", { head: "", entries: "entry\nE1\n" }, "competition/seed-missing"],
    ["more entries than three digits hold", { entries: entriesCsv(Array.from({ length: 601 }, () => ["", "Best Bitter"] as const)) }, "competition/codes-run-out"],
    ["an entry whose brewer judges every flight", { entries: "entry,flight,brewer\nE1,A,ash\nE2,,elm\n", judges: "judge,brewer,flights\nJ1,elm,A\nJ2,,A\n" }, "competition/entry-without-flight"],
  ])("is refused with %s", (_, files, code) => {
    expect(sheetsOf(files).problems?.map((problem) => problem.code)).toEqual([code]);
  });
});

function fail(): never {
  throw new Error("neither a day nor a problem");
}

import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/report/season.js";
import type { SeasonReport } from "../../src/report/types.js";
import { chanceFrom, noisySeason } from "./noise.js";
import { brewedOn, liftTasting, reportOf, seasonOf } from "./reports.js";

/** Every number in a text: signs and decimals as printed. */
function numbersIn(text: string): string[] {
  return [...text.replaceAll(/\d{4}-\d{2}-\d{2}/gu, "").matchAll(/[−+]?\d+(?:\.\d+)?/gu)].map(([number]) => number.replace("+", ""));
}

/** What the page's own tables and sentences say, the paragraph left out: printed numbers as they stand, others to any decimals. */
function isInTables(number: string, { summary: _, ...report }: SeasonReport): boolean {
  const decimals = number.split(".")[1]?.length ?? 0;
  const wanted = number.replace("−", "-");
  const counts = [report.batches.length, ...[...new Set(report.rows.map(({ status }) => status))].map((status) => report.rows.filter((row) => row.status === status).length), report.tested.count];
  const found = { hit: counts.some((count) => String(count) === wanted) };
  JSON.stringify(report, (_key, value: unknown) => {
    if (typeof value === "number" && (value.toFixed(decimals) === wanted || (-value).toFixed(decimals) === wanted)) found.hit = true;
    if (typeof value === "string" && numbersIn(value).includes(number)) found.hit = true;
    if (Array.isArray(value) && String(value.length) === wanted) found.hit = true;
    return value;
  });
  return found.hit;
}

const steep = seasonOf(Array.from({ length: 12 }, (_, index) => [0.7 * index + 0.31, 1.73 + 0.1234 * index + (index % 2 === 0 ? 0.02 : -0.02)] as const));
const tasted = steep.map((batch, index) => ({ ...batch, tastings: [liftTasting("orange peel", [1.2, 1.7, 2.4 + 0.1 * index])] }));

describe("the season in one paragraph", () => {
  it.each([
    ["a slope", seasonReport("A", "a", steep)],
    ["a slope and pooled tastings", seasonReport("B", "b", tasted)],
    ["noise", seasonReport("C", "c", noisySeason(chanceFrom(3), 20))],
    ["a planted slope in noise", seasonReport("D", "d", noisySeason(chanceFrom(4), 20, 0.2))],
    ["one batch", seasonReport("E", "e", steep.slice(0, 1))],
    ["a planned batch", seasonReport("F", "f", [reportOf("B-01", { status: "planned", brewed: brewedOn(0) })])],
  ] as const)("has no number that the page's tables haven't: %s", (_, report) => {
    const numbers = numbersIn(report.summary);
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers.filter((number) => !isInTables(number, report)), report.summary).toEqual([]);
  });

  it("would not pass with a number of its own", () => {
    const report = seasonReport("A", "a", steep);
    expect(isInTables("98.7654", report)).toBe(false);
    expect(isInTables("777", report)).toBe(false);
  });

  it("claims what the relations claim and nothing else", () => {
    const report = seasonReport("D", "d", noisySeason(chanceFrom(4), 20, 0.2));
    const claimed = [...report.relations, ...report.groups, ...report.series].filter(({ claim }) => claim === "shown" || claim === "possible");
    expect(claimed.length).toBeGreaterThan(0);
    for (const { says } of claimed) expect(report.summary).toContain(says.slice(0, says.indexOf("; p ")));
    const none = report.relations.filter(({ claim }) => claim === "none");
    for (const { says } of none) expect(report.summary).not.toContain(says.slice(0, 40));
  });
});

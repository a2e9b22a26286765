import { describe, expect, it } from "vitest";
import { claimOf, isClaimed } from "../../src/report/season-claims.js";
import { seasonQuestions } from "../../src/report/season-questions.js";
import { seasonReport } from "../../src/report/season.js";
import type { BatchReport, Claim } from "../../src/report/types.js";
import { chanceFrom, noisySeason } from "./noise.js";

/** Every claim that the page of such a season would make of a trend, a difference or a bend. */
function claimsOf(batches: readonly BatchReport[]): Claim[] {
  const { figures, pairs, compared, family } = seasonQuestions(batches);
  return [
    ...[...figures, ...pairs].map(({ points, trend }) => claimOf(points.length, trend, family)),
    ...compared.map(({ n, apart }) => claimOf(n, apart?.trend, family)),
    ...pairs.map(({ bend }): Claim => bend !== undefined && (family.get(bend) ?? 1) <= 0.05 ? "shown" : "none"),
  ];
}

describe("seasons of noise", () => {
  const COUNT = 1000;
  /** A few seconds of computing; a busy machine may give it a tenth of itself. */
  const PATIENCE_MS = 90_000;

  it("claim anything in one of twenty at most, of 1,000 seasons of 8 and of 16 batches", () => {
    // Seed fixed in advance: the day of the first batch. 1,000 at 5 %: 50 expected, standard deviation 6.89;
    // a rate of 5 % or less gives more than 72 in fewer than 1 of 1,000 runs.
    const chance = chanceFrom(20251108);
    const claimed = Array.from({ length: COUNT }, (_, index) => claimsOf(noisySeason(chance, index % 2 === 0 ? 8 : 16)))
      .filter((claims) => claims.some((claim) => isClaimed({ claim })));
    expect(claimed.length).toBeLessThanOrEqual(72);
    // A page that could never claim would pass, too.
    expect(claimed.length).toBeGreaterThan(0);
  }, PATIENCE_MS);

  it("ask many questions, and the page makes the claims that are counted here", () => {
    const batches = noisySeason(chanceFrom(1), 16);
    expect(seasonQuestions(batches).family.size).toBeGreaterThan(40);
    const report = seasonReport("Noise", "noise", batches);
    expect(report.tested.count).toBe(seasonQuestions(batches).family.size);
    const told = [...report.relations, ...report.groups].map(({ claim }) => claim);
    expect(claimsOf(batches).slice(report.series.length, report.series.length + told.length)).toEqual(told);
  });

  it("cover a planted slope with the interval in 93 to 97 of 100", () => {
    // 1,000 at 95 %: 950 expected, standard deviation 6.89; 930 to 970 holds all but 4 runs of 1,000.
    const chance = chanceFrom(20261114);
    const covered = Array.from({ length: COUNT }, () => {
      const { pairs } = seasonQuestions(noisySeason(chance, 11, 0.2));
      const trend = pairs.find(({ x, y }) => x.id === "dry-hop-dose" && y.id === "loss-total")?.trend;
      return trend !== undefined && trend.low <= 0.2 && trend.high >= 0.2;
    }).filter(Boolean).length;
    expect(covered).toBeGreaterThanOrEqual(930);
    expect(covered).toBeLessThanOrEqual(970);
  }, PATIENCE_MS);

  it("find a slope as steep as hops make one more often than not, with no more than 11 batches", () => {
    // 0.2 L per g/L over 0 to 12 g/L, scatter 0.3 L. A page that claims nothing would be honest and of no use.
    const chance = chanceFrom(5);
    const found = Array.from({ length: 50 }, () => seasonQuestions(noisySeason(chance, 11, 0.2)))
      .filter(({ pairs, family }) => pairs.some(({ x, y, points, trend }) => x.id === "dry-hop-dose" && y.id === "loss-total" && claimOf(points.length, trend, family) === "shown"));
    expect(found.length).toBeGreaterThan(25);
  });
});

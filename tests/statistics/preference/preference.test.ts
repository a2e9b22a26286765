import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { preferenceTest } from "../../../src/statistics/index.js";
import { fixture } from "../fixture.js";

describe("preference (preference_*.csv, computed in R; 40 and 35 of 60 from a course exercise on Lawless & Heymann)", () => {
  it.each(fixture("preference_examples").map((row) => [row.text("example"), row] as const))("%s", (_, row) => {
    const [first, n] = [row.number("prefer_A"), row.number("n")];
    const result = preferenceTest({ first, second: n - first });
    expect(result.p).toBeCloseTo(row.number("p_exact_two_sided"), 7);
    expect(result.share).toBeCloseTo(row.number("share"), 6);
    expect(result.interval.low).toBeCloseTo(row.number("cp_lo"), 6);
    expect(result.interval.high).toBeCloseTo(row.number("cp_hi"), 6);
  });

  it("votes without a preference are reported and left out", () => {
    for (const row of fixture("preference_no_preference")) {
      const counts = { first: row.number("A"), second: row.number("B"), none: row.number("none") };
      const result = preferenceTest(counts);
      expect(result.p).toBeCloseTo(row.number("drop"), 8);
      // Splitting would have given these instead.
      expect(result.p).not.toBeCloseTo(row.number("split_prop"), 3);
      expect(result.interval.low).toBeCloseTo(row.number("prefer_share_lo"), 7);
      expect(result.interval.high).toBeCloseTo(row.number("prefer_share_hi"), 7);
      expect([result.chose, result.none]).toEqual([counts.first + counts.second, counts.none]);
    }
  });

  it("reaches significance exactly at the two-sided critical numbers (paired_critical.csv, n 4 to 100)", () => {
    for (const row of fixture("paired_critical")) {
      const n = row.number("n");
      for (const alpha of [0.2, 0.1, 0.05, 0.01, 0.001]) {
        if (!row.has(`two_k_${alpha}`)) {
          expect(preferenceTest({ first: n, second: 0 }).p).toBeGreaterThan(alpha);
          continue;
        }
        const k = row.number(`two_k_${alpha}`);
        const p = preferenceTest({ first: k, second: n - k }).p;
        expect(p / row.number(`two_p_${alpha}`)).toBeCloseTo(1, 8);
        expect(preferenceTest({ first: k - 1, second: n - k + 1 }).p).toBeGreaterThan(alpha);
      }
    }
  });
});

describe("preference, by what must hold", () => {
  const votes = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 })).filter(([a, b]) => a + b > 0);

  it("swapping the samples' names keeps p and turns the share over", () => {
    fc.assert(
      fc.property(votes, ([first, second]) => {
        const [here, there] = [preferenceTest({ first, second }), preferenceTest({ first: second, second: first })];
        expect(here.p).toBeCloseTo(there.p, 12);
        expect(here.share).toBeCloseTo(1 - there.share, 12);
        expect(here.p).toBeLessThanOrEqual(1);
        expect(here.interval.low).toBeLessThanOrEqual(here.share);
        expect(here.interval.high).toBeGreaterThanOrEqual(here.share);
      }),
    );
  });

  it("a further vote for the preferred one never raises p", () => {
    fc.assert(
      fc.property(votes, ([a, b]) => {
        const [first, second] = [Math.max(a, b), Math.min(a, b)];
        expect(preferenceTest({ first: first + 1, second }).p).toBeLessThanOrEqual(preferenceTest({ first, second }).p + 1e-12);
      }),
    );
  });

  it.each([
    ["nobody chose", { first: 0, second: 0, none: 5 }],
    ["a negative count", { first: -1, second: 3 }],
    ["half a vote", { first: 2.5, second: 3 }],
    ["half a vote for neither", { first: 2, second: 3, none: 0.5 }],
  ])("%s throws RangeError", (_, counts) => {
    expect(() => preferenceTest(counts)).toThrow(RangeError);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  clopperPearson,
  criticalNumber,
  discriminationTest,
  guessProbability,
  similarityTest,
  type DiscriminationTest,
} from "../../../src/statistics/index.js";
import { fixture } from "../fixture.js";

/** The fixtures' names for the tests. */
const tests: Readonly<Record<string, DiscriminationTest>> = {
  triangle: "triangle",
  duotrio: "duo-trio",
  twoAFC: "two-afc",
  threeAFC: "three-afc",
  tetrad: "tetrad",
};
const named = (protocol: string): DiscriminationTest => tests[protocol] ?? "triangle";

describe("critical numbers, every cell", () => {
  it("triangle (ISO 4120 table, recomputed; 176 cells equal FAO V7180E Appendix A)", () => {
    for (const row of fixture("triangle_critical")) {
      for (const alpha of [0.2, 0.1, 0.05, 0.01, 0.001]) {
        const critical = criticalNumber("triangle", row.number("n"), alpha);
        expect(critical).toBe(row.has(`k_${alpha}`) ? row.number(`k_${alpha}`) : undefined);
        if (critical === undefined || alpha !== 0.05) continue;
        expect(discriminationTest("triangle", critical, row.number("n")).p / row.number(`p_${alpha}`)).toBeCloseTo(1, 8);
      }
    }
  });

  it("one-sided at a guess of 1/2 (ISO 10399 and ISO 5495 tables: 200 and 120 cells equal)", () => {
    for (const row of fixture("paired_critical")) {
      for (const alpha of [0.2, 0.1, 0.05, 0.01, 0.001]) {
        const critical = criticalNumber("duo-trio", row.number("n"), alpha);
        expect(critical).toBe(row.has(`one_k_${alpha}`) ? row.number(`one_k_${alpha}`) : undefined);
        expect(criticalNumber("two-afc", row.number("n"), alpha)).toBe(critical);
      }
    }
  });

  it("is 27 of 37 at 1 % and 31 of 40 at 0.1 % where a handbook's appendix wrongly prints 26 and 30", () => {
    expect(criticalNumber("two-afc", 37, 0.01)).toBe(27);
    expect(criticalNumber("two-afc", 40, 0.001)).toBe(31);
    expect(discriminationTest("two-afc", 26, 37).p).toBeCloseTo(0.01004, 4);
    expect(discriminationTest("two-afc", 30, 40).p).toBeCloseTo(0.00111, 5);
  });
});

describe("fourteen results worked through (discrimination_examples.csv, computed in R)", () => {
  it.each(fixture("discrimination_examples").map((row) => [row.text("protocol"), row.number("x"), row.number("n"), row] as const))(
    "%s: %i of %i",
    (protocol, correct, tasters, row) => {
      const result = discriminationTest(named(protocol), correct, tasters);
      expect(result.p).toBeCloseTo(row.number("p_value_one_sided"), 7);
      expect(result.proportionCorrect).toBeCloseTo(row.number("pc"), 7);
      expect(result.proportionInterval.low).toBeCloseTo(row.number("pc_cp_lo"), 7);
      expect(result.proportionInterval.high).toBeCloseTo(row.number("pc_cp_hi"), 7);
      expect(result.discriminators).toBeCloseTo(row.number("pd"), 7);
      expect(result.discriminatorsInterval.low).toBeCloseTo(row.number("pd_cp_lo"), 7);
      expect(result.discriminatorsInterval.high).toBeCloseTo(row.number("pd_cp_hi"), 7);
      expect(result.dPrime ?? Infinity).toBeCloseTo(row.number("dprime"), 5);
      expect(result.dPrimeInterval.low).toBeCloseTo(row.number("dprime_lo"), 5);
      expect(result.dPrimeInterval.high ?? Infinity).toBeCloseTo(row.number("dprime_hi"), 5);
    },
  );

  it("8 of 12 in a triangle: p .01876, 50 % discriminators [2.3 %, 85.1 %], d′ 2.32 [0.41, 4.04]", () => {
    const result = discriminationTest("triangle", 8, 12);
    expect(result.p).toBeCloseTo(0.01876, 5);
    expect(result.discriminatorsInterval.low).toBeCloseTo(0.023, 3);
    expect(result.discriminatorsInterval.high).toBeCloseTo(0.851, 3);
    expect(result.dPrime).toBeCloseTo(2.32, 2);
    expect(result.dPrimeInterval.low).toBeCloseTo(0.41, 2);
    expect(result.dPrimeInterval.high).toBeCloseTo(4.04, 2);
  });

  it("all right sets no upper bound, and the result survives JSON", () => {
    const result = discriminationTest("triangle", 6, 6);
    expect(result.dPrime).toBeNull();
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe("similarity", () => {
  it("most right answers still called similar (similarity_max_correct.csv, 1000 cells; about 30 verified in ISO 5495 Table A.3)", () => {
    for (const row of fixture("similarity_max_correct")) {
      const options = { largestShare: row.number("pd"), beta: row.number("beta") };
      const result = similarityTest(named(row.text("protocol")), 0, row.number("n"), options);
      expect(result.mostCorrect).toBe(row.has("k_max") ? row.number("k_max") : undefined);
      expect(result.belowChance).toBe(row.text("below_chance") === "TRUE");
    }
  });

  it("ISO 5495 Table A.3 (GOST R 53161): 126 tasters, 20 %: 66, 68, 70 at beta .05, .10, .20; 132, 30 %: 76", () => {
    const most = (n: number, largestShare: number, beta: number) => similarityTest("two-afc", 0, n, { largestShare, beta }).mostCorrect;
    expect([0.05, 0.1, 0.2].map((beta) => most(126, 0.2, beta))).toEqual([66, 68, 70]);
    expect(most(132, 0.3, 0.05)).toBe(76);
  });

  it("a small panel at chance still leaves a third to a half who might tell (similarity_small_n.csv)", () => {
    for (const row of fixture("similarity_small_n")) {
      const result = similarityTest("triangle", row.number("x_at_chance"), row.number("n"), { largestShare: 0.3 });
      expect(result.upperShare).toBeCloseTo(row.number("pd_upper95_one_sided"), 6);
      expect(result.similar).toBe(false);
    }
  });

  it("says similar exactly when the upper limit lies at or below the largest share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 120 }), fc.nat(), fc.constantFrom(0.2, 0.3, 0.4), (n, x, largestShare) => {
        const result = similarityTest("triangle", x % (n + 1), n, { largestShare });
        expect(result.similar).toBe(result.upperShare <= largestShare + 1e-9);
      }),
    );
  });
});

describe("discrimination, by what must hold", () => {
  const kinds = fc.constantFrom<DiscriminationTest>("triangle", "tetrad", "duo-trio", "two-afc", "three-afc");
  const counts = fc.integer({ min: 1, max: 40 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

  it("p lies in 0 to 1 and every interval contains its estimate", () => {
    fc.assert(
      fc.property(kinds, counts, (kind, [x, n]) => {
        const r = discriminationTest(kind, x, n);
        expect(r.p).toBeGreaterThan(0);
        expect(r.p).toBeLessThanOrEqual(1);
        for (const [estimate, { low, high }] of [
          [r.proportionCorrect, r.proportionInterval],
          [r.discriminators, r.discriminatorsInterval],
          [r.dPrime ?? Infinity, { low: r.dPrimeInterval.low, high: r.dPrimeInterval.high ?? Infinity }],
        ] as const) {
          expect(low).toBeLessThanOrEqual(estimate);
          expect(high).toBeGreaterThanOrEqual(estimate);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("a further taster who is right never raises p nor lowers the lower limits", () => {
    fc.assert(
      fc.property(kinds, counts, (kind, [x, n]) => {
        const [before, after] = [discriminationTest(kind, x, n), discriminationTest(kind, x + 1, n + 1)];
        expect(after.p).toBeLessThanOrEqual(before.p + 1e-12);
        expect(after.proportionInterval.low).toBeGreaterThanOrEqual(before.proportionInterval.low - 1e-12);
        expect(after.dPrimeInterval.low).toBeGreaterThanOrEqual(before.dPrimeInterval.low - 1e-7);
      }),
      { numRuns: 40 },
    );
  });

  it("all answers right by guessing alone has the chance guess^n", () => {
    fc.assert(
      fc.property(kinds, fc.integer({ min: 1, max: 20 }), (kind, n) => {
        expect(discriminationTest(kind, n, n).p / guessProbability(kind) ** n).toBeCloseTo(1, 9);
      }),
      { numRuns: 30 },
    );
  });

  it("Clopper–Pearson turns over with the counts", () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        expect(clopperPearson(x, n).low).toBeCloseTo(1 - clopperPearson(n - x, n).high, 10);
      }),
    );
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["more right answers than tasters", () => discriminationTest("triangle", 9, 8)],
    ["no tasters", () => discriminationTest("triangle", 0, 0)],
    ["half a taster", () => discriminationTest("triangle", 1, 8.5)],
    ["a negative count", () => discriminationTest("triangle", -1, 8)],
    ["a level of 95", () => discriminationTest("triangle", 3, 8, 95)],
    ["an alpha of 0", () => criticalNumber("triangle", 8, 0)],
    ["a similarity share of 0", () => similarityTest("triangle", 3, 8, { largestShare: 0 })],
    ["a beta of 1", () => similarityTest("triangle", 3, 8, { largestShare: 0.3, beta: 1 })],
    ["a proportion of more than all", () => clopperPearson(5, 4)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

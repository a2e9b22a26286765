import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dPrimeOf,
  discriminationPower,
  discriminationTest,
  panelSize,
  panelSizeForShare,
  proportionCorrect,
  smallestDetectable,
  criticalNumber,
  type DiscriminationTest,
} from "../../../src/statistics/index.js";
import { fixture } from "../fixture.js";

const columns = [
  ["two-afc", "twoAFC"],
  ["three-afc", "threeAFC"],
  ["triangle", "triangle"],
  ["duo-trio", "duotrio"],
  ["tetrad", "tetrad"],
] as const;
const byColumn: ReadonlyMap<string, DiscriminationTest> = new Map(columns.map(([test, column]) => [column, test]));
const named = (column: string): DiscriminationTest => byColumn.get(column) ?? "triangle";

describe("psychometric functions (dprime*.csv: scipy and R agree, psyphy and 4 million simulated trials confirm)", () => {
  it.each(columns)("%s: proportion correct for d′ 0 to 5", (test, column) => {
    for (const row of fixture("dprime")) {
      expect(Math.abs(proportionCorrect(test, row.number("dprime")) - row.number(`pc_${column}`))).toBeLessThan(1e-8);
    }
  });

  it.each(columns)("%s: d′ for a proportion of .34 to .99, to 1e-6", (test, column) => {
    for (const row of fixture("dprime_inverse")) {
      if (!row.has(`d_${column}`)) continue;
      const d = dPrimeOf(test, row.number("pc"));
      expect(Math.abs((d ?? Infinity) - row.number(`d_${column}`))).toBeLessThan(1e-6);
    }
  });

  it.each(columns)("%s: slope", (test, column) => {
    for (const row of fixture("dprime_slope")) {
      const d = row.number("dprime");
      const slope = (proportionCorrect(test, d + 1e-4) - proportionCorrect(test, d - 1e-4)) / 2e-4;
      expect(slope).toBeCloseTo(row.number(`slope_${column}`), 6);
    }
  });

  it("is 0 at or below chance and unbounded (null) when all are right", () => {
    for (const [test] of columns) {
      expect(dPrimeOf(test, 0)).toBe(0);
      expect(dPrimeOf(test, 1 / 3)).toBe(0);
      expect(dPrimeOf(test, 1)).toBeNull();
    }
  });

  it("the inverse undoes the function", () => {
    fc.assert(
      fc.property(fc.constantFrom(...columns), fc.double({ min: 0.3, max: 6, noNaN: true }), ([test], d) => {
        expect(dPrimeOf(test, proportionCorrect(test, d))).toBeCloseTo(d, 4);
      }),
      { numRuns: 30 },
    );
  });
});

describe("power and panel size (computed in R)", () => {
  it("power of every cell (power_dprime.csv)", () => {
    for (const row of fixture("power_dprime")) {
      const [test, n, d] = [named(row.text("protocol")), row.number("n"), row.number("dprime")];
      expect(criticalNumber(test, n)).toBe(row.has("k_min_05") ? row.number("k_min_05") : undefined);
      expect(discriminationPower(test, n, d)).toBeCloseTo(row.has("power_05") ? row.number("power_05") : 0, 6);
      expect(discriminationPower(test, n, d, 0.2)).toBeCloseTo(row.has("power_20") ? row.number("power_20") : 0, 6);
    }
  });

  it("35 tasters, a third of them discriminators: critical number 17 at alpha .0442, power .8417 (a published R example)", () => {
    // pc = 1/3 + 2/3 · 1/3 = 5/9
    expect(criticalNumber("triangle", 35)).toBe(17);
    expect(discriminationTest("triangle", 17, 35).p).toBeCloseTo(0.0442, 4);
    const d = dPrimeOf("triangle", 5 / 9) ?? 0;
    expect(discriminationPower("triangle", 35, d)).toBeCloseTo(0.8417, 4);
  });

  it("panel sizes for a d′ (panel_size_dprime.csv)", () => {
    for (const row of fixture("panel_size_dprime")) {
      const options = { alpha: row.number("alpha"), power: row.number("power") };
      const size = panelSize(named(row.text("protocol")), row.number("dprime"), options);
      expect(size).toEqual({ first: row.number("n_first"), stable: row.number("n_stable") });
    }
  });

  it("panel sizes for a share of discriminators (panel_size_pd.csv; Schlich's 16, 20, 23 … from memory)", () => {
    for (const row of fixture("panel_size_pd")) {
      const guess = row.text("p_guess") === "0.500000" ? 1 / 2 : 1 / 3;
      const options = { alpha: row.number("alpha"), power: 1 - row.number("beta") };
      const size = panelSizeForShare(guess, row.number("pd"), options);
      expect(size).toEqual({ first: row.number("n_first"), stable: row.number("n_stable") });
    }
  });

  it("gives no panel size above 1000", () => {
    expect(panelSize("triangle", 0.2)).toBeUndefined();
  });

  it("the smallest detectable d′ has that power, and nothing smaller does", () => {
    fc.assert(
      fc.property(fc.constantFrom(...columns), fc.integer({ min: 5, max: 40 }), ([test], n) => {
        const d = smallestDetectable(test, n) ?? Number.NaN;
        expect(discriminationPower(test, n, d)).toBeCloseTo(0.8, 6);
        expect(discriminationPower(test, n, d - 0.01)).toBeLessThan(0.8);
      }),
      { numRuns: 30 },
    );
  });

  it("two tasters at 1 % can't find anything", () => {
    expect(smallestDetectable("triangle", 2, { alpha: 0.01 })).toBeUndefined();
    expect(discriminationPower("triangle", 2, 3, 0.01)).toBe(0);
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["a negative d′", () => proportionCorrect("triangle", -1)],
    ["an endless d′", () => proportionCorrect("triangle", Infinity)],
    ["a proportion above 1", () => dPrimeOf("triangle", 1.1)],
    ["a proportion that is no number", () => dPrimeOf("triangle", Number.NaN)],
    ["no tasters", () => discriminationPower("triangle", 0, 1)],
    ["a power of 1", () => panelSize("triangle", 1, { power: 1 })],
    ["a power below alpha", () => smallestDetectable("triangle", 10, { alpha: 0.5, power: 0.4 })],
    ["a share of 0", () => panelSizeForShare(1 / 3, 0)],
    ["a guess of 0", () => panelSizeForShare(0, 0.5)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

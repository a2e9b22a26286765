import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adjustBenjaminiHochberg, adjustHolm } from "../../../src/statistics/index.js";
import { fixture, groupedBy } from "../fixture.js";

describe("adjusted p (multiplicity.csv, R p.adjust; the 15 values are Benjamini & Hochberg 1995)", () => {
  it.each([...groupedBy(fixture("multiplicity"), (row) => row.text("set"))])("%s", (_, rows) => {
    const ps = rows.map((row) => row.number("p"));
    for (const [i, row] of rows.entries()) {
      expect(adjustHolm(ps)[i]).toBeCloseTo(row.number("holm"), 10);
      expect(adjustBenjaminiHochberg(ps)[i]).toBeCloseTo(row.number("BH"), 9);
    }
  });

  it("the 1995 family: Benjamini–Hochberg rejects 4 at .05, Holm 3 (published)", () => {
    const ps = fixture("multiplicity").filter((row) => row.text("set") === "benjamini_hochberg_1995").map((row) => row.number("p"));
    expect(adjustBenjaminiHochberg(ps).filter((p) => p <= 0.05)).toHaveLength(4);
    expect(adjustHolm(ps).filter((p) => p <= 0.05)).toHaveLength(3);
  });
});

describe("adjusted p, by what must hold", () => {
  const list = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 });
  it.each([["Holm", adjustHolm], ["Benjamini–Hochberg", adjustBenjaminiHochberg]] as const)(
    "%s: never below the p itself, never above 1, in the same order",
    (_, adjust) => {
      fc.assert(
        fc.property(list, (ps) => {
          const adjusted = adjust(ps);
          expect(adjusted).toHaveLength(ps.length);
          for (const [i, p] of ps.entries()) {
            expect(adjusted[i]).toBeGreaterThanOrEqual(p);
            expect(adjusted[i]).toBeLessThanOrEqual(1);
            for (const [j, q] of ps.entries()) if (p < q) expect(adjusted[i]).toBeLessThanOrEqual(adjusted[j] ?? 0);
          }
        }),
      );
    },
  );

  it("one question needs no adjusting, none gives none", () => {
    expect(adjustHolm([0.03])).toEqual([0.03]);
    expect(adjustBenjaminiHochberg([0.03])).toEqual([0.03]);
    expect(adjustHolm([])).toEqual([]);
  });

  it("two attributes and six tasters can't reach .05 by an exact rank test: 2 × .03125", () => {
    expect(adjustHolm([0.03125, 0.5])[0]).toBe(0.0625);
  });

  it.each([[1.1], [-0.1], [Number.NaN]])("a p of %d throws RangeError", (p) => {
    expect(() => adjustHolm([0.5, p])).toThrow(RangeError);
    expect(() => adjustBenjaminiHochberg([0.5, p])).toThrow(RangeError);
  });
});

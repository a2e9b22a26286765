import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lagOneAutocorrelation, mean, median, oneWayAnova, standardDeviation } from "../../../src/statistics/index.js";
import { agreeingDigits, expected, fixture, groupedBy } from "../fixture.js";

const certified = fixture("nist_univariate_expected");

/** NumAcc2 to 4 as NIST defines them: a first value, then two neighbours in turn, 1001 in all. */
const numAcc = (base: number): number[] => [base + 0.2, ...Array.from({ length: 500 }, () => [base + 0.1, base + 0.3]).flat()];
const column = (name: string): number[] => fixture(name).map((row) => row.number("y"));

describe("NIST StRD univariate summary statistics (certified values)", () => {
  // Digits lost: NumAcc3 and 4 hold values that binary doubles can't; NIST expects no more of double precision.
  it.each([
    ["Michelso", column("nist_michelso"), 13],
    ["Mavro", column("nist_mavro"), 12],
    ["Lew", column("nist_lew"), 14],
    ["NumAcc1", column("nist_numacc1"), 14],
    ["NumAcc2", numAcc(1), 13],
    ["NumAcc3", numAcc(1_000_000), 9],
    ["NumAcc4", column("nist_numacc4"), 8],
  ] as const)("%s: mean, standard deviation and lag-1 autocorrelation", (name, values, digits) => {
    const row = expected(certified, "dataset", name);
    expect(values).toHaveLength(row.number("n"));
    expect(agreeingDigits(mean(values), row.number("mean_certified"))).toBeGreaterThan(14);
    expect(agreeingDigits(standardDeviation(values), row.number("sd_certified"))).toBeGreaterThan(digits);
    expect(agreeingDigits(lagOneAutocorrelation(values), row.number("lag1_certified"))).toBeGreaterThan(digits - 1);
  });
});

describe("NIST StRD analysis of variance (certified values)", () => {
  const groupsOf = (name: string): number[][] => {
    const groups = groupedBy(fixture(name), (row) => row.text("group"));
    return [...groups.values()].map((rows) => rows.map((row) => row.number("y")));
  };

  it.each([
    ["SiRstv", "nist_anova_sirstv", 12],
    ["AtmWtAg", "nist_anova_atmwtag", 8], // differs in the seventh decimal of 107.868: double precision can't hold more
  ] as const)("%s", (name, file, digits) => {
    const row = expected(fixture("nist_anova_expected"), "dataset", name);
    const anova = oneWayAnova(groupsOf(file));
    expect(anova.degreesBetween).toBe(row.number("df_b"));
    expect(anova.degreesWithin).toBe(row.number("df_w"));
    for (const [ours, theirs] of [
      [anova.sumSquaresBetween, "ss_between_cert"],
      [anova.sumSquaresWithin, "ss_within_cert"],
      [anova.meanSquareBetween, "ms_between_cert"],
      [anova.meanSquareWithin, "ms_within_cert"],
      [anova.fRatio, "F_cert"],
      [anova.rSquared, "r2_cert"],
    ] as const) {
      expect(agreeingDigits(ours, row.number(theirs))).toBeGreaterThan(digits);
    }
  });

  it("gives an F of two groups equal to the square of Student's t (textbook identity)", () => {
    // Student 1908 sleep data as two independent groups: t = -1.8608, df 18, p = .07919 (R, t.test var.equal; from memory)
    const groups = groupedBy(fixture("data_sleep"), (row) => row.text("group"));
    const anova = oneWayAnova([...groups.values()].map((rows) => rows.map((row) => row.number("extra"))));
    expect(Math.sqrt(anova.fRatio)).toBeCloseTo(1.8608, 4);
    expect(anova.p).toBeCloseTo(0.07919, 5);
  });
});

describe("samples, by what must hold", () => {
  const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 30 });

  it("mean and median lie within the values", () => {
    fc.assert(
      fc.property(values, (xs) => {
        for (const center of [mean(xs), median(xs)]) {
          expect(center).toBeGreaterThanOrEqual(Math.min(...xs) - 1e-9);
          expect(center).toBeLessThanOrEqual(Math.max(...xs) + 1e-9);
        }
      }),
    );
  });

  it("equal values have exactly their own mean and no spread", () => {
    expect(mean([0.1, 0.1, 0.1])).toBe(0.1);
    expect(standardDeviation([0.1, 0.1, 0.1])).toBe(0);
  });

  it("median leaves its input in place", () => {
    const xs = [3, 1, 2];
    expect(median(xs)).toBe(2);
    expect(xs).toEqual([3, 1, 2]);
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["a mean of nothing", () => mean([])],
    ["a mean with NaN", () => mean([1, Number.NaN])],
    ["a median of nothing", () => median([])],
    ["a spread of one", () => standardDeviation([1])],
    ["autocorrelation of a constant", () => lagOneAutocorrelation([2, 2, 2])],
    ["one group", () => oneWayAnova([[1, 2]])],
    ["groups of one", () => oneWayAnova([[1], [2]])],
    ["an empty group", () => oneWayAnova([[1, 2], []])],
    ["groups that don't vary", () => oneWayAnova([[1, 1], [2, 2]])],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

import { describe, expect, it } from "vitest";
import { bendTest, bentHeight, bentSlope } from "../../../src/statistics/index.js";
import { seededUniform } from "../../report/seeded-uniform.js";
import { fixture } from "../fixture.js";

const set = (name: string): { x: number[]; y: number[] } => {
  const rows = fixture("trend_example").filter((row) => row.text("example") === name);
  return { x: rows.map((row) => row.number("x")), y: rows.map((row) => row.number("y")) };
};

/** Treloar's enzyme kinetics, treated cells (Bates & Watts, Nonlinear Regression Analysis, 1988, A1.3): rates that saturate. */
const CONCENTRATION = [0.02, 0.02, 0.06, 0.06, 0.11, 0.11, 0.22, 0.22, 0.56, 0.56, 1.1, 1.1];
const RATE = [76, 47, 97, 107, 123, 139, 159, 152, 191, 201, 207, 200];

describe("a bend, against a straight line", () => {
  it("is found in Anscombe's second set, which is a parabola, and not in his first", () => {
    // Anscombe, American Statistician 27 (1973): y = −5.9957 + 2.7808 x − 0.12671 x² to two decimals.
    const { x, y } = set("anscombe_2");
    const test = bendTest(x, y);
    expect(test.p).toBeLessThan(1e-12);
    expect(test.curvature).toBeCloseTo(-0.12671, 4);
    // The slope of that parabola: 2.7808 − 2 × 0.12671 x.
    expect(bentSlope(test, 4).slope).toBeCloseTo(2.7808 - 8 * 0.12671, 3);
    expect(bentHeight(test, x, 9).y).toBeCloseTo(-5.9957 + 2.7808 * 9 - 0.12671 * 81, 2);
    const first = set("anscombe_1");
    expect(bendTest(first.x, first.y).p).toBeGreaterThan(0.05);
  });

  it("is found where a published reaction saturates: the slope falls from clear of zero to none", () => {
    const test = bendTest(CONCENTRATION, RATE);
    expect(test.p).toBeLessThan(0.01);
    expect(test.curvature).toBeLessThan(0);
    expect(bentSlope(test, 0.02).low).toBeGreaterThan(0);
    expect(bentSlope(test, 1.1).slope).toBeLessThan(0.1 * bentSlope(test, 0.02).slope);
  });

  it("is not found in NIST's Norris data, made to be straight", () => {
    const rows = fixture("nist_norris");
    expect(bendTest(rows.map((row) => row.number("x")), rows.map((row) => row.number("y"))).p).toBeGreaterThan(0.05);
  });

  it("is the F of the two nested fits: residual sums worked out by hand", () => {
    // Line: Sxx 10, Sxy 42, Syy 194.8 → RSS 194.8 − 42²/10 = 18.4. Square (orthogonal, 2 −1 −2 −1 2, Σ² 14): Σ w y = 34 − 1 − 8 − 9 = 16 → 256/14 = 18.2857.
    // F = 18.2857 / ((18.4 − 18.2857)/2) = 320.
    expect(bendTest([0, 1, 2, 3, 4], [0, 1, 4, 9, 17]).fRatio).toBeCloseTo(320, 6);
  });

  it("is claimed in 5 of 100 straight lines", () => {
    // 1,000 at 5 %: 50 expected, standard deviation 6.9; outside 28 to 74 has a chance of 0.1 %.
    const random = seededUniform(41);
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const found = Array.from({ length: 1000 }, () => {
      const x = Array.from({ length: 12 }, () => 12 * random());
      return bendTest(x, x.map((value) => 1 + 0.3 * value + normal())).p;
    }).filter((p) => p <= 0.05).length;
    expect(found).toBeGreaterThanOrEqual(28);
    expect(found).toBeLessThanOrEqual(74);
  });

  it("covers the height of the curve in 95 of 100", () => {
    // 500 at 95 %: 475 expected, standard deviation 4.87; outside 459 to 490 has a chance of 0.1 %.
    const random = seededUniform(17);
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const covered = Array.from({ length: 500 }, () => {
      const x = Array.from({ length: 14 }, () => 10 * random());
      const test = bendTest(x, x.map((value) => 1 + value - 0.05 * value ** 2 + 0.4 * normal()));
      const { low, high } = bentHeight(test, x, 8);
      return low <= 5.8 && high >= 5.8;
    }).filter(Boolean).length;
    expect(covered).toBeGreaterThanOrEqual(459);
    expect(covered).toBeLessThanOrEqual(490);
  });

  it.each([
    ["four points", [1, 2, 3, 4], [1, 2, 3, 4]],
    ["three distinct x", [1, 1, 2, 2, 3, 3], [1, 2, 3, 4, 5, 6]],
    ["unequal lengths", [1, 2, 3, 4, 5], [1, 2]],
  ])("refuses %s", (_, x, y) => {
    expect(() => bendTest(x, y)).toThrow(RangeError);
  });
});

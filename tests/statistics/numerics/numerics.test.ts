import { describe, expect, it } from "vitest";
import { integrate } from "../../../src/statistics/numerics/quadrature.js";
import { findRoot } from "../../../src/statistics/numerics/root.js";

describe("integrate", () => {
  it("is exact for polynomials up to degree 22, as a Kronrod rule of 15 points must be", () => {
    for (let degree = 0; degree <= 22; degree += 1) {
      // A tolerance this wide accepts the rule's first answer, so this tests nodes and weights.
      expect(integrate((x) => x ** degree, 0, 1, 1e9)).toBeCloseTo(1 / (degree + 1), 14);
    }
  });

  it("finds integrals known in closed form (textbook)", () => {
    expect(integrate(Math.sin, 0, Math.PI)).toBeCloseTo(2, 12);
    expect(integrate((x) => Math.exp(-x * x), -9, 9)).toBeCloseTo(Math.sqrt(Math.PI), 12);
    expect(integrate((x) => 4 / (1 + x * x), 0, 1)).toBeCloseTo(Math.PI, 12);
  });

  it("narrows in on a step", () => {
    expect(integrate((x) => (x < 1 / 3 ? 0 : 1), 0, 1)).toBeCloseTo(2 / 3, 10);
  });

  it("refuses a function without finite values", () => {
    expect(() => integrate((x) => 1 / (x - 0.5), 0, 1)).toThrow(RangeError);
  });
});

describe("findRoot", () => {
  it("finds roots known in closed form", () => {
    expect(findRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(findRoot(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 12);
    expect(findRoot((x) => x ** 9, -1, 2)).toBeCloseTo(0, 3);
  });

  it("accepts a root at either end", () => {
    expect(findRoot((x) => x, 0, 1)).toBe(0);
    expect(findRoot((x) => x - 1, 0, 1)).toBe(1);
  });

  it("refuses a bracket without a change of sign, and NaN", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => findRoot(() => Number.NaN, 0, 1)).toThrow(RangeError);
  });
});

import { describe, expect, it } from "vitest";
import { invertRising } from "../../src/science/invert-rising.js";

describe("solving a rising relation backwards", () => {
  it("finds the root of a number to all its digits", () => {
    expect(invertRising((x) => x * x, 2, { low: 1, high: 2 })).toBeCloseTo(Math.SQRT2, 15);
  });

  it("finds it where the curve is flat at one end and steep at the other, in few steps", () => {
    let evaluations = 0;
    const steep = (x: number) => {
      evaluations += 1;
      return x ** 9;
    };
    expect(invertRising(steep, 2, { low: 0, high: 2 })).toBeCloseTo(2 ** (1 / 9), 14);
    expect(evaluations).toBeLessThan(50);
  });

  it("gives the ends themselves", () => {
    expect(invertRising((x) => x, 1, { low: 1, high: 2 })).toBe(1);
    expect(invertRising((x) => x, 2, { low: 1, high: 2 })).toBe(2);
  });

  it("refuses what the relation doesn't reach", () => {
    for (const target of [0.9, 2.1, NaN]) expect(() => invertRising((x) => x, target, { low: 1, high: 2 })).toThrow(RangeError);
  });
});

import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { displayUnit } from "../../src/charts/display-unit.js";
import { hatchBox } from "../../src/charts/hatch.js";
import { compactPath } from "../../src/charts/render/path-data.js";
import { thinRun } from "../../src/charts/thin-runs.js";
import { computeScale, dayTicks } from "../../src/charts/ticks.js";

describe("thinning a run", () => {
  // + 0 makes 0 of −0, which are one reading.
  const runs = fc.array(fc.record({ step: fc.double({ min: 0.01, max: 2, noNaN: true }), value: fc.double({ min: -5, max: 30, noNaN: true }).map((value) => value + 0) }), { minLength: 1, maxLength: 400 })
    .map((steps) => {
      let hour = 0;
      return steps.map(({ step, value }) => [hour += step, value] as const);
    });

  it("keeps the ends, the lowest and the highest reading, in order", () => {
    fc.assert(fc.property(runs, fc.double({ min: 0.1, max: 10, noNaN: true }), (run, column) => {
      const thin = thinRun(run, column);
      const values = (points: readonly (readonly [number, number])[]): readonly number[] => points.map(([, value]) => value);
      expect(Math.min(...values(thin))).toBe(Math.min(...values(run)));
      expect(Math.max(...values(thin))).toBe(Math.max(...values(run)));
      expect(thin[0]).toEqual(run[0]);
      expect(thin.at(-1)).toEqual(run.at(-1));
      expect(thin.every(([hour], index) => index === 0 || hour > thin[index - 1]![0])).toBe(true);
      expect(thin.every((point) => run.includes(point))).toBe(true);
    }), { numRuns: 60 });
  });

  it("leaves at most two readings a column, and the run's own ends", () => {
    const dense = Array.from({ length: 40_000 }, (_, index) => [index / 100, Math.sin(index * 7)] as const);
    expect(thinRun(dense, 1).length).toBeLessThanOrEqual(2 * 400 + 2);
  });

  it("draws a level stretch from end to end", () => {
    expect(thinRun([[0, 20], [1, 20], [2, 20], [3, 21], [4, 21]], 0.5)).toEqual([[0, 20], [2, 20], [3, 21], [4, 21]]);
  });
});

describe("an axis", () => {
  const values = fc.array(fc.integer({ min: -1e7, max: 1e7 }).map((thousandths) => thousandths / 1000), { minLength: 1, maxLength: 20 });

  it("holds every value, with rounded ticks between its ends", () => {
    fc.assert(fc.property(values, fc.integer({ min: 3, max: 8 }), (given, wanted) => {
      const scale = computeScale(given, wanted);
      expect(scale.low).toBeLessThan(Math.min(...given) + 1e-6);
      expect(scale.high).toBeGreaterThan(Math.max(...given) - 1e-6);
      expect(scale.high).toBeGreaterThan(scale.low);
      expect(scale.ticks.length).toBeGreaterThanOrEqual(1);
      expect(scale.ticks.length).toBeLessThanOrEqual(2 * wanted + 2);
      for (const tick of scale.ticks) {
        expect(tick).toBeGreaterThanOrEqual(scale.low - 1e-6);
        expect(tick).toBeLessThanOrEqual(scale.high + 1e-6);
        expect(Number(tick.toFixed(scale.decimals))).toBe(tick);
      }
    }));
  });

  it("marks 1, 2 or 5 times a power of ten", () => {
    expect(computeScale([0, 20], 5).ticks).toEqual([0, 5, 10, 15, 20]);
    expect(computeScale([1.01, 1.05], 5, { smallestStep: 0.001 }).ticks).toEqual([1.01, 1.02, 1.03, 1.04, 1.05]);
  });

  it("has room around equal values, and no axis so short that noise fills it", () => {
    const equal = computeScale([18, 18, 18], 4, { smallestStep: 0.5, smallestRange: 5 });
    expect([equal.low, equal.high]).toEqual([15.5, 20.5]);
    const one = computeScale([1.05], 5, { smallestStep: 0.001, smallestRange: 0.008 });
    expect(one.high - one.low).toBeCloseTo(0.008, 9);
    expect(computeScale([0, 0], 4).ticks).toContain(0);
  });

  it("begins at zero where zero is near enough to be worth its room", () => {
    expect(computeScale([4, 8], 4, { fromZero: true }).low).toBe(0);
    expect(computeScale([85, 92], 4, { fromZero: true }).low).toBeGreaterThan(80);
  });

  it("refuses to stand without a value", () => {
    expect(() => computeScale([], 4)).toThrow(RangeError);
  });

  it("of days marks quarters, days or weeks", () => {
    expect(dayTicks(0, 16.1, 12)).toEqual([0, 2, 4, 6, 8, 10, 12, 14, 16]);
    expect(dayTicks(-0.3, 1, 6)).toEqual([-0.25, 0, 0.25, 0.5, 0.75, 1]);
    expect(dayTicks(0, 100, 6)).toEqual([0, 28, 56, 84]);
  });
});

describe("path data", () => {
  interface Point { readonly x: number; readonly y: number }

  /** Where a path of M, L, H, V, h, v and l commands goes, read by the SVG 1.1 grammar. */
  function pointsOf(data: string): readonly Point[] {
    const points: Point[] = [];
    let [x, y] = [0, 0];
    for (const [, command = "", rest = ""] of data.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
      const [first = 0, second = 0] = (rest.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
      if (command === "M" || command === "L") [x, y] = [first, second];
      else if (command === "l") [x, y] = [x + first, y + second];
      else if (command === "h") x += first;
      else if (command === "v") y += first;
      else throw new Error(`unexpected ${command}`);
      points.push({ x, y });
    }
    return points;
  }

  it("goes where it went before, to a twentieth of a pixel, after any number of steps", () => {
    const coordinate = fc.double({ min: -500, max: 900, noNaN: true }).map((value) => Math.round(value * 1000) / 1000);
    fc.assert(fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 200 }), coordinate, coordinate, (path, dx, dy) => {
      const data = path.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x},${y}`).join("");
      const drawn = pointsOf(compactPath(data, dx, dy));
      const far = (point: Point): number => Math.min(...drawn.map((other) => Math.hypot(other.x - point.x, other.y - point.y)));
      for (const [x, y] of path) expect(far({ x: x + dx, y: y + dy })).toBeLessThanOrEqual(0.0708);
    }), { numRuns: 50 });
  });

  it("keeps breaks in a line, arcs and closed boxes", () => {
    expect(compactPath("M0,0L10,0M20,5L20,15", 1, 1)).toBe("M1 1h10M21 6v10");
    expect(compactPath("M0,0h10v10h-10Z", 2.04, 3)).toBe("M2 3h10v10h-10Z");
    expect(compactPath("M3,0A3,3,0,1,1,-3,0", 10, 20)).toBe("M13 20A3 3 0 1 1 7 20");
  });
});

describe("a hatched box", () => {
  it("is hatched at 45° and never outside itself", () => {
    const box = { left: 10, right: 40, top: 5, bottom: 85 };
    const strokes = hatchBox(box, 8);
    expect(strokes.length).toBe(14);
    for (const { x, y, x2, y2 } of strokes) {
      expect(x2 - x).toBeCloseTo(y - y2, 9);
      expect(Math.min(x, x2)).toBeGreaterThanOrEqual(box.left - 1e-9);
      expect(Math.max(x, x2)).toBeLessThanOrEqual(box.right + 1e-9);
      expect(Math.min(y, y2)).toBeGreaterThanOrEqual(box.top - 1e-9);
      expect(Math.max(y, y2)).toBeLessThanOrEqual(box.bottom + 1e-9);
    }
  });
});

describe("units of a drawing", () => {
  it("are the figure's own, or the US ones where the club puts those first", () => {
    expect(displayUnit("C").format(20)).toBe("20.0 °C");
    // 20 °C is 68 °F; a difference of 1 °C is 1.8 °F (definition of the scales).
    expect(displayUnit("C", "us").format(20)).toBe("68 °F");
    expect(displayUnit("C", "us").convertDifference(1)).toBeCloseTo(1.8, 12);
    // One US gallon is 3.785411784 L (231 cubic inches).
    expect(displayUnit("L", "us").convert(3.785411784)).toBeCloseTo(1, 12);
    expect(displayUnit("SG", "us").format(1.0505, 0.0012)).toBe("1.0505 ± 0.0012");
    expect(displayUnit("%").format(5.09, 0.21)).toBe("5.09 ± 0.21 %");
  });
});

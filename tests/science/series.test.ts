import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  hoursWithin, seriesExtremes, steepestFall, terminalRun, timeWeightedMean, total, valueAt, warmestHour, weightedMean,
  type TimedValue, type TimeWindow,
} from "../../src/science/index.js";

const noGap = 1e6;

/** A course of straight lines: steps of 0.2 to 6 hours, temperatures of 0 to 30. */
const course = fc
  .array(fc.tuple(fc.double({ min: 0.2, max: 6, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true })), { minLength: 3, maxLength: 12 })
  .map((steps) => {
    let hours = 0;
    return steps.map(([step, value]): TimedValue => ({ hours: (hours += step), value }));
  });

/** The same course read at more moments. */
const readMoreOften = fc.tuple(course, fc.array(fc.double({ min: 0.001, max: 0.999, noNaN: true }), { maxLength: 40 })).map(([series, shares]) => {
  const [first, last] = [series[0]?.hours ?? 0, series.at(-1)?.hours ?? 0];
  const moments = shares.map((share) => first + share * (last - first));
  const all = [...new Set([...series.map(({ hours }) => hours), ...moments])].toSorted((a, b) => a - b).filter((hours, index, list) => index === 0 || hours - (list[index - 1] ?? 0) > 1e-6);
  const often = all.map((hours) => ({ hours, value: valueAt(series, hours, noGap) }));
  // Every reading of the course must still be there, or it is another course.
  return { series, often: [...often.filter(({ hours }) => !series.some((own) => Math.abs(own.hours - hours) < 2e-6)), ...series].toSorted((a, b) => a.hours - b.hours) };
});

const windowIn = (series: readonly TimedValue[]): TimeWindow => {
  const [first, last] = [series[0]?.hours ?? 0, series.at(-1)?.hours ?? 0];
  return { fromHours: first + 0.13 * (last - first), toHours: first + 0.91 * (last - first) };
};

const hourly = (values: readonly number[]): TimedValue[] => values.map((value, hours) => ({ hours, value }));

describe("the same course gives the same answer, read by the minute, by the hour or at odd times", () => {
  it("mean, extremes, hours within a band and value at a moment", () => {
    fc.assert(fc.property(readMoreOften, ({ series, often }) => {
      const window = windowIn(series);
      const band = { low: 10, high: 18 };
      expect(timeWeightedMean(often, window, noGap).mean).toBeCloseTo(timeWeightedMean(series, window, noGap).mean, 7);
      const [few, many] = [seriesExtremes(series, window, noGap), seriesExtremes(often, window, noGap)];
      expect(many.highest).toBeCloseTo(few.highest, 9);
      expect(many.lowest).toBeCloseTo(few.lowest, 9);
      const [once, twice] = [hoursWithin(series, window, noGap, band), hoursWithin(often, window, noGap, band)];
      for (const part of ["withinHours", "belowHours", "aboveHours"] as const) expect(twice[part]).toBeCloseTo(once[part], 6);
      expect(valueAt(often, window.fromHours, noGap)).toBeCloseTo(valueAt(series, window.fromHours, noGap), 9);
    }));
  });

  it("steepest fall and warmest hour", () => {
    const longEnough = readMoreOften.filter(({ series }) => windowIn(series).toHours - windowIn(series).fromHours > 1.01);
    fc.assert(fc.property(longEnough, ({ series, often }) => {
      const window = windowIn(series);
      expect(steepestFall(often, window, noGap).fall).toBeCloseTo(steepestFall(series, window, noGap).fall, 6);
      expect(warmestHour(often, window, noGap).mean).toBeCloseTo(warmestHour(series, window, noGap).mean, 6);
    }));
  });
});

describe("steepest fall and warmest hour are the largest there are, and are really there", () => {
  const longCourse = course.filter((series) => windowIn(series).toHours - windowIn(series).fromHours > 1.01);

  it("against 500 hours tried one after the other", () => {
    fc.assert(fc.property(longCourse, (series) => {
      const window = windowIn(series);
      const fall = steepestFall(series, window, noGap);
      const warmest = warmestHour(series, window, noGap);
      const fallFrom = (hours: number) => valueAt(series, hours, noGap) - valueAt(series, hours + 1, noGap);
      const meanFrom = (fromHours: number) => timeWeightedMean(series, { fromHours, toHours: fromHours + 1 }, noGap).mean;
      for (let step = 0; step <= 500; step += 1) {
        const hours = window.fromHours + (step / 500) * (window.toHours - window.fromHours - 1);
        expect(fallFrom(hours)).toBeLessThanOrEqual(fall.fall + 1e-9);
        expect(meanFrom(hours)).toBeLessThanOrEqual(warmest.mean + 1e-9);
      }
      if (fall.fall > 0) expect(fallFrom(fall.fromHours)).toBeCloseTo(fall.fall, 7);
      expect(meanFrom(warmest.fromHours)).toBeCloseTo(warmest.mean, 7);
    }), { numRuns: 30 });
  });
});

describe("gaps are left out and counted, never joined by a line", () => {
  // Level at 10 for two hours, nothing for ten, level at 20 for two.
  const broken = [{ hours: 0, value: 10 }, { hours: 2, value: 10 }, { hours: 12, value: 20 }, { hours: 14, value: 20 }];
  const window = { fromHours: 0, toHours: 14 };

  it("the mean rests on the four hours that were read (by hand: 15)", () => {
    expect(timeWeightedMean(broken, window, 3)).toEqual({ mean: 15, coveredHours: 4, gapHours: 10 });
  });

  it("joined, the ten hours between would count (by hand: mean 15 over 14 h, half of the line within 10 to 15)", () => {
    expect(timeWeightedMean(broken, window, 10)).toEqual({ mean: 15, coveredHours: 14, gapHours: 0 });
    expect(hoursWithin(broken, window, 10, { low: 10, high: 15 }).withinHours).toBeCloseTo(7, 9);
  });

  it("hours in a gap are within nothing", () => {
    expect(hoursWithin(broken, window, 3, { low: 0, high: 30 })).toEqual({ withinHours: 4, belowHours: 0, aboveHours: 0, gapHours: 10 });
  });

  it("a fall across a gap isn't a rate", () => {
    const warmThenCold = [{ hours: 0, value: 20 }, { hours: 2, value: 20 }, { hours: 12, value: 4 }, { hours: 14, value: 4 }];
    expect(steepestFall(warmThenCold, window, 3).fall).toBe(0);
    expect(steepestFall(warmThenCold, window, 10).fall).toBeCloseTo(1.6, 9);
  });

  it("a reading alone between gaps still counts among the extremes", () => {
    const alone = [...broken.slice(0, 2), { hours: 7, value: 25 }, ...broken.slice(2)];
    expect(seriesExtremes(alone, window, 3)).toMatchObject({ highest: 25, highestAtHours: 7 });
    expect(timeWeightedMean(alone, window, 3).coveredHours).toBe(4);
  });

  it("a window that reaches beyond the log is covered only as far as the log goes", () => {
    expect(timeWeightedMean(broken, { fromHours: -5, toHours: 1 }, 3)).toEqual({ mean: 10, coveredHours: 1, gapHours: 5 });
  });

  it("parts of a window add up to it", () => {
    fc.assert(fc.property(course, fc.double({ min: 0.5, max: 8, noNaN: true }), (series, longestGap) => {
      const span = { fromHours: -3, toHours: (series.at(-1)?.hours ?? 0) + 2 };
      const { withinHours, belowHours, aboveHours, gapHours } = hoursWithin(series, span, longestGap, { low: 8, high: 16 });
      expect(withinHours + belowHours + aboveHours + gapHours).toBeCloseTo(span.toHours - span.fromHours, 7);
    }));
  });
});

describe("what can't be computed is refused in words", () => {
  const window = { fromHours: 0, toHours: 3 };
  const fine = hourly([20, 20, 19, 18]);

  it.each([
    ["no readings", []],
    ["a time twice", [{ hours: 1, value: 20 }, { hours: 1, value: 21 }]],
    ["times out of order", [{ hours: 2, value: 20 }, { hours: 1, value: 21 }]],
    ["a value that isn't a number", [{ hours: 0, value: 20 }, { hours: 1, value: NaN }]],
    ["a time that isn't a number", [{ hours: NaN, value: 20 }, { hours: 1, value: 20 }]],
  ])("%s", (_what, series) => {
    for (const relation of [timeWeightedMean, seriesExtremes, steepestFall, warmestHour]) {
      expect(relation.refuses(series, window, 2)).toEqual(expect.any(String));
      expect(() => relation(series, window, 2)).toThrow(RangeError);
    }
    expect(() => hoursWithin(series, window, 2, { low: 0, high: 1 })).toThrow(RangeError);
    expect(() => valueAt(series, 1, 2)).toThrow(RangeError);
    expect(() => terminalRun(series, 0.001)).toThrow(RangeError);
  });

  it("a window that ends before it begins, a gap of no length, a band upside down", () => {
    expect(timeWeightedMean.refuses(fine, { fromHours: 3, toHours: 0 }, 2)).toBe("the window must begin before it ends");
    expect(timeWeightedMean.refuses(fine, window, 0)).toBe("the longest gap must be above 0 h");
    expect(hoursWithin.refuses(fine, window, 2, { low: 5, high: 4 })).toBe("the band's lower end must not be above its upper end");
  });

  it("a window without readings, an hour that was never whole", () => {
    expect(timeWeightedMean.refuses(fine, { fromHours: 10, toHours: 12 }, 2)).toBe("the log has no unbroken readings in this window");
    expect(seriesExtremes.refuses(fine, { fromHours: 10, toHours: 12 }, 2)).toBe("the log has no readings in this window");
    expect(steepestFall.refuses(fine, { fromHours: 0, toHours: 0.5 }, 2)).toBe("the log has no unbroken readings in this window");
  });

  it("a moment outside the log or in a gap of it; a reading on the moment is always good", () => {
    expect(valueAt.refuses(fine, 4, 2)).toBe("the moment lies outside the log");
    expect(valueAt.refuses(fine, 0.5, 0.5)).toBe("the moment lies in a gap of the log");
    expect(valueAt(fine, 2, 0.5)).toBe(19);
  });
});

describe("unchanged gravity", () => {
  const readings = [1.02, 1.011, 1.01, 1.009, 1.01].map((value, index) => ({ hours: 24 * index, value }));

  it("reaches back over readings within 0.001 of the latest, decimals notwithstanding", () => {
    expect(terminalRun(readings, 0.001)).toEqual({ fromHours: 24, toHours: 96, count: 4 });
  });

  it("is held to the latest reading, not to the one before", () => {
    const creeping = [1.013, 1.0125, 1.012, 1.0115, 1.011].map((value, index) => ({ hours: 24 * index, value }));
    expect(terminalRun(creeping, 0.001)).toEqual({ fromHours: 48, toHours: 96, count: 3 });
  });

  it("of one reading is one reading", () => {
    expect(terminalRun(readings.slice(0, 1), 0.001)).toEqual({ fromHours: 0, toHours: 0, count: 1 });
  });
});

describe("totals and weighted means", () => {
  it("a total of nothing is 0: none was added", () => {
    expect(total([])).toBe(0);
  });

  it("equal weights give the plain mean, a weight of 0 leaves a value out", () => {
    expect(weightedMean([2, 4, 9], [1, 1, 1])).toBe(5);
    expect(weightedMean([2, 4, 9], [1, 1, 0])).toBe(3);
  });

  it("weights that are missing, negative or all zero are refused", () => {
    for (const weights of [[1], [1, -1], [0, 0], [1, NaN]]) expect(() => weightedMean([1, 2], weights)).toThrow(RangeError);
    expect(() => total([1, NaN])).toThrow(RangeError);
  });
});

describe("a log of 40,000 rows", () => {
  it("is taken by each relation", () => {
    const log = Array.from({ length: 40_000 }, (_, minute) => ({ hours: minute / 60, value: 18 + 2 * Math.sin(minute / 200) + ((minute * 7919) % 13) / 40 }));
    const window = { fromHours: 1.5, toHours: 660 };
    const runs = [
      () => timeWeightedMean(log, window, 0.1),
      () => seriesExtremes(log, window, 0.1),
      () => hoursWithin(log, window, 0.1, { low: 17, high: 19 }),
      () => steepestFall(log, window, 0.1),
      () => warmestHour(log, window, 0.1),
      () => valueAt(log, 300.01, 0.1),
      () => terminalRun(log, 0.001),
    ];
    for (const run of runs) expect(run).not.toThrow();
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { meanDifference, poolRandomEffects } from "../../../src/statistics/index.js";

/** Log odds ratios with their standard errors from two-by-two counts: events and size in each group. */
const logOddsRatios = (table: readonly (readonly [number, number, number, number])[]) => ({
  estimates: table.map(([a, n, c, m]) => Math.log((a * (m - c)) / ((n - a) * c))),
  errors: table.map(([a, n, c, m]) => Math.sqrt(1 / a + 1 / (n - a) + 1 / c + 1 / (m - c))),
});

describe("CLASP trials, DerSimonian & Kacker, Contemporary Clinical Trials 28 (2007), tables 3 and 4", () => {
  const { estimates, errors } = logOddsRatios([
    [5, 156, 8, 74], [5, 303, 17, 303], [12, 565, 9, 477], [69, 1570, 94, 1565], [9, 103, 11, 105], [313, 4659, 352, 4650],
  ]);
  const pooled = poolRandomEffects(estimates, errors);

  it("Paule–Mandel: τ .3681, mean -.3811, standard error .2060 (published)", () => {
    expect(Math.sqrt(pooled.betweenVariance)).toBeCloseTo(0.3681, 4);
    expect(pooled.estimate).toBeCloseTo(-0.3811, 4);
    expect(pooled.standardError).toBeCloseTo(0.206, 4);
  });

  it("Knapp–Hartung interval: Student's t with 5 degrees of freedom (2.570582) times that error", () => {
    // With τ² from Paule–Mandel the Knapp–Hartung factor is 1 by construction; numpy and scipy give [-.9105760, .1484514].
    expect(pooled.interval.low).toBeCloseTo(-0.910576, 6);
    expect(pooled.interval.high).toBeCloseTo(0.1484514, 6);
  });
});

describe("BCG vaccine trials (Colditz et al. 1994, counts as in R metafor's dat.bcg), log relative risks", () => {
  const table = [
    [4, 119, 11, 128], [6, 300, 29, 274], [3, 228, 11, 209], [62, 13536, 248, 12619], [33, 5036, 47, 5761], [180, 1361, 372, 1079],
    [8, 2537, 10, 619], [505, 87886, 499, 87892], [29, 7470, 45, 7232], [17, 1699, 65, 1600], [186, 50448, 141, 27197],
    [5, 2493, 3, 2338], [27, 16886, 29, 17825],
  ] as const;
  const estimates = table.map(([a, b, c, d]) => Math.log((a / (a + b)) / (c / (c + d))));
  const errors = table.map(([a, b, c, d]) => Math.sqrt(1 / a - 1 / (a + b) + 1 / c - 1 / (c + d)));
  const pooled = poolRandomEffects(estimates, errors);

  it("Q 152.2330 (metafor's own tests, compared with Stata) and I² = (Q − 12)/Q", () => {
    expect(pooled.q).toBeCloseTo(152.233, 4);
    expect(pooled.heterogeneityShare).toBeCloseTo(140.233 / 152.233, 5);
    expect(pooled.qP).toBeLessThan(1e-10);
  });

  it("Paule–Mandel: τ² .3181, mean -.7150, interval [-1.1091, -.3208] (numpy and scipy; τ² also metafor, from memory)", () => {
    expect(pooled.betweenVariance).toBeCloseTo(0.3180684522, 8);
    expect(pooled.estimate).toBeCloseTo(-0.7149681535, 8);
    expect(pooled.interval.low).toBeCloseTo(-1.1090983812, 7);
    expect(pooled.interval.high).toBeCloseTo(-0.3208379258, 7);
  });
});

describe("pooling, by what must hold", () => {
  const effects = fc.array(fc.tuple(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: 0.05, max: 2, noNaN: true })), { minLength: 2, maxLength: 12 });

  it("lies among the effects; its intervals contain it; the order doesn't matter; shifting all shifts it", () => {
    fc.assert(
      fc.property(effects, (list) => {
        const [y, u] = [list.map(([a]) => a), list.map(([, b]) => b)];
        const pooled = poolRandomEffects(y, u);
        expect(pooled.estimate).toBeGreaterThanOrEqual(Math.min(...y) - 1e-9);
        expect(pooled.estimate).toBeLessThanOrEqual(Math.max(...y) + 1e-9);
        expect(pooled.interval.low).toBeLessThanOrEqual(pooled.estimate);
        expect(pooled.betweenVariance).toBeGreaterThanOrEqual(0);
        if (pooled.predictionInterval) expect(pooled.predictionInterval.low).toBeLessThanOrEqual(pooled.interval.low);
        expect(poolRandomEffects(y.toReversed(), u.toReversed()).estimate).toBeCloseTo(pooled.estimate, 7);
        expect(poolRandomEffects(y.map((x) => x + 3), u).estimate).toBeCloseTo(pooled.estimate + 3, 7);
      }),
    );
  });

  it("τ² solves Paule and Mandel's equation: the weighted squares equal the degrees of freedom", () => {
    fc.assert(
      fc.property(effects, (list) => {
        const [y, u] = [list.map(([a]) => a), list.map(([, b]) => b)];
        const { betweenVariance, estimate } = poolRandomEffects(y, u);
        const q = y.reduce((sum, x, i) => sum + (x - estimate) ** 2 / ((u[i] ?? 1) ** 2 + betweenVariance), 0);
        if (betweenVariance > 0) expect(q).toBeCloseTo(y.length - 1, 6);
        else expect(q).toBeLessThanOrEqual(y.length - 1 + 1e-9);
      }),
    );
  });

  it("equal errors far below the scatter: the plain mean with Student's interval", () => {
    const y = [1, 3, 2, 5, 4];
    const pooled = poolRandomEffects(y, y.map(() => 1e-6));
    const plain = meanDifference(y);
    expect(pooled.estimate).toBeCloseTo(3, 9);
    expect(pooled.interval.low).toBeCloseTo(plain.interval?.low ?? 0, 6);
  });

  it("effects that agree by luck are no surer than their errors allow", () => {
    const pooled = poolRandomEffects([2, 2, 2, 2], [1, 1, 1, 1]);
    expect(pooled).toMatchObject({ betweenVariance: 0, heterogeneityShare: 0 });
    expect(pooled.standardError).toBeCloseTo(0.5, 12); // 1/√4, where Knapp and Hartung alone would give 0
  });

  it.each([
    ["one effect", () => poolRandomEffects([1], [1])],
    ["an error of zero", () => poolRandomEffects([1, 2], [1, 0])],
    ["lists that don't match", () => poolRandomEffects([1, 2, 3], [1, 1])],
    ["no number", () => poolRandomEffects([1, Number.NaN], [1, 1])],
    ["a level of 1", () => poolRandomEffects([1, 2], [1, 1], 1)],
  ])("%s throws RangeError", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

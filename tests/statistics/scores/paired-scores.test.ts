import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  hodgesLehmann,
  meanDifference,
  preferenceTest,
  signedRankTest,
  signFlipTest,
  smallestStandardisedDifference,
  standardisedDifference,
} from "../../../src/statistics/index.js";
import { fixture, groupedBy } from "../fixture.js";

const data = groupedBy(fixture("paired_examples"), (row) => row.text("example"));
const differencesOf = (example: string): number[] => (data.get(example) ?? []).map((row) => row.number("d"));

describe("published and invented paired data (paired_examples_expected.csv: R, coin, exactRankTests, scipy)", () => {
  // darwin: Fisher 1935 sec. 21; sleep: Student 1908; the third is invented, with ties and a zero.
  it.each(fixture("paired_examples_expected").map((row) => [row.text("example"), row] as const))("%s", (example, row) => {
    const d = differencesOf(example);
    const t = meanDifference(d);
    expect(t.count).toBe(row.number("n"));
    expect(t.mean).toBeCloseTo(row.number("mean"), 8);
    expect(t.standardDeviation).toBeCloseTo(row.number("sd"), 7);
    expect(t.t).toBeCloseTo(row.number("t"), 8);
    expect(t.p).toBeCloseTo(row.number("p_t"), 9);
    expect(t.interval?.low).toBeCloseTo(row.number("ci_lo"), 7);
    expect(t.interval?.high).toBeCloseTo(row.number("ci_hi"), 7);

    const ranks = signedRankTest(d);
    expect(ranks.used).toBe(row.number("n_nonzero"));
    expect(ranks.positiveRankSum).toBe(row.number("V"));
    expect(ranks.p).toBeCloseTo(row.number("p_wilcoxon_exact"), 10);

    const typical = hodgesLehmann(d);
    expect(typical.estimate).toBeCloseTo(row.number("HL"), 10);
    expect(typical.exact).toBe(row.has("HL_lo"));

    const flips = signFlipTest(d);
    expect(flips.patterns).toBe(row.number("flip_N"));
    expect(flips.asExtreme).toBe(row.number("flip_two"));
    expect(flips.p).toBeCloseTo(row.number("p_flip"), 10);

    const [up, down] = [d.filter((x) => x > 0).length, d.filter((x) => x < 0).length];
    expect(preferenceTest({ first: up, second: down }).p).toBeCloseTo(row.number("p_sign"), 10);

    const effect = standardisedDifference(d);
    expect(effect?.dz).toBeCloseTo(row.number("dz"), 9);
    expect(effect?.interval.low).toBeCloseTo(row.number("dz_lo"), 6);
    expect(effect?.interval.high).toBeCloseTo(row.number("dz_hi"), 6);
    expect(effect?.hedgesFactor).toBeCloseTo(row.number("hedges_J"), 9);
    expect(effect?.corrected).toBeCloseTo(row.number("gz"), 8);
  });

  it("Darwin's maize: 863 of 32 768 one-sided, Hodges–Lehmann 25 [4, 41.5]", () => {
    const d = differencesOf("darwin_maize_eighth_inch");
    expect(signFlipTest(d).asExtreme / 2).toBe(863);
    expect(hodgesLehmann(d).interval).toEqual({ low: 4, high: 41.5 });
  });

  it("with a zero and ties both ways of handling zeros agree on .078125 here (coin, exactRankTests)", () => {
    const d = differencesOf("invented_ties_zero");
    expect(signedRankTest(d, { zeros: "pratt" }).p).toBeCloseTo(0.078125, 12);
    expect(signedRankTest(d, { zeros: "drop" }).p).toBeCloseTo(0.078125, 12);
  });
});

/** Differences ±1 … ±n of which the negative ones have the rank sum T. */
function withRankSum(n: number, T: number): number[] {
  let rest = T;
  const down = new Set<number>();
  for (let rank = n; rank >= 1; rank -= 1) {
    if (rank > rest) continue;
    down.add(rank);
    rest -= rank;
  }
  return Array.from({ length: n }, (_, i) => (down.has(i + 1) ? -(i + 1) : i + 1));
}

describe("Wilcoxon's tables", () => {
  it("every cell of the null distribution, n 4 to 12 (wilcoxon_distribution.csv)", () => {
    for (const row of fixture("wilcoxon_distribution")) {
      const [n, T] = [row.number("n"), row.number("T")];
      const full = (n * (n + 1)) / 2;
      if (T > full / 2) continue; // the other half is its mirror
      expect(signedRankTest(withRankSum(n, T)).p).toBeCloseTo(Math.min(1, 2 * row.number("cdf")), 10);
    }
  });

  it("critical values, n 4 to 30 (wilcoxon_exact.csv; the .05 column equals York University's table)", () => {
    // Two web tables print 4 at n = 8, 6 at 9, 11 at 11, 30 at 16, 35 at 17 for 5 %: all above .05.
    for (const row of fixture("wilcoxon_exact")) {
      const n = row.number("n");
      expect(signedRankTest(withRankSum(n, 0)).p / row.number("min_two_sided_p")).toBeCloseTo(1, 8);
      for (const alpha of [0.2, 0.1, 0.05, 0.02, 0.01, 0.001]) {
        if (!row.has(`T_${alpha}`)) continue;
        const T = row.number(`T_${alpha}`);
        expect(signedRankTest(withRankSum(n, T)).p / row.number(`p_${alpha}`)).toBeCloseTo(1, 8);
        expect(signedRankTest(withRankSum(n, T + 1)).p).toBeGreaterThan(alpha);
      }
    }
  });

  it.each([[8, 4, 0.0547], [9, 6, undefined], [11, 11, undefined], [16, 30, 0.0507], [17, 35, 0.0505]] as const)(
    "n = %i: the wrongly printed %i has p above .05",
    (n, T, p) => {
      const ours = signedRankTest(withRankSum(n, T)).p;
      expect(ours).toBeGreaterThan(0.05);
      if (p !== undefined) expect(ours).toBeCloseTo(p, 4);
    },
  );
});

describe("what small panels can find (small_n_paired.csv, computed in R)", () => {
  it.each(fixture("small_n_paired").map((row) => [row.number("n"), row] as const))("n = %i", (n, row) => {
    const rising = Array.from({ length: n }, (_, i) => i + 1);
    expect(signFlipTest(rising).p / row.number("min_p_two_sided_signflip")).toBeCloseTo(1, 6);
    const t = meanDifference(rising);
    const halfWidth = ((t.interval?.high ?? 0) - t.mean) / t.standardDeviation;
    expect(halfWidth).toBeCloseTo(row.number("mean_ci_halfwidth_in_sd"), 7);
    // R's power.t.test stops its search at about 1e-4.
    expect(smallestStandardisedDifference(n)).toBeCloseTo(row.number("dz_power80"), 3.9);
    expect(smallestStandardisedDifference(n, { power: 0.5 })).toBeCloseTo(row.number("dz_power50"), 3.9);
  });

  it.each([
    [3, 3.2640435496995712, 2.094933058796124],
    [4, 2.127949343257799, 1.4341349740831038],
    [8, 1.1560346779947253, 0.8037739396342682],
    [12, 0.8886542652934867, 0.6201869527026654],
    [20, 0.66044165462303, 0.46165871429052124],
  ])("n = %i to ten digits (scipy 1.17 nct, solved by brentq)", (n, at80, at50) => {
    expect(smallestStandardisedDifference(n)).toBeCloseTo(at80, 9);
    expect(smallestStandardisedDifference(n, { power: 0.5 })).toBeCloseTo(at50, 9);
  });
});

describe("paired scores, by what must hold", () => {
  const halves = fc.array(fc.integer({ min: -12, max: 12 }).map((k) => k / 2), { minLength: 3, maxLength: 12 });

  it("the order of tasters does not matter, and swapping the samples turns signs over", () => {
    fc.assert(
      fc.property(halves, (d) => {
        const [back, over] = [d.toReversed(), d.map((x) => -x)];
        expect(signedRankTest(back).p).toBeCloseTo(signedRankTest(d).p, 12);
        expect(signedRankTest(over).p).toBeCloseTo(signedRankTest(d).p, 12);
        expect(signFlipTest(back).asExtreme).toBe(signFlipTest(d).asExtreme);
        expect(signFlipTest(over).asExtreme).toBe(signFlipTest(d).asExtreme);
        expect(hodgesLehmann(over).estimate).toBeCloseTo(-hodgesLehmann(d).estimate, 12);
        expect(meanDifference(over).mean).toBeCloseTo(-meanDifference(d).mean, 12);
      }),
    );
  });

  it("the counted sign patterns are those that listing all of them gives", () => {
    fc.assert(
      fc.property(halves, (d) => {
        const target = Math.abs(d.reduce((sum, x) => sum + x, 0));
        let count = 0;
        for (let pattern = 0; pattern < 2 ** d.length; pattern += 1) {
          const sum = d.reduce((total, x, i) => total + (pattern & (1 << i) ? x : -x), 0);
          if (Math.abs(sum) >= target) count += 1;
        }
        expect(signFlipTest(d).asExtreme).toBe(count);
      }),
    );
  });

  it("the signed-rank p is that of listing all sign patterns over mid-ranks", () => {
    fc.assert(
      fc.property(halves, (d) => {
        const kept = d.filter((x) => x !== 0);
        const rank = (x: number): number => kept.filter((y) => Math.abs(y) < Math.abs(x)).length + (kept.filter((y) => Math.abs(y) === Math.abs(x)).length + 1) / 2;
        const ranks = kept.map(rank);
        const target = Math.abs(kept.reduce((sum, x, i) => sum + Math.sign(x) * (ranks[i] ?? 0), 0));
        let count = 0;
        for (let pattern = 0; pattern < 2 ** kept.length; pattern += 1) {
          const sum = ranks.reduce((total, r, i) => total + (pattern & (1 << i) ? r : -r), 0);
          if (Math.abs(sum) >= target) count += 1;
        }
        expect(signedRankTest(d).p).toBeCloseTo(count / 2 ** kept.length, 12);
      }),
    );
  });

  it("intervals contain their estimates", () => {
    fc.assert(
      fc.property(halves, (d) => {
        const typical = hodgesLehmann(d);
        if (typical.interval) {
          expect(typical.interval.low).toBeLessThanOrEqual(typical.estimate);
          expect(typical.interval.high).toBeGreaterThanOrEqual(typical.estimate);
        }
        const effect = standardisedDifference(d);
        if (effect) {
          expect(effect.interval.low).toBeLessThanOrEqual(effect.dz);
          expect(effect.interval.high).toBeGreaterThanOrEqual(effect.dz);
          expect(Math.abs(effect.corrected)).toBeLessThanOrEqual(Math.abs(effect.dz));
        }
      }),
      { numRuns: 60 },
    );
  });

  it("a further taster who agrees with a unanimous panel never raises p", () => {
    for (let n = 3; n < 15; n += 1) {
      const all = (count: number): number[] => Array.from({ length: count }, () => 1);
      expect(signedRankTest(all(n + 1)).p).toBeLessThan(signedRankTest(all(n)).p);
      expect(signFlipTest(all(n + 1)).p).toBeLessThan(signFlipTest(all(n)).p);
    }
  });

  it("differences that are equal but for rounding count as ties and zeros as zeros", () => {
    const noisy = [0.1 + 0.2, 0.3, -(0.4 - 0.1), 1.2 - 0.9];
    expect(signedRankTest(noisy)).toEqual(signedRankTest([0.3, 0.3, -0.3, 0.3]));
    expect(signFlipTest(noisy).asExtreme).toBe(signFlipTest([0.3, 0.3, -0.3, 0.3]).asExtreme);
    expect(meanDifference([0.1 + 0.2, 0.3, 1.2 - 0.9]).interval).toBeUndefined();
  });

  it("no spread: no t interval and no dz, instead of an interval of no width", () => {
    expect(meanDifference([1, 1, 1, 1])).toMatchObject({ mean: 1, interval: undefined, t: undefined, p: undefined });
    expect(standardisedDifference([1, 1, 1, 1])).toBeUndefined();
  });

  it("nothing but zeros: p is 1", () => {
    expect(signedRankTest([0, 0, 0])).toMatchObject({ used: 0, p: 1 });
    expect(signFlipTest([0, 0, 0]).p).toBe(1);
  });

  it("five differences can't give a 95 % Hodges–Lehmann interval, six can", () => {
    expect(hodgesLehmann([1, 2, 3, 4, 5]).interval).toBeUndefined();
    expect(hodgesLehmann([1, 2, 3, 4, 5, 6]).interval).toEqual({ low: 1, high: 6 });
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["one difference for a mean", () => meanDifference([1])],
    ["two differences for dz", () => standardisedDifference([1, 2])],
    ["no differences", () => signedRankTest([])],
    ["no differences to flip", () => signFlipTest([])],
    ["no differences to average", () => hodgesLehmann([])],
    ["more than 34 to flip", () => signFlipTest(Array.from({ length: 35 }, () => 1))],
    ["a difference that is no number", () => signedRankTest([1, Number.NaN])],
    ["a level of 1", () => hodgesLehmann([1, 2, 3], 1)],
    ["a power of 1", () => smallestStandardisedDifference(8, { power: 1 })],
    ["two tasters", () => smallestStandardisedDifference(2)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

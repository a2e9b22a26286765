import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kendall, theilSen } from "../../../src/statistics/index.js";
import { expected, fixture, groupedBy } from "../fixture.js";

const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1);

/** A permutation of 1..n with that many pairs out of order, built from its inversion table. */
function withInversions(n: number, inversions: number): number[] {
  const left = upTo(n);
  let rest = inversions;
  return upTo(n).map((_, i) => {
    const skip = Math.min(rest, n - 1 - i);
    rest -= skip;
    return left.splice(skip, 1)[0] ?? 0;
  });
}

describe("Kendall's exact test against R's counts (kendall_exact.csv, every S for n 3 to 12)", () => {
  const byCount = groupedBy(fixture("kendall_exact"), (row) => row.number("n"));
  it.each([...byCount.keys()])("n = %i", (n) => {
    for (const row of byCount.get(n) ?? []) {
      const S = row.number("S");
      const result = kendall(upTo(n), withInversions(n, ((n * (n - 1)) / 2 - S) / 2));
      expect(result.statistic).toBe(S);
      expect(result.exact).toBe(true);
      expect(result.p / row.number("p_two_sided")).toBeCloseTo(1, 8);
    }
  });

  it("needs n ≥ 5 and then a perfect order for .05 (trend_min_n.csv)", () => {
    for (const row of fixture("trend_min_n")) {
      const n = row.number("n");
      const p = (S: number): number => kendall(upTo(n), withInversions(n, ((n * (n - 1)) / 2 - S) / 2)).p;
      const most = (n * (n - 1)) / 2;
      expect(p(most) / row.number("min_two_sided_p")).toBeCloseTo(1, 7);
      if (row.has("S_crit_05")) {
        const critical = row.number("S_crit_05");
        expect(p(critical)).toBeLessThanOrEqual(0.05);
        expect(p(critical - 2)).toBeGreaterThan(0.05);
        expect(critical / most).toBeCloseTo(row.number("tau_crit_05"), 7);
      } else {
        expect(p(most)).toBeGreaterThan(0.05);
      }
    }
  });
});

describe("Kendall and Theil–Sen against R and scipy (trend_expected.csv)", () => {
  const data = groupedBy(fixture("trend_example"), (row) => row.text("example"));
  const results = groupedBy(fixture("trend_expected"), (row) => row.text("example"));
  const read = (name: string) => {
    const rows = data.get(name) ?? [];
    const at = (stat: string) => expected(results.get(name) ?? [], "stat", stat);
    return { x: rows.map((row) => row.number("x")), y: rows.map((row) => row.number("y")), at };
  };

  it.each([...data.keys()])("%s", (name) => {
    const { x, y, at } = read(name);
    const line = theilSen(x, y);
    expect(line.slope).toBeCloseTo(at("theil_sen_slope").number("value"), 9);
    expect(line.intercept).toBeCloseTo(at("theil_sen_intercept_median(y)-b*median(x)").number("value"), 8);
    const rank = kendall(x, y);
    expect(rank.statistic).toBe(at("kendall_S").number("value"));
    expect(rank.tau).toBeCloseTo(at("kendall_tau").number("value"), 9);
    if (at("theil_lo95_exact").has("value")) {
      expect(line.exact).toBe(true);
      expect(line.interval?.low).toBeCloseTo(at("theil_lo95_exact").number("value"), 9);
      expect(line.interval?.high).toBeCloseTo(at("theil_hi95_exact").number("value"), 9);
      expect(rank.p / at("kendall_p").number("value")).toBeCloseTo(1, 8);
    }
  });

  it("Anscombe's fourth set (ten equal x, one apart): no 95 % interval exists and the exact p is 2/11", () => {
    // R prints p .1138 by the normal curve with ties. Exactly: the y beside the lone x is equally
    // likely to rank anywhere in 11, and only first or last gives |S| = 10.
    const { x, y } = read("anscombe_4");
    expect(kendall(x, y).p).toBeCloseTo(2 / 11, 12);
    expect(theilSen(x, y).interval).toBeUndefined();
  });
});

describe("Kendall with ties, against full enumeration of the arrangements", () => {
  const permutations = (values: readonly number[]): number[][] =>
    values.length === 0
      ? [[]]
      : values.flatMap((value, i) => permutations(values.toSpliced(i, 1)).map((rest) => [value, ...rest]));

  const byEnumeration = (x: readonly number[], y: readonly number[]): number => {
    const observed = Math.abs(kendall(x, y).statistic);
    const all = permutations(y).map((order) => Math.abs(kendall(x, order).statistic));
    return all.filter((s) => s >= observed).length / all.length;
  };

  it.each([
    ["ties in x", [1, 1, 2, 2, 3], [1, 2, 3, 5, 4]],
    ["ties in y", [1, 2, 3, 4, 5], [1, 1, 2, 1, 3]],
    ["ties in both", [1, 1, 2, 2, 3], [1, 1, 2, 3, 3]],
    ["many ties in both", [0, 0, 0, 1, 1, 1], [1, 1, 2, 2, 2, 3]],
    ["one odd point out", [0, 0, 0, 0, 0, 1], [1, 1, 2, 2, 3, 3]],
  ])("%s", (_, x, y) => {
    const result = kendall(x, y);
    expect(result.exact).toBe(true);
    expect(result.p).toBeCloseTo(byEnumeration(x, y), 12);
  });

  it("many points tied on both sides fall back on the normal curve and say so", () => {
    // Two halves of 7 that agree: S = 49. By hand (Kendall, Rank Correlation Methods, 4.9):
    // (14·13·33 − 4·7·6·19)/18 + (2·7·6)²/(2·14·13) + (2·7·6·5)²/(9·14·13·12) = 156.3333 + 19.3846 + 8.9744 = 184.6923
    // z = 49/√184.6923 = 3.60555 (= √13), two-sided p = .00031149
    const x = [...Array.from({ length: 7 }, () => 0), ...Array.from({ length: 7 }, () => 1)];
    const result = kendall(x, x);
    expect(result.exact).toBe(false);
    expect(result.tau).toBeCloseTo(1, 12);
    expect(result.statistic).toBe(49);
    expect(result.p).toBeCloseTo(0.00031149, 7);
  });
});

describe("rank trends, by what must hold", () => {
  const points = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })), { minLength: 3, maxLength: 8 })
    .filter((list) => new Set(list.map(([x]) => x)).size > 1 && new Set(list.map(([, y]) => y)).size > 1);

  it("turning y over turns S and the slope over and leaves p; order of points does not matter", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y] = [list.map(([a]) => a), list.map(([, b]) => b)];
        const [here, over] = [kendall(x, y), kendall(x, y.map((value) => -value))];
        expect(here.statistic + over.statistic).toBe(0);
        expect(here.p).toBeCloseTo(over.p, 12);
        expect(kendall(x.toReversed(), y.toReversed()).p).toBeCloseTo(here.p, 12);
        expect(theilSen(x, y).slope + theilSen(x, y.map((value) => -value)).slope).toBeCloseTo(0, 12);
        expect(here.p).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("swapping x and y leaves S, tau and p", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y] = [list.map(([a]) => a), list.map(([, b]) => b)];
        expect(kendall(y, x).p).toBeCloseTo(kendall(x, y).p, 12);
        expect(kendall(y, x).tau).toBeCloseTo(kendall(x, y).tau, 12);
      }),
    );
  });

  it("Theil–Sen's interval contains its slope", () => {
    fc.assert(
      fc.property(points, (list) => {
        const line = theilSen(list.map(([x]) => x), list.map(([, y]) => y), 0.8);
        if (line.interval === undefined) return;
        expect(line.interval.low).toBeLessThanOrEqual(line.slope);
        expect(line.interval.high).toBeGreaterThanOrEqual(line.slope);
      }),
    );
  });

  it("ties in y take the exact claim away; ties in x do not", () => {
    expect(theilSen([1, 2, 3, 4, 5, 6], [1, 2, 2, 4, 5, 6]).exact).toBe(false);
    expect(theilSen([1, 2, 2, 4, 5, 6], [1, 2, 3, 4, 5, 6]).exact).toBe(true);
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["one point", () => kendall([1], [1])],
    ["all x equal", () => kendall([1, 1, 1], [1, 2, 3])],
    ["all y equal", () => kendall([1, 2, 3], [1, 1, 1])],
    ["all x equal, for the slope", () => theilSen([1, 1, 1], [1, 2, 3])],
    ["unequal lengths", () => theilSen([1, 2], [1, 2, 3])],
    ["a level of 1", () => theilSen([1, 2, 3], [1, 2, 3], 1)],
    ["no number", () => kendall([1, 2, Number.NaN], [1, 2, 3])],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { concordance, friedmanTest, pageTest, rankSumDifference } from "../../../src/statistics/index.js";
import { fixture, groupedBy, type Row } from "../fixture.js";

const tableOf = (rows: readonly Row[]): number[][] =>
  [...groupedBy(rows, (row) => row.text("judge")).values()].map((own) =>
    own.toSorted((a, b) => a.number("item") - b.number("item")).map((row) => row.number("value")),
  );
const examples = new Map(
  [...groupedBy([...fixture("friedman_example"), ...fixture("kendall_w")], (row) => row.text("example"))].map(([name, rows]) => [name, tableOf(rows)]),
);

describe("Friedman, Kendall's W and the rank-sum difference (friedman_expected.csv, R friedman.test)", () => {
  it.each(fixture("friedman_expected").map((row) => [row.text("example"), row] as const))("%s", (name, row) => {
    const table = examples.get(name) ?? [];
    const result = friedmanTest(table);
    expect(table).toHaveLength(row.number("judges"));
    expect(result.rankSums.join(" ")).toBe(row.text("rank_sums"));
    expect(result.statistic).toBeCloseTo(row.number("chi2"), 7);
    expect(result.degreesOfFreedom).toBe(row.number("df"));
    expect(result.chiSquareP).toBeCloseTo(row.number("p_chi2"), 10);
    const agreement = concordance(table);
    expect(agreement.w).toBeCloseTo(row.number("W"), 9);
    expect(agreement.meanSpearman).toBeCloseTo(row.number("mean_spearman"), 9);
    expect(agreement.chanceFloor).toBe(1 / row.number("judges"));
    expect(rankSumDifference(row.number("judges"), row.number("items"))).toBeCloseTo(row.number("lsd_normal_05"), 7);
  });

  it("ISO 8587:1988 Annex A: F 10.60, exact p .0246; A and E differ from B and C, D from nobody (rank sums published, ranks invented)", () => {
    const result = friedmanTest(examples.get("invented_panel_8x5") ?? []);
    expect(result).toMatchObject({ exact: true, rankSums: [17, 31, 32, 23, 17] });
    expect(result.p).toBeCloseTo(0.0246, 4);
    const least = rankSumDifference(8, 5);
    const [a = 0, b = 0, c = 0, d = 0, e = 0] = result.rankSums;
    for (const low of [a, e]) for (const high of [b, c]) expect(high - low).toBeGreaterThan(least);
    for (const other of [a, b, c, e]) expect(Math.abs(d - other)).toBeLessThan(least);
  });

  it("p is exact for small panels and says when it isn't", () => {
    const cotton = friedmanTest(examples.get("hollander_wolfe_cotton") ?? []);
    expect(cotton.exact).toBe(true);
    expect(friedmanTest(examples.get("kendall_w_10_projects_4_judges") ?? [])).toMatchObject({ exact: false });
    const wide = friedmanTest(examples.get("kendall_w_10_projects_4_judges") ?? []);
    expect(wide.p).toBe(wide.chiSquareP);
  });
});

/** A complete set of ranks with the wanted Friedman statistic, found by trying panels in a fixed order. */
function panelWith(k: number, n: number, chi2: number): number[][] {
  const ranks = Array.from({ length: k }, (_, i) => i + 1);
  let state = 1;
  const draw = (below: number): number => (state = (state * 48271) % 2147483647) % below;
  for (let attempt = 0; attempt < 200_000; attempt += 1) {
    const rows = Array.from({ length: n }, () => {
      const left = [...ranks];
      // Mostly the same order, so that extreme statistics turn up too.
      return draw(3) > 0 ? left : ranks.map(() => left.splice(draw(left.length), 1)[0] ?? 0);
    });
    const sums = ranks.map((_, j) => rows.reduce((total, row) => total + (row[j] ?? 0), 0));
    const statistic = (12 * sums.reduce((total, sum) => total + sum * sum, 0)) / (n * k * (k + 1)) - 3 * n * (k + 1);
    if (Math.abs(statistic - chi2) < 1e-5) return rows;
  }
  throw new Error(`no panel with ${chi2} for ${k} samples and ${n} judges`);
}

describe("Friedman's exact points (friedman_exact_critical.csv; k 3, n 8: 6.25 and k 4, n 4: 7.8 as in Siegel, from memory)", () => {
  const points = fixture("friedman_exact_critical").filter((row) => row.has("chi2_critical"));
  const chosen = points.filter((row) => row.number("k") === 3 || row.number("n") <= (row.number("k") === 6 ? 3 : 5));
  it.each(chosen.map((row) => [row.number("k"), row.number("n"), row.number("chi2_critical"), row.number("p_exact")] as const))(
    "k = %i, n = %i: χ² %d",
    (k, n, chi2, p) => {
      const result = friedmanTest(panelWith(k, n, chi2));
      expect(result.exact).toBe(true);
      expect(result.p).toBeCloseTo(p, 7);
    },
  );

  it("with ties, equals listing every order of every judge's ranks", () => {
    const rows = [[1, 1, 2], [3, 1, 1], [1, 2, 3], [2, 2, 1]];
    const orders = (row: readonly number[]): number[][] =>
      row.length === 0 ? [[]] : row.flatMap((x, i) => orders(row.toSpliced(i, 1)).map((rest) => [x, ...rest]));
    const observed = friedmanTest(rows).statistic;
    const tables = rows.reduce<number[][][]>((some, row) => some.flatMap((table) => orders(row).map((order) => [...table, order])), [[]]);
    const reaching = tables.filter((table) => friedmanTest(table).statistic >= observed - 1e-9);
    expect(friedmanTest(rows).p).toBeCloseTo(reaching.length / tables.length, 10);
  }, 30_000);
});

/** Ranks whose L is the wanted one: start in perfect order and undo it step by step. */
function panelWithL(k: number, n: number, L: number): number[][] {
  const rows = Array.from({ length: n }, () => Array.from({ length: k }, (_, j) => j + 1));
  let excess = (n * k * (k + 1) * (2 * k + 1)) / 6 - L;
  for (const row of rows) {
    // Swapping neighbours a, a + 1 takes 1 off L each time; a row can be reversed k(k² − 1)/6 … step by step.
    for (let pass = 0; pass < k && excess > 0; pass += 1) {
      for (let j = 0; j < k - 1 - pass && excess > 0; j += 1) {
        const [a = 0, b = 0] = [row[j], row[j + 1]];
        const step = b - a;
        if (step <= 0 || step > excess) continue;
        [row[j], row[j + 1]] = [b, a];
        excess -= step;
      }
    }
  }
  if (excess !== 0) throw new Error(`no panel with L = ${L}`);
  return rows;
}

describe("Page's exact points (page_critical.csv; one encyclopedia misprints '56 for 4, 54 for 5' at k 3: 54 belongs to 4)", () => {
  const points = fixture("page_critical").filter((row) => row.has("L_critical"));
  it.each([...groupedBy(points, (row) => row.number("k"))])("k = %i", (k, rows) => {
    for (const row of rows) {
      const n = row.number("n");
      if (k > 6 && n > 6) continue; // the larger ones take their time and show nothing new
      const table = panelWithL(k, n, row.number("L_critical"));
      const result = pageTest(table);
      expect(result.statistic).toBe(row.number("L_critical"));
      expect(result.exact).toBe(true);
      expect(result.p).toBeCloseTo(row.number("p_exact"), 7);
    }
  });

  it("published points: k 3: 66, 91, 128, 190, 251 for 5, 7, 10, 15, 20 judges at .05; k 4, 6 judges: 172 at .001", () => {
    for (const [k, n, L, alpha] of [[3, 5, 66, 0.05], [3, 7, 91, 0.05], [3, 10, 128, 0.05], [3, 15, 190, 0.05], [3, 20, 251, 0.05], [4, 6, 172, 0.001]] as const) {
      expect(pageTest(panelWithL(k, n, L)).p).toBeLessThanOrEqual(alpha);
      expect(pageTest(panelWithL(k, n, L - 1)).p).toBeGreaterThan(alpha);
    }
  });

  it("Hollander & Wolfe Table 7.5, cotton: L 158, exact p .002492 (scipy page_trend_test)", () => {
    const cotton = examples.get("hollander_wolfe_cotton") ?? [];
    // Their hypothesis runs from the highest potash to the lowest: find the direction that gives 158.
    const result = [cotton, cotton.map((row) => row.toReversed())].map(pageTest).find((page) => page.statistic === 158);
    expect(result?.p).toBeCloseTo(0.002492, 6);
  });

  it("beyond 8 samples or 20 judges the normal distribution takes over and says so", () => {
    const rows = Array.from({ length: 21 }, (_, i) => (i % 2 ? [1, 2, 3] : [2, 1, 3]));
    // L = 21 · 13.5 = 283.5… by hand: 10 rows of 14 and 11 of 13 = 283; mean 252, variance 21 · 3² · 4 · 8 / 144 = 42
    const result = pageTest(rows);
    expect(result).toMatchObject({ statistic: 283, exact: false });
    // z = 31/√42 = 4.7834, P(Z > z) = 8.62e-7
    expect(result.p).toBeCloseTo(8.62e-7, 8);
  });
});

describe("ranking, by what must hold", () => {
  const table = fc.integer({ min: 2, max: 4 }).chain((k) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: k, maxLength: k }), { minLength: 2, maxLength: 6 }),
  ).filter((rows) => rows.some((row) => new Set(row).size > 1));

  it("the order of judges, of samples, and the direction of the scale don't matter to Friedman", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const p = friedmanTest(rows).p;
        expect(friedmanTest(rows.toReversed()).p).toBeCloseTo(p, 10);
        expect(friedmanTest(rows.map((row) => row.toReversed())).p).toBeCloseTo(p, 10);
        expect(friedmanTest(rows.map((row) => row.map((x) => -x))).p).toBeCloseTo(p, 10);
        expect(p).toBeLessThanOrEqual(1);
        expect(p).toBeGreaterThan(0);
        const { w } = concordance(rows);
        expect(w).toBeGreaterThanOrEqual(0);
        expect(w).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("Page: the two directions' p add up to 1 plus the chance of the statistic itself", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const [up, down] = [pageTest(rows), pageTest(rows.map((row) => row.toReversed()))];
        expect(up.p + down.p).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(pageTest(rows.toReversed()).p).toBeCloseTo(up.p, 10);
      }),
    );
  });

  it("judges in full agreement have W = 1", () => {
    expect(concordance([[1, 2, 3], [4, 5, 6], [0, 1, 9]])).toMatchObject({ w: 1, meanSpearman: 1 });
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["one judge", () => friedmanTest([[1, 2, 3]])],
    ["one sample", () => friedmanTest([[1], [2]])],
    ["a missing cell", () => friedmanTest([[1, 2, 3], [1, 2]])],
    ["a score that is no number", () => pageTest([[1, 2], [1, Number.NaN]])],
    ["everything tied", () => friedmanTest([[1, 1], [2, 2]])],
    ["no judges", () => pageTest([])],
    ["half a judge", () => rankSumDifference(1.5, 3)],
    ["an alpha of 0", () => rankSumDifference(8, 3, 0)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

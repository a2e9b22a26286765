import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  entryDifference,
  findConnectedGroups,
  intraclassCorrelation,
  judgeSeverity,
  type JudgeScore,
  type LinkedJudges,
} from "../../../src/statistics/index.js";
import { expected, fixture, groupedBy } from "../fixture.js";

describe("intraclass correlation (Shrout & Fleiss 1979, their example; intervals equal R psych::ICC)", () => {
  const rows = [...groupedBy(fixture("icc_shrout_fleiss"), (row) => row.text("target")).values()].map((own) =>
    own.toSorted((a, b) => a.number("judge") - b.number("judge")).map((row) => row.number("score")),
  );
  const result = intraclassCorrelation(rows);
  const at = (stat: string) => expected(fixture("icc_expected"), "stat", stat);

  it("mean squares 11.24, 32.49, 1.02 and 6.26 (published)", () => {
    expect(result.meanSquares.betweenTargets).toBeCloseTo(at("MSR").number("value"), 7);
    expect(result.meanSquares.betweenJudges).toBeCloseTo(at("MSC").number("value"), 7);
    expect(result.meanSquares.residual).toBeCloseTo(at("MSE").number("value"), 7);
    expect(result.meanSquares.withinTargets).toBeCloseTo(at("MSW").number("value"), 7);
  });

  it.each([
    ["ICC11", result.single.oneWay],
    ["ICC21", result.single.agreement],
    ["ICC31", result.single.consistency],
    ["ICC1k", result.average.oneWay],
    ["ICC2k", result.average.agreement],
    ["ICC3k", result.average.consistency],
  ] as const)("%s with its interval (paper: .17 .29 .71 .44 .62 .91)", (stat, form) => {
    expect(form.estimate).toBeCloseTo(at(stat).number("value"), 7);
    expect(form.interval?.low).toBeCloseTo(at(stat).number("lo"), 5);
    expect(form.interval?.high).toBeCloseTo(at(stat).number("hi"), 5);
  });

  it("a judge's constant severity lowers agreement and leaves consistency", () => {
    const severe = rows.map((row) => row.map((score, j) => (j === 0 ? score - 3 : score)));
    const shifted = intraclassCorrelation(severe);
    expect(shifted.single.consistency.estimate).toBeCloseTo(result.single.consistency.estimate, 10);
    expect(shifted.single.agreement.estimate).not.toBeCloseTo(result.single.agreement.estimate, 3);
  });

  it("judges who agree but for severity: consistency 1, without an interval", () => {
    const { single } = intraclassCorrelation([[30, 32], [35, 37], [41, 43]]);
    expect(single.consistency).toEqual({ estimate: 1, interval: undefined });
    expect(single.agreement.estimate).toBeLessThan(1);
    expect(single.agreement.interval).toBeUndefined();
  });

  it("judges in wild disagreement: no interval for agreement rather than one of endless width", () => {
    const { single } = intraclassCorrelation([[15, 33, 1], [47, 2, 5], [11, 29, 3]]);
    expect(single.agreement.estimate).toBeLessThan(0);
    expect(single.agreement.interval).toBeUndefined();
  });

  it("the order of entries and of judges does not matter, and intervals contain estimates", () => {
    const table = fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 8 })
      .filter((t) => new Set(t.map((row) => row.reduce((a, b) => a + b, 0))).size > 1);
    fc.assert(
      fc.property(table, (t) => {
        const [here, there] = [intraclassCorrelation(t), intraclassCorrelation(t.toReversed().map((row) => row.toReversed()))];
        for (const form of ["oneWay", "agreement", "consistency"] as const) {
          expect(there.single[form].estimate).toBeCloseTo(here.single[form].estimate, 9);
          const { estimate, interval } = here.single[form];
          if (interval === undefined) continue;
          expect(interval.low).toBeLessThanOrEqual(estimate + 1e-9);
          expect(interval.high).toBeGreaterThanOrEqual(estimate - 1e-9);
        }
      }),
    );
  });
});

describe("judge severity (judge_bias_*.csv: invented scores, results from R lm)", () => {
  const sets = new Map(
    [...groupedBy(fixture("judge_bias_example"), (row) => row.text("dataset"))].map(([name, rows]) => [
      name,
      rows.map((row): JudgeScore => ({ judge: row.text("judge"), entry: row.text("entry"), score: row.number("score") })),
    ]),
  );
  const results = fixture("judge_bias_expected");
  const at = (dataset: string, model: string, term: string) => {
    const row = results.find((r) => r.text("dataset") === dataset && r.text("model") === model && r.text("term") === term);
    if (row === undefined) throw new Error(`no ${model} ${term} for ${dataset}`);
    return row;
  };
  const linkedResult = (dataset: string): LinkedJudges => {
    const result = judgeSeverity(sets.get(dataset) ?? []);
    if (!result.linked) throw new Error(`${dataset} should be linked`);
    return result;
  };

  it("refuses flights that share neither judge nor entry, and names the groups", () => {
    const scores = sets.get("A_disconnected") ?? [];
    const result = judgeSeverity(scores);
    expect(result.linked).toBe(false);
    if (result.linked) return;
    expect(result.groups).toHaveLength(at("A_disconnected", "graph", "connected_components").number("estimate"));
    expect(result.groups[0]).toEqual({ judges: ["J1", "J2"], entries: ["E01", "E02", "E03", "E04"] });
    expect(() => entryDifference(scores, "E01", "E02")).toThrow(RangeError);
  });

  it.each(["B_calibration", "C_calibration_missing"])("%s: adjusted means, severity, scatter and F", (dataset) => {
    const result = linkedResult(dataset);
    for (const { entry, adjustedMean, standardError } of result.entries) {
      const row = at(dataset, "lm_adjusted_entry_mean", entry);
      expect(adjustedMean).toBeCloseTo(row.number("estimate"), 7);
      expect(standardError).toBeCloseTo(row.number("se"), 7);
    }
    for (const { judge, severity, standardError } of result.judges) {
      const row = at(dataset, "lm_judge_severity_effect_sum_to_zero", judge);
      expect(severity).toBeCloseTo(row.number("estimate"), 7);
      expect(standardError).toBeCloseTo(row.number("se"), 7);
    }
    expect(result.entries).toHaveLength(13);
    expect(result.judges).toHaveLength(6);
    expect(result.residualStandardDeviation).toBeCloseTo(at(dataset, "lm_entry_plus_judge", "residual_sd").number("estimate"), 7);
    expect(result.degreesOfFreedom).toBe(at(dataset, "lm_entry_plus_judge", "df_residual").number("estimate"));
    expect(result.fRatio).toBeCloseTo(at(dataset, "lm_F_test_judge", "F").number("estimate"), 7);
    expect(result.p).toBeCloseTo(at(dataset, "lm_F_test_judge", "p").number("estimate"), 7);
  });

  it.each(["B_calibration", "C_calibration_missing"])("%s: differences within and between flights", (dataset) => {
    for (const row of results.filter((r) => r.text("dataset") === dataset && r.text("model") === "lm_contrast")) {
      const [first = "", second = ""] = row.text("term").split(" - ");
      const difference = entryDifference(sets.get(dataset) ?? [], first, second);
      expect(difference.estimate).toBeCloseTo(row.number("estimate"), 7);
      expect(difference.standardError).toBeCloseTo(row.number("se"), 7);
    }
  });

  it("inside a flight where every judge scored every entry, adjusting changes no difference", () => {
    const difference = entryDifference(sets.get("B_calibration") ?? [], "E01", "E02");
    expect(difference.estimate).toBeCloseTo(32 - 37.5, 9); // the raw means
  });

  it("severities sum to zero and the order of scores does not matter", () => {
    const scores = sets.get("C_calibration_missing") ?? [];
    const result = linkedResult("C_calibration_missing");
    expect(result.judges.reduce((sum, judge) => sum + judge.severity, 0)).toBeCloseTo(0, 9);
    const back = judgeSeverity(scores.toReversed());
    if (!back.linked) throw new Error("linked either way");
    const byName = new Map(back.judges.map((judge) => [judge.judge, judge]));
    for (const { judge, severity, standardError } of result.judges) {
      expect(byName.get(judge)?.severity).toBeCloseTo(severity, 9);
      expect(byName.get(judge)?.standardError).toBeCloseTo(standardError, 9);
    }
  });

  it("a scores table without scatter gives its effects without error", () => {
    const scores = ["a", "b", "c"].flatMap((entry, e) => ["x", "y"].map((judge, j) => ({ judge, entry, score: 30 + 5 * e + 2 * j })));
    const result = judgeSeverity(scores);
    if (!result.linked) throw new Error("linked");
    expect(result.judges.map((judge) => judge.severity)).toEqual([expect.closeTo(-1, 9), expect.closeTo(1, 9)]);
    expect(result.residualStandardDeviation).toBeCloseTo(0, 9);
  });

  it("an entry against itself differs by nothing", () => {
    expect(entryDifference(sets.get("B_calibration") ?? [], "E01", "E01")).toMatchObject({ estimate: 0, p: 1 });
  });

  it("links through a chain of shared entries", () => {
    const chain = [["x", "1"], ["y", "1"], ["y", "2"], ["z", "2"], ["q", "9"]].map(([judge = "", entry = ""]) => ({ judge, entry, score: 1 }));
    expect(findConnectedGroups(chain)).toEqual([
      { judges: ["x", "y", "z"], entries: ["1", "2"] },
      { judges: ["q"], entries: ["9"] },
    ]);
    expect(findConnectedGroups([])).toEqual([]);
  });
});

describe("bad input throws RangeError", () => {
  const score = (judge: string, entry: string, points = 30): JudgeScore => ({ judge, entry, score: points });
  it.each([
    ["no scores", () => judgeSeverity([])],
    ["one judge", () => judgeSeverity([score("a", "1"), score("a", "2")])],
    ["a judge twice on an entry", () => judgeSeverity([score("a", "1"), score("a", "1"), score("b", "1"), score("b", "2"), score("a", "2")])],
    ["too few scores", () => judgeSeverity([score("a", "1"), score("b", "1")])],
    ["a score that is no number", () => judgeSeverity([score("a", "1", Number.NaN), score("b", "1"), score("a", "2"), score("b", "2")])],
    ["an unknown entry", () => entryDifference([score("a", "1"), score("b", "1"), score("a", "2"), score("b", "2", 31)], "1", "3")],
    ["one target", () => intraclassCorrelation([[1, 2]])],
    ["one judge a target", () => intraclassCorrelation([[1], [2]])],
    ["a missing cell", () => intraclassCorrelation([[1, 2], [3]])],
    ["targets that don't differ", () => intraclassCorrelation([[1, 2], [2, 1]])],
    ["a level of 1", () => intraclassCorrelation([[1, 2], [3, 5]], 1)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});

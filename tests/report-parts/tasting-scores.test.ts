import { describe, expect, it } from "vitest";
import type { Batch, ScoreRow } from "../../src/records/index.js";
import { tastingReports } from "../../src/report/tasting.js";
import type { AttributeReport, TastingReport } from "../../src/report/types.js";
import { fixture } from "./fixture.js";
import { batchOf, recordOf, scoresOf, tastingOf } from "./records.js";

function told(scores: readonly ScoreRow[], aim?: NonNullable<Batch["aim"]>): TastingReport {
  const batch = batchOf({ tastings: [tastingOf()], ...(aim === undefined ? {} : { aim }) });
  const [report] = tastingReports(recordOf(batch, [{ scores }]));
  if (report === undefined) throw new Error("no tasting came out");
  return report;
}

function attribute(report: TastingReport, name: string): AttributeReport {
  const found = report.attributes.find((one) => one.attribute === name);
  if (found === undefined) throw new Error(`${name} was not reported`);
  return found;
}

describe("scores before and after", () => {
  it("give mean, interval, sign-flip p and effect of published pairs", () => {
    // Darwin's maize (Fisher 1935) and Student's sleep data; intervals COMPUTED with R, 863 of 32 768 published.
    for (const row of fixture("paired_examples_expected")) {
      const differences = fixture("paired_examples").filter((one) => one.text("example") === row.text("example")).map((one) => one.number("d"));
      const found = attribute(told(scoresOf("pine", differences, 0)), "pine");
      expect(found.lift).toBeCloseTo(row.number("mean"), 7);
      expect(found.low).toBeCloseTo(row.number("ci_lo"), 7);
      expect(found.high).toBeCloseTo(row.number("ci_hi"), 7);
      expect(found.p).toBeCloseTo(row.number("p_flip"), 9);
      expect(found.standardised?.dz).toBeCloseTo(row.number("dz"), 7);
      expect(found.standardised?.low).toBeCloseTo(row.number("dz_lo"), 5);
      expect(found.typical?.value).toBeCloseTo(row.number("HL"), 7);
    }
  });

  it("say the least change that such a panel would find, and the one it would miss as often", () => {
    // small_n_paired.csv: 8 tasters find dz 1.156 in 8 of 10, and 0.804 in 5. Differences 1, 3, … have sd √(8/7) = 1.0690.
    const eight = fixture("small_n_paired").find((row) => row.number("n") === 8);
    const found = attribute(told(scoresOf("pine", [1, 3, 1, 3, 1, 3, 1, 3])), "pine");
    expect(found.detectable).toBeCloseTo((eight?.number("dz_power80") ?? NaN) * Math.sqrt(8 / 7), 5);
    // Three digits: the table seems to leave the far tail out, which counts for 0.00005 here.
    expect(found.missed).toBeCloseTo((eight?.number("dz_power50") ?? NaN) * Math.sqrt(8 / 7), 3);
  });

  it("average repeated servings within a taster and count the taster once", () => {
    const twice = scoresOf("pine", [1, 2, 0, 1, 2, 3]);
    const repeated = [...twice, ...twice.map((row) => ({ ...row, serving: 2, score: row.score + (row.sample === "after" ? 1 : 0) }))];
    const found = attribute(told(repeated), "pine");
    expect(found.tasters).toBe(6);
    expect(found.lift).toBeCloseTo(1.5 + 0.5, 12); // (1+2+0+1+2+3)/6 = 1.5, and half a point from the second serving
  });

  it("leave a taster with a missing cell out of that attribute, and say so", () => {
    const scores = [...scoresOf("pine", [1, 2, 0, 1, 2, 3]), { taster: "T9", sample: "after", attribute: "pine", score: 8, serving: 1 }];
    const report = told(scores);
    expect(attribute(report, "pine").tasters).toBe(6);
    expect(report.says.join(" ")).toContain("T9 did not score an attribute in both samples.");
  });

  it("are described only at five tasters or fewer", () => {
    const found = told(scoresOf("pine", [2, 2, 3, 2, 3]));
    expect(attribute(found, "pine")).not.toHaveProperty("p");
    expect(attribute(found, "pine")).not.toHaveProperty("low");
    expect(found.says[0]).toBe("Pine: 5 of 5 scored after higher, +2.4. 5 tasters are too few to conclude from: described only.");
  });

  it("are described for one taster", () => {
    const found = told(scoresOf("pine", [2]));
    expect(attribute(found, "pine")).toMatchObject({ tasters: 1, lift: 2, meanBefore: 3, meanAfter: 5 });
    expect(found.says[0]).toContain("One taster is too few to conclude from");
  });

  it("have no interval where every taster moved alike, but an exact p still", () => {
    const found = attribute(told(scoresOf("pine", [1, 1, 1, 1, 1, 1])), "pine");
    expect(found).not.toHaveProperty("low");
    expect(found.p).toBe(2 / 64); // both all-plus and all-minus of 2⁶ patterns
  });

  it("keep every taster's own pair", () => {
    expect(attribute(told(scoresOf("pine", [1, -1])), "pine").pairs).toEqual([["T1", 3, 4], ["T2", 3, 2]]);
  });

  it("come out alike whatever the tasters are called and however the file is ordered", () => {
    const scores = scoresOf("pine", [1, 2, 0, -1, 2, 3]);
    const renamed = [...scores].reverse().map((row) => ({ ...row, taster: `X-${row.taster}` }));
    const [one, other] = [attribute(told(scores), "pine"), attribute(told(renamed), "pine")];
    expect([other.lift, other.low, other.high, other.p]).toEqual([one.lift, one.low, one.high, one.p]);
  });
});

describe("several attributes on one sheet", () => {
  const shown = [1, 1, 1, 1, 1, 2]; // 2 of 64 patterns as far out: p 0.03125
  const none = [1, -1, 1, -1, 0, 0];

  it("share Holm where none was to decide", () => {
    // Holm of .03125, .03125, 1: 3 × .03125 = .09375 for the smallest, and monotone after.
    const report = told([...scoresOf("pine", shown), ...scoresOf("fruit", shown), ...scoresOf("haze", none)]);
    expect(report.attributes.map(({ adjusted }) => adjusted)).toEqual([0.09375, 0.09375, 1]);
    expect(report.says[0]).toContain("a change is not shown once the other attributes are allowed for");
  });

  it("leave the primary one its own p, and come first", () => {
    const report = told([...scoresOf("haze", none), ...scoresOf("fruit", shown), ...scoresOf("pine", shown)], { primary: "pine", raise: ["pine"] });
    expect(report.attributes.map(({ attribute: name }) => name)).toEqual(["pine", "haze", "fruit"]);
    expect(attribute(report, "pine").adjusted).toBe(0.03125);
    expect(report.says[0]).toContain("Pine, which was to decide: 6 of 6 scored after higher");
    expect(report.says[0]).toContain("a rise is shown.");
    expect(attribute(report, "fruit").adjusted).toBe(0.0625); // Holm of two
  });

  it("claim nothing further once the primary one has failed", () => {
    const report = told([...scoresOf("pine", none), ...scoresOf("fruit", [1, 1, 1, 1, 1, 1, 1, 2])], { primary: "pine", raise: ["pine"] });
    expect(attribute(report, "fruit").p).toBe(2 / 256);
    expect(attribute(report, "fruit").adjusted).toBe(attribute(report, "pine").p);
  });
});

it("compares the samples named before and after, else the first two as recorded", () => {
  const scores = [...scoresOf("pine", [1, 2, 0, 1, 2, 3])].map((row) => ({ ...row, sample: row.sample === "before" ? "a" : "b" }));
  const batch = batchOf({ tastings: [tastingOf({ samples: [{ sample: "a", value: "TP-02/keg" }, { sample: "b", value: "keg" }] })] });
  const [report] = tastingReports(recordOf(batch, [{ scores }]));
  expect(report?.roles).toEqual({ before: "a", after: "b" });
  expect(report?.attributes[0]?.lift).toBeCloseTo(1.5, 12);
  expect(report?.says[0]).toContain("scored b higher");
});

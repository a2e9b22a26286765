import { describe, expect, it } from "vitest";
import type { Batch } from "../../src/records/index.js";
import { aimReport } from "../../src/report/aim.js";
import { tastingReports } from "../../src/report/tasting.js";
import type { AimReport } from "../../src/report/types.js";
import { batchOf, recordOf, scoresOf, tastingOf, type Tasting } from "./records.js";

type Aim = NonNullable<Batch["aim"]>;

function judged(aim: Aim, lifts: Readonly<Record<string, readonly number[]>>, tasting: Partial<Tasting> = {}): AimReport {
  const batch = batchOf({ aim, tastings: [tastingOf(tasting)] });
  const scores = Object.entries(lifts).flatMap(([attribute, differences]) => scoresOf(attribute, differences));
  const report = aimReport(batch, tastingReports(recordOf(batch, [{ scores }])));
  if (report === undefined) throw new Error("no aim came out");
  return report;
}

// Eight tasters, mean 1.5, sd 0.5345 (squares of ±0.5: 8 × 0.25 = 2, / 7): interval 1.5 ± 0.447; p 2/256.
const risen = [1, 2, 1, 2, 1, 2, 1, 2];
// Mean 0, interval about ± 0.447.
const held = [0.5, -0.5, 0.5, -0.5, 0.5, -0.5, 0.5, -0.5];
// Mean 0.25, sd 1.58: neither moved nor held.
const unclear = [2, -2, 1, 0, 2, -1, 1, -1];

describe("aimReport", () => {
  it("is undefined without an aim", () => {
    expect(aimReport(batchOf(), [])).toBeUndefined();
  });

  it("can't tell before anything is tasted", () => {
    expect(aimReport(batchOf({ aim: { words: "More peel.", raise: ["peel"] } }), []))
      .toEqual({ words: "More peel.", raise: ["peel"], lower: [], hold: [], verdict: "Can't tell yet: no tasting is recorded." });
  });

  it("is met by a shown rise that reaches the margin", () => {
    const report = judged({ raise: ["peel"], primary: "peel", margin: 0.8 }, { peel: risen });
    expect(report.result).toBe("met");
    expect(report.attributes?.[0]?.says).toContain("8 of 8 scored after higher, +1.5 (1.1 to 1.9)");
    expect(report.verdict).toBe("Met for peel: +1.5 (1.1 to 1.9) from 8 tasters.");
  });

  it("is not met when even the interval's end falls short of the margin", () => {
    expect(judged({ raise: ["peel"], margin: 0.8 }, { peel: held }).result).toBe("not met");
  });

  it("can't tell when a shown rise may or may not reach the margin", () => {
    const report = judged({ raise: ["peel"], margin: 1.7 }, { peel: risen });
    expect(report.result).toBe("can't tell");
    expect(report.attributes?.[0]?.says).toContain("a rise is shown, but not that it reaches the 1.7 asked for");
  });

  it("can't tell when neither a rise nor its absence is shown, and says what would be missed", () => {
    const report = judged({ raise: ["peel"], margin: 0.8 }, { peel: unclear });
    expect(report.result).toBe("can't tell");
    expect(report.attributes?.[0]?.says).toMatch(/with 8 tasters a rise under \d\.\d would probably be missed/u);
  });

  it("takes a fall for a rise of the opposite", () => {
    const fallen = risen.map((difference) => -difference);
    expect(judged({ lower: ["grassy"], margin: 0.8 }, { grassy: fallen }).result).toBe("met");
    expect(judged({ raise: ["grassy"] }, { grassy: fallen }).result).toBe("not met");
    expect(judged({ lower: ["grassy"] }, { grassy: risen }).result).toBe("not met");
  });

  it("holds when the whole interval lies within the margin, moves when shown beyond it, else can't tell", () => {
    expect(judged({ hold: ["bitter"], margin: 0.8 }, { bitter: held }).result).toBe("met");
    expect(judged({ hold: ["bitter"], margin: 0.8 }, { bitter: risen }).result).toBe("not met");
    expect(judged({ hold: ["bitter"], margin: 0.8 }, { bitter: unclear }).result).toBe("can't tell");
  });

  it("can't tell that anything held without a margin, but can tell that it moved", () => {
    expect(judged({ hold: ["bitter"] }, { bitter: held }).result).toBe("can't tell");
    expect(judged({ hold: ["bitter"] }, { bitter: risen }).result).toBe("not met");
  });

  it("lets the primary attribute decide and tells the rest", () => {
    const report = judged({ raise: ["peel"], hold: ["bitter"], primary: "peel", margin: 0.8 }, { peel: risen, bitter: unclear });
    expect(report.result).toBe("met");
    expect(report.attributes?.map(({ result }) => result)).toEqual(["met", "can't tell"]);
    expect(report.verdict).toContain("; can't tell for bitter");
  });

  it("asks all attributes where none is to decide", () => {
    // Two attributes share Holm: the rise's 2/256 twice over is still shown, and held needs no test.
    expect(judged({ raise: ["peel"], hold: ["bitter"], margin: 0.8 }, { peel: risen, bitter: held }).result).toBe("met");
    expect(judged({ raise: ["peel"], hold: ["bitter"], margin: 0.8 }, { peel: risen, bitter: unclear }).result).toBe("can't tell");
    expect(judged({ raise: ["peel"], hold: ["bitter"], margin: 0.8 }, { peel: risen, bitter: risen }).result).toBe("not met");
  });

  it("claims nothing at five tasters or fewer", () => {
    const report = judged({ raise: ["peel"], margin: 0.8 }, { peel: [2, 2, 3, 2, 3] });
    expect(report.result).toBe("can't tell");
    expect(report.verdict).toContain("from 5 tasters, too few to conclude from");
  });

  it("says that an attribute wasn't scored", () => {
    expect(judged({ raise: ["peel"] }, {}).verdict).toBe("Can't tell for peel: not scored.");
  });

  it("is softened by what else differed, or isn't recorded", () => {
    expect(judged({ raise: ["peel"] }, { peel: risen }, { differs: ["carbonation"] }).verdict).toMatch(/; but the samples also differed in carbonation\.$/u);
    expect(judged({ raise: ["peel"] }, { peel: risen }).verdict).not.toContain("; but ");
  });

  it("takes a named pair as enough for a direction, not for a size", () => {
    // 10 of 12, one-sided: p 0.019.
    const pair = { pair: [{ attribute: "peel", counts: [{ sample: "before", count: 2 }, { sample: "after", count: 10 }] }] };
    expect(judged({ raise: ["peel"] }, {}, pair).result).toBe("met");
    expect(judged({ raise: ["peel"], margin: 0.8 }, {}, pair).result).toBe("can't tell");
    // Two-sided, since holding sets no direction: p 0.039, and it did not hold.
    expect(judged({ hold: ["peel"] }, {}, pair).result).toBe("not met");
    expect(judged({ hold: ["peel"], margin: 0.8 }, {}, pair).result).toBe("can't tell");
  });

  it("is one sentence", () => {
    const { verdict } = judged({ raise: ["peel", "pine"], hold: ["bitter"], margin: 0.8 }, { peel: risen, pine: unclear, bitter: held }, { differs: ["age"] });
    expect(verdict.endsWith(".")).toBe(true);
    expect(verdict.slice(0, -1)).not.toMatch(/\.\s/u);
  });
});

import { describe, expect, it } from "vitest";
import { tastingReports } from "../../src/report/tasting.js";
import { at, batchOf, q, ranksOf, recordOf, tastingOf, type Tasting } from "./records.js";

const control = { kept: "control", at: at("2026-03-18 18:30"), stored: "1 C, purged bottle" };
/** A tasting that doesn't say what else differed. */
function silent(): Tasting {
  return Object.fromEntries(Object.entries(tastingOf()).filter(([key]) => key !== "differs")) as Tasting;
}

const keg = { into: "keg" as const, date: at("2026-03-24"), carbonation: q("2.4 vol", "carbonation") };

describe("tastings of a record", () => {
  it("leave out those that aren't public", () => {
    const batch = batchOf({ tastings: [tastingOf({ public: false, name: "Private" }), tastingOf({ name: "Public" })] });
    expect(tastingReports(recordOf(batch)).map(({ name }) => name)).toEqual(["Public"]);
  });

  it("keep to the rows of their own file when an earlier one is left out", () => {
    const batch = batchOf({ tastings: [tastingOf({ public: false }), tastingOf()] });
    const rows = { scores: [{ taster: "A", sample: "before", attribute: "pine", score: 1, serving: 1 }, { taster: "A", sample: "after", attribute: "pine", score: 4, serving: 1 }] };
    expect(tastingReports(recordOf(batch, [{}, rows]))[0]?.attributes[0]?.lift).toBe(3);
  });

  it("are none for a record without", () => {
    expect(tastingReports(recordOf(batchOf()))).toEqual([]);
  });

  it("say so when neither counts nor scores are recorded", () => {
    expect(tastingReports(recordOf(batchOf({ tastings: [{ public: true }] })))[0]).toMatchObject({
      name: "Tasting", samples: {}, says: ["No counts or scores are recorded for this tasting."],
    });
  });
});

describe("what differed between the samples", () => {
  it("is said as not recorded where the record doesn't say", () => {
    const [report] = tastingReports(recordOf(batchOf({ tastings: [{ ...silent(), triangle: { correct: 9 }, tasters: 12 }] })));
    expect(report?.comparable).toBe("not recorded");
    expect(report?.differs).toEqual(["Not recorded: what else differed between the samples."]);
    expect(report?.says.at(-1)).toContain("what else differed between the samples isn't recorded");
  });

  it("is named as recorded, next to the result", () => {
    const [report] = tastingReports(recordOf(batchOf({ tastings: [tastingOf({ differs: ["carbonation", "age"], triangle: { correct: 9 }, tasters: 12 })] })));
    expect(report?.comparable).toBe("differs");
    expect(report?.differs).toEqual(["Carbonation also differed.", "Age also differed."]);
    expect(report?.says.at(-1)).toContain("the samples also differed in carbonation and age");
  });

  it("is nothing where the record says so and shows nothing", () => {
    const [report] = tastingReports(recordOf(batchOf({ tastings: [tastingOf({ triangle: { correct: 9 }, tasters: 12 })] })));
    expect(report).toMatchObject({ comparable: "nothing else", differs: [] });
    expect(report).not.toHaveProperty("reservation");
  });

  it("includes how a kept sample was stored and how long, with a caution", () => {
    // 18 March to 2 April is 15 days; 24 March to 2 April is 9.
    const [report] = tastingReports(recordOf(batchOf({ samples: [control], package: [keg], tastings: [silent()] })));
    expect(report?.differs).toEqual([
      "The sample kept as control was drawn 15 days before the tasting and kept so: 1 C, purged bottle.",
      "The keg was filled 9 days before the tasting.",
      "The packaged beer is carbonated (2.4 vol); whether the sample kept as control was isn't recorded.",
      "Not recorded: what else differed between the samples.",
    ]);
    expect(report?.cautions?.[0]).toContain("can burst");
  });

  it("isn't another batch where a sample carries the batch's own number", () => {
    const samples = [{ sample: "before", value: "TP-03/control" }, { sample: "after", value: "TP-03/keg" }];
    const [report] = tastingReports(recordOf(batchOf({ samples: [control], tastings: [tastingOf({ samples })] })));
    expect(report?.comparable).toBe("nothing else");
    expect(report?.differs[0]).toContain("The sample kept as control was drawn 15 days before the tasting");
  });

  it("includes everything when a sample is of another batch", () => {
    const samples = [{ sample: "before", value: "TP-02/keg" }, { sample: "after", value: "keg" }];
    const [report] = tastingReports(recordOf(batchOf({ tastings: [tastingOf({ samples })] })));
    expect(report?.comparable).toBe("differs");
    expect(report?.differs).toEqual(["All that batch TP-02 differs in also differed."]);
  });
});

describe("a ranking", () => {
  const samples = ["a", "b", "c"];
  const ranked = (rows: readonly (readonly number[])[], order?: string[]) => {
    const tasting = tastingOf({ samples: samples.map((sample) => ({ sample, value: "keg" })), ...(order === undefined ? {} : { order }) });
    return tastingReports(recordOf(batchOf({ tastings: [tasting] }), [{ ranking: ranksOf(samples, rows) }]))[0];
  };

  it("gives rank sums and Friedman's exact p", () => {
    // Six tasters agree fully: 3! = 6 ways to agree of 6⁶ arrangements, p = 6/46656.
    const report = ranked(Array.from({ length: 6 }, () => [1, 2, 3]));
    expect(report?.ranking?.sums).toEqual([
      { sample: "a", sum: 6, places: [{ rank: 1, tasters: 6 }] }, { sample: "b", sum: 12, places: [{ rank: 2, tasters: 6 }] }, { sample: "c", sum: 18, places: [{ rank: 3, tasters: 6 }] },
    ]);
    // ISO 8587: 1.96 √(J P (P + 1)/6), only where the ranks as a whole are shown to differ.
    expect(report?.ranking?.leastDifference).toBeCloseTo(1.959964 * Math.sqrt((6 * 3 * 4) / 6), 5);
    expect(ranked([[1, 2, 3], [3, 2, 1], [1, 2, 3], [3, 2, 1], [2, 1, 3], [2, 3, 1]])?.ranking).not.toHaveProperty("leastDifference");
    expect(report?.ranking?.p).toBeCloseTo(6 / 46656, 12);
    expect(report?.says[0]).toContain("that they were ranked differently is shown");
  });

  it("asks of a fixed order whether ranks rise or fall along it, two-sided", () => {
    // Page, six tasters in full agreement: one arrangement of 6⁶ is as high, doubled.
    const report = ranked(Array.from({ length: 6 }, () => [1, 2, 3]), samples);
    expect(report?.ranking?.ordered).toMatchObject({ exact: true, rising: true });
    expect(report?.ranking?.ordered?.p).toBeCloseTo(2 / 46656, 12);
    expect(ranked(Array.from({ length: 6 }, () => [3, 2, 1]), samples)?.ranking?.ordered).toMatchObject({ rising: false });
  });

  it("is described only by five or fewer, and survives ties throughout", () => {
    expect(ranked(Array.from({ length: 5 }, () => [1, 2, 3]))?.ranking).not.toHaveProperty("p");
    expect(ranked(Array.from({ length: 6 }, () => [2, 2, 2]))?.ranking).not.toHaveProperty("p");
  });
});

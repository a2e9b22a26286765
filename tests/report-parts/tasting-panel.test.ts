import { describe, expect, it } from "vitest";
import type { ScoreRow } from "../../src/records/index.js";
import { panelReport } from "../../src/report/tasting-panel.js";

/** Scores as [taster, sample, serving, score] of one attribute. */
const rowsOf = (rows: readonly (readonly [string, string, number, number])[]): ScoreRow[] =>
  rows.map(([taster, sample, serving, score]) => ({ taster, sample, attribute: "lemon", serving, score }));

/**
 * Shrout & Fleiss (1979), table 2: six targets by four judges; ICC(1,1) .17, ICC(2,1) .29 (their table 4).
 * A taster's servings stand for the judges there.
 */
const SHROUT_FLEISS = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]];

describe("tasters who were served the same cups again", () => {
  it("nothing is said where no serving repeats", () => {
    expect(panelReport(rowsOf([["T1", "a", 1, 3], ["T1", "b", 1, 5]]))).toBeUndefined();
  });

  it("a taster's repeatability is ICC(1,1) over the cups (Shrout & Fleiss 1979: .17)", () => {
    const rows = rowsOf(SHROUT_FLEISS.flatMap((scores, cup) => scores.map((score, serving) => ["T1", `cup ${cup}`, serving + 1, score] as const)));
    expect(panelReport(rows)?.tasters[0]?.repeatability?.value).toBeCloseTo(0.17, 2);
    expect(panelReport(rows)?.servings).toBe(4);
  });

  it("agreement between tasters is ICC(2,1) of their means (Shrout & Fleiss 1979: .29), W beside its chance floor of 1 in 4", () => {
    const rows = rowsOf(SHROUT_FLEISS.flatMap((scores, cup) => scores.flatMap((score, judge) => [1, 2].map((serving) => [`T${judge + 1}`, `cup ${cup}`, serving, score] as const))));
    const panel = panelReport(rows);
    expect(panel?.agreement?.value).toBeCloseTo(0.29, 2);
    expect(panel?.order?.chanceFloor).toBeCloseTo(1 / 4, 12);
    expect(panel?.order).not.toHaveProperty("p");
    expect(panel?.tasters.map(({ scatter }) => scatter)).toEqual([0, 0, 0, 0]);
    expect(panel?.says.at(-1)).toBe("4 tasters are too few to conclude from: this describes them only.");
  });

  it("own scatter is the standard deviation inside a cup: 1 and 3 twice over give √2", () => {
    const panel = panelReport(rowsOf([["T1", "a", 1, 1], ["T1", "a", 2, 3], ["T1", "b", 1, 5], ["T1", "b", 2, 7]]));
    expect(panel?.tasters[0]?.scatter).toBeCloseTo(Math.SQRT2, 12);
  });

  it("who missed a serving is left out, and it is said", () => {
    const panel = panelReport(rowsOf([["T1", "a", 1, 1], ["T1", "a", 2, 3], ["T2", "a", 1, 5]]));
    expect(panel?.tasters.map(({ taster }) => taster)).toEqual(["T1"]);
    expect(panel?.says.join(" ")).toContain("left out here: 1 of 2");
  });
});

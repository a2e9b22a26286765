import { describe, expect, it } from "vitest";
import { pooledReports } from "../../src/report/pooled.js";
import type { BatchReport, PooledReport } from "../../src/report/types.js";
import { brewedOn, liftTasting, reportOf } from "./reports.js";

/** Scatter of six tasters about the lift: squares sum to 4, standard deviation √(4/5), standard error √(4/30). */
const scatter = [-1, 0, 1, -1, 0, 1];

function tasted(lifts: readonly number[], attribute = "pine", spread = scatter): BatchReport[] {
  return lifts.map((lift, index) => reportOf(`B-${index}`, {
    brewed: brewedOn(index), tastings: [liftTasting(attribute, spread.map((difference) => lift + difference))],
  }));
}

function pooled(batches: readonly BatchReport[], attribute = "pine"): PooledReport {
  const found = pooledReports(batches)[attribute];
  if (found === undefined) throw new Error(`${attribute} was not pooled`);
  return found;
}

describe("tastings of a season", () => {
  it("are pooled from five batches on, with the interval of Knapp and Hartung", () => {
    // Equal standard errors weigh equally: estimate = mean = 1.5. Lifts 0.5 … 2.5 have variance 0.625, more than the
    // 4/30 of the tasters, so τ² = 0.625 − 4/30 and the standard error is √(0.625/5); t(4, 97.5 %) = 2.776445.
    const found = pooled(tasted([0.5, 1, 1.5, 2, 2.5]));
    expect(found.estimate).toBeCloseTo(1.5, 9);
    expect(found.between).toBeCloseTo(Math.sqrt(0.625 - 4 / 30), 6);
    expect((found.high ?? 0) - (found.low ?? 0)).toBeCloseTo(2 * 2.776445 * Math.sqrt(0.625 / 5), 5);
    // I² = (Q − 4)/Q with Q = Σ (lift − 1.5)² / (4/30) = 2.5 × 7.5 = 18.75.
    expect(found.heterogeneity).toBeCloseTo((18.75 - 4) / 18.75, 9);
    expect(found.says).toContain("a rise from before to after is shown over the season");
    expect(found.says).toContain("The batches really differ: 79 % of the scatter");
  });

  it("are shown, not pooled, under five batches", () => {
    const found = pooled(tasted([1, 2, 1, 2]));
    expect(found).not.toHaveProperty("estimate");
    expect(found.tastings).toHaveLength(4);
    expect(found.says).toBe("Pine: 4 batches tasted, too few to pool; each is shown.");
  });

  it("carry each batch's own interval", () => {
    // t(5, 97.5 %) = 2.570582; half-width 2.570582 × √(4/30).
    const [first] = pooled(tasted([1])).tastings;
    expect(first).toMatchObject({ batch: "B-0", lift: 1, tasters: 6 });
    expect((first?.high ?? 0) - 1).toBeCloseTo(2.570582 * Math.sqrt(4 / 30), 5);
  });

  it("leave a batch out of the pool that has no scatter to weigh it by, and say so", () => {
    const batches = [...tasted([1, 2, 1, 2, 1.5]), ...tasted([1], "pine", [0, 0, 0, 0, 0, 0]).map((batch) => ({ ...batch, batch: "B-9", slug: "b-9" }))];
    const found = pooled(batches);
    expect(found.estimate).toBeCloseTo(1.5, 9);
    expect(found.says).toContain("over 5 batches");
    expect(found.says).toContain("1 batch had no scatter between tasters to weigh by and is shown only.");
  });

  it("show no change where the interval reaches past zero", () => {
    expect(pooled(tasted([-1, 1, -0.5, 0.5, 0])).says).toContain("a change over the season is not shown");
  });

  it("call an interval clear only with all pooled attributes allowed for", () => {
    // Lifts 0.4 … 1.6: mean 0.96, variance 0.228, standard error √(0.228/5) = 0.2135. t(4) at 95 % 2.776 gives ± 0.593, clear of 0;
    // with twenty attributes the level is 99.75 %, t(4) = 6.758 (tables: 99.8 % 7.173, 99.5 % 5.598), beyond 0.96/0.2135 = 4.50.
    const lifts = [0.4, 0.6, 1, 1.2, 1.6];
    const alone = pooled(tasted(lifts));
    expect(alone.says).toContain("is shown over the season");
    const many = tasted(lifts).map((batch) => ({
      ...batch,
      tastings: batch.tastings.map((tasting) => ({
        ...tasting, attributes: Array.from({ length: 20 }, (_, index) => tasting.attributes.map((one) => ({ ...one, attribute: index === 0 ? "pine" : `other ${index}` }))).flat(),
      })),
    }));
    expect(pooled(many).low).toBeCloseTo(alone.low ?? NaN, 9);
    expect(pooled(many).says).toContain("a change over the season is not shown");
  });

  it("count a batch once, by its first tasting of the attribute", () => {
    const [batch] = tasted([1]);
    if (batch === undefined) throw new Error("one batch was asked for");
    const again = { ...batch, tastings: [...batch.tastings, liftTasting("pine", [5, 6])] };
    expect(pooled([again]).tastings.map(({ lift }) => lift)).toEqual([1]);
  });

  it("survive one taster and no tasting at all", () => {
    expect(pooled(tasted([2], "pine", [0])).tastings[0]).toEqual({ batch: "B-0", slug: "b-0", lift: 2, tasters: 1 });
    expect(pooledReports([reportOf("B-1")])).toEqual({});
  });
});

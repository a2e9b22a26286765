import { describe, expect, it } from "vitest";
import { compareBatches } from "../../src/report/comparison.js";
import type { BatchReport, ChangeRow, RecipeReport } from "../../src/report/types.js";
import { figure, reportOf } from "./reports.js";

const line = (what: string, amount: string, detail = "") => ({ what, amount, detail });

function withRecipe(batch: string, recipe: Partial<RecipeReport>, fields: Partial<BatchReport> = {}): BatchReport {
  return reportOf(batch, { recipe: { ...reportOf(batch).recipe, ...recipe }, ...fields });
}

function row(before: BatchReport, after: BatchReport, what: string): ChangeRow {
  const found = compareBatches(before, after).rows.find((one) => one.what === what);
  if (found === undefined) throw new Error(`no row ${what}`);
  return found;
}

const losing = (batch: string, loss: number, plusMinus?: number): BatchReport => reportOf(batch, { figures: { "loss-total": figure(loss, "L", plusMinus) } });

describe("a figure in two batches", () => {
  it("has changed only beyond the root of the squares of both half-widths", () => {
    // √(0.3² + 0.4²) = 0.5: 0.49 is within it, 0.51 is not.
    expect(row(losing("A", 2, 0.3), losing("B", 2.49, 0.4), "Total loss").change).toBe("within");
    expect(row(losing("A", 2, 0.3), losing("B", 2.51, 0.4), "Total loss").change).toBe("changed");
  });

  it("is printed with its unit, rounded to what its half-width supports", () => {
    expect(row(losing("A", 2.04, 0.3), losing("B", 2.51, 0.4), "Total loss")).toMatchObject({ part: "result", before: "2.0 ± 0.3 L", after: "2.5 ± 0.4 L" });
  });

  it("can't be compared when one batch lacks it, and has no row when both do", () => {
    expect(row(losing("A", 2), reportOf("B"), "Total loss")).toMatchObject({ before: "2.0 L", after: "not measured", change: "unknown" });
    expect(compareBatches(reportOf("A"), reportOf("B")).rows).toEqual([]);
  });

  it("is the same when equal, and when it prints the same and nothing says how sure it is", () => {
    expect(row(losing("A", 2, 0.3), losing("B", 2, 0.3), "Total loss").change).toBe("same");
    expect(row(losing("A", 2.01), losing("B", 2.02), "Total loss").change).toBe("same");
  });

  it("counts as within whichever of the two comes first", () => {
    expect(row(losing("B", 2.49, 0.4), losing("A", 2, 0.3), "Total loss").change).toBe("within");
  });
});

describe("a recipe in two batches", () => {
  it("is the same whatever the order and the unit it was written in", () => {
    // 3.88 oz × 28.3495 g = 110.0 g
    const before = withRecipe("A", { kettleHops: [line("Cascade", "110 g", "60 min boil"), line("Chinook", "18 g", "20 min boil")] });
    const after = withRecipe("B", { kettleHops: [line("Chinook", "18 g", "20 min boil"), line("Cascade", "3.88 oz", "60 min boil")] });
    expect(row(before, after, "Kettle hops").change).toBe("same");
  });

  it("has changed with an amount, or with how it went in", () => {
    const grist = (amount: string): BatchReport => withRecipe("A", { grist: [line("Pale malt", amount)] });
    expect(row(grist("4.60 kg"), grist("4.80 kg"), "Grist")).toMatchObject({ part: "recipe", before: "Pale malt 4.60 kg", after: "Pale malt 4.80 kg", change: "changed" });
    const hops = (detail: string): BatchReport => withRecipe("A", { kettleHops: [line("Cascade", "40 g", detail)] });
    expect(row(hops("60 min boil"), hops("20 min stand at 80 C"), "Kettle hops").change).toBe("changed");
  });

  it("is the same with another crop of the same hop, and with another pH read in the mash", () => {
    const brew = (crop: number, ph: string): BatchReport => withRecipe("A", {
      kettleHops: [line("Cascade", "40 g", `60 min boil, alpha 6.${crop % 10} %, crop ${crop}, lot A${crop}`)],
      mash: [line("mash pH", ph, "at room temperature"), line("rest", "66 C", "for 60 min")],
    });
    expect(row(brew(2025, "5.35"), brew(2026, "5.4"), "Kettle hops")).toMatchObject({ before: "Cascade 40 g (60 min boil)", change: "same" });
    expect(row(brew(2025, "5.35"), brew(2026, "5.4"), "Mash").change).toBe("same");
  });

  it("tells salts from what the water holds, which may not be recorded", () => {
    const salts = line("gypsum", "4 g", "added");
    const before = withRecipe("A", { water: [salts, line("calcium", "85 mg/L", "in the brewing water")] });
    const after = withRecipe("B", { water: [salts] });
    expect(row(before, after, "Salts added").change).toBe("same");
    expect(row(before, after, "Brewing water").change).toBe("unknown");
  });

  it("tells no dry hop from one that isn't recorded", () => {
    const hopped = reportOf("A", { dryHops: [{ hop: "Cascade", slug: "cascade", form: "pellet", into: "fermenter", grams: 110, added: "2026-03-18", notes: [] }] });
    const none = reportOf("B", { figures: { "dry-hop-mass": figure(0, "g") } });
    expect(row(hopped, none, "Dry hops")).toMatchObject({ before: "Cascade 110 g (pellet)", after: "none", change: "changed" });
    expect(row(hopped, reportOf("B"), "Dry hops")).toMatchObject({ after: "not recorded", change: "unknown" });
  });
});

describe("the comparison in one sentence", () => {
  it("tells what was changed and what moved beyond its uncertainty", () => {
    const before = withRecipe("TP-02", { yeast: line("English ale", "11 g") }, { figures: { "dry-hop-dose": figure(5, "g/L", 0.1), "loss-total": figure(2, "L", 0.3), abv: figure(5, "%", 0.2) } });
    const after = withRecipe("TP-03", { yeast: line("American ale", "11 g") }, { figures: { "dry-hop-dose": figure(8, "g/L", 0.1), "loss-total": figure(3, "L", 0.3), abv: figure(5.1, "%", 0.2) } });
    expect(compareBatches(before, after)).toMatchObject({
      with: "TP-02", withSlug: "tp-02", withTitle: "Pale TP-02",
      says: "Against TP-02, the recipe was changed in yeast; beyond what the readings leave open, dry-hop dose moved in the process and total loss in the result.",
    });
  });

  it("says when nothing moved", () => {
    expect(compareBatches(losing("A", 2, 0.3), losing("B", 2.1, 0.3)).says)
      .toBe("Against A, nothing recorded in the recipe was changed; no figure moved beyond what the readings leave open.");
  });

  it("puts recipe before process before result", () => {
    const full = (batch: string): BatchReport => withRecipe(batch, { grist: [line("Pale malt", "4 kg")] }, { figures: { "loss-total": figure(2, "L"), "dry-hop-dose": figure(5, "g/L") } });
    expect(compareBatches(full("A"), full("B")).rows.map(({ part }) => part)).toEqual(["recipe", "process", "result"]);
  });
});

import { describe, expect, it } from "vitest";
import { seriesVersions } from "../../src/report/series-versions.js";
import type { BatchReport, RecipeReport, VersionRow } from "../../src/report/types.js";
import { brewedOn, figure, reportOf } from "./reports.js";

function version(place: number, malt: string, dose: number, loss?: number): BatchReport {
  const recipe: RecipeReport = {
    ...reportOf("x").recipe, grist: [{ what: "Pale malt", amount: malt, detail: "" }, { what: "Wheat malt", amount: "250 g", detail: "" }],
    kettleHops: [{ what: "Chinook", amount: "18 g", detail: "60 min, alpha 12.4 %" }],
  };
  return reportOf(`TP-${place}`, {
    brewed: brewedOn(place), recipe, dryHops: [{ hop: "Cascade", slug: "cascade", form: "pellet", into: "fermenter", grams: 20 * dose, added: "2026-03-18", notes: [] }],
    figures: { "dry-hop-dose": figure(dose, "g/L", 0.1), "original-gravity": figure(1.05 + 0.0002 * place, "SG", 0.001), ...(loss === undefined ? {} : { "loss-total": figure(loss, "L", 0.3) }) },
  });
}

const three = [version(1, "4.45 kg", 2, 2), version(2, "4450 g", 4), version(3, "4.60 kg", 4, 3)];

function row(what: string): VersionRow {
  const found = seriesVersions(three).rows.find((each) => each.what === what);
  if (found === undefined) throw new Error(`no row of ${what}`);
  return found;
}

describe("one beer, version after version", () => {
  it("marks a change of recipe where it was made, whatever unit the amount was written in", () => {
    expect(row("Pale malt").cells).toEqual([{ text: "4.45 kg", changed: false }, { text: "4450 g", changed: false }, { text: "4.60 kg", changed: true }]);
    expect(row("Wheat malt").changed).toBe(false);
  });

  it("keeps the time of a hop with its name, and its lot out of it", () => {
    expect(row("Chinook, 60 min").cells.map(({ text }) => text)).toEqual(["18 g", "18 g", "18 g"]);
  });

  it("calls a figure changed only beyond what both readings leave open", () => {
    // Doses 2 and 4 differ by 2, more than √(0.1² + 0.1²); gravities by 0.0002, less than √2 × 0.001.
    expect(row("Dry-hop dose").cells.map(({ changed }) => changed)).toEqual([false, true, false]);
    expect(row("Original gravity").changed).toBe(false);
  });

  it("passes over a version without the figure, and holds the next against the last that had it", () => {
    expect(row("Total loss").cells).toEqual([{ text: "2.0 ± 0.3 L", changed: false }, { text: "–", changed: false }, { text: "3.0 ± 0.3 L", changed: true }]);
  });

  it("gives the figures that moved, and only those", () => {
    expect(seriesVersions(three).moved.map(({ figure: id, points }) => [id, points.length])).toEqual([["dry-hop-dose", 3], ["loss-total", 2]]);
  });

  it("says in one sentence what changed, and nothing of a single version", () => {
    expect(seriesVersions(three).says).toBe("Over 3 versions the recipe was changed in Pale malt and Cascade (dry hop); beyond what the readings leave open there moved, in the process, dry-hop dose, and in the result, total loss.");
    expect(seriesVersions(three.slice(0, 1)).says).toBe("");
  });
});

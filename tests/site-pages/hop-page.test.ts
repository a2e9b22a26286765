import { describe, expect, it } from "vitest";
import type { BatchReport, DryHopReport } from "../../src/report/types.js";
import { liftTasting, reportOf } from "../report-parts/reports.js";
import { sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

const hop = (name: string, dose: number, form = "pellet"): DryHopReport =>
  ({ hop: name, slug: name.toLowerCase(), form, into: "fermenter", grams: 20 * dose, dose, added: "2026-03-18", notes: [] });

const dryHopped = reportOf("TP-01", {
  dryHops: [hop("Cascade", 4), hop("Centennial", 2, "cone")],
  tastings: [{ ...liftTasting("orange peel", [1, 2, 3], { low: 0.4, high: 3.6 }), preference: { before: 3, after: 8, none: 1, p: 0.23, share: 8 / 11 } }],
});
const kettle = reportOf("TP-02", { recipe: { ...reportOf("x").recipe, kettleHops: [{ what: "Cascade", amount: "20 g", detail: "10 min boil" }] } });

function rowsOf(...batches: readonly BatchReport[]): string[] {
  const log = { ...sampleLog([]), batches, seasons: [], series: [], hops: [{ name: "Cascade", slug: "cascade", batches: batches.map(({ slug }) => slug) }] };
  const html = rendered(sampleSite(log), "hops/cascade.html");
  return [...html.matchAll(/<tr>([\s\S]*?)<\/tr>/gu)].slice(1).map(([, row = ""]) => row.replaceAll(/<[^>]*>/gu, " ").replaceAll(/\s+/gu, " "));
}

describe("a hop's page", () => {
  it("tells of each batch its dose and form, the hops beside it and what tasters said", () => {
    const [row = ""] = rowsOf(dryHopped);
    expect(row).toMatch(/80 g .*, pellet/u);
    expect(row).toMatch(/4\.0 g\/L/u);
    expect(row).toContain("Centennial");
    expect(row).toMatch(/orange peel \+ ?2\.0 ?\( ?0\.4 to 3\.6 ?\)/u);
    expect(row).toContain("8 of 11 preferred it after the hops, 1 neither");
  });

  it("says where a batch had it in the kettle only, how much and when, and that it wasn't tasted", () => {
    const [row = ""] = rowsOf(kettle);
    expect(row).toContain("in the kettle only");
    expect(row).toMatch(/20 g, 10 min boil/u);
    expect(row).toContain("not tasted");
  });
});

import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/report/season.js";
import type { BatchReport, SeasonSeries } from "../../src/report/types.js";
import { fixture } from "../statistics/fixture.js";
import { brewedOn, figure, reportOf } from "./reports.js";

const named = (index: number): string => `B-${String(index + 1).padStart(2, "0")}`;

function brewed(values: readonly number[], fields: (index: number) => Partial<BatchReport> = () => ({})): BatchReport[] {
  return values.map((value, index) => {
    const { figures = {}, ...rest } = fields(index);
    return reportOf(named(index), { brewed: brewedOn(index), figures: { "brewhouse-efficiency": figure(value, "%"), ...figures }, ...rest });
  });
}

function efficiency(batches: readonly BatchReport[]): SeasonSeries & { readonly control: NonNullable<SeasonSeries["control"]> } {
  const found = seasonReport("S", "s", batches).series.find((series) => series.figure === "brewhouse-efficiency");
  if (found?.control === undefined) throw new Error("no control chart of the brewhouse efficiency");
  return { ...found, control: found.control };
}

/** NIST/SEMATECH e-Handbook 6.3.2.2, flow data. */
const flow = fixture("imr_example").filter((row) => row.text("example") === "nist_6.3.2.2_flow").map((row) => row.number("x"));

describe("process over time", () => {
  it("has the limits of the handbook's flow data, by the exact divisor, provisional for ten batches", () => {
    // Published with d2 = 1.128: 50.81, 45.8159 to 55.8041; by 2/√π 45.8176 to 55.8024 (reference, 7.1).
    const { control, says } = efficiency(brewed(flow));
    expect(control).toMatchObject({ standing: "provisional", signals: [] });
    expect(control.center).toBeCloseTo(50.81, 10);
    expect(control.lower).toBeCloseTo(45.8176, 4);
    expect(control.upper).toBeCloseTo(55.8024, 4);
    expect(says).toContain("Provisional limits, since 10 batches are fewer than 15: 45.8 % to 55.8 % around 50.8 %");
  });

  it.each([[2, "none"], [7, "none"], [8, "provisional"], [14, "provisional"], [15, "set"], [100, "set"]] as const)("of %i batches has limits that are %s", (n, standing) => {
    const { control, says } = efficiency(brewed(Array.from({ length: n }, (_, index) => 70 + index % 3)));
    expect(control.standing).toBe(standing);
    expect(/too few for limits/u.test(says)).toBe(standing === "none");
    expect(/Provisional/u.test(says)).toBe(standing === "provisional");
  });

  it("has none for one batch", () => {
    const found = seasonReport("S", "s", brewed([70])).series.find((series) => series.figure === "brewhouse-efficiency");
    expect(found?.control).toBeUndefined();
    expect(found?.says).toContain("One batch shows no trend");
  });

  it("names the batch beyond a limit and what was different in it", () => {
    const batches = brewed([70, 71, 70, 71, 70, 71, 70, 60, 71, 70, 71, 70], (index) => ({
      equipment: index === 7 ? "borrowed" : "own", figures: { "original-gravity": figure(index === 7 ? 1.07 : 1.05, "SG", 0.001) },
    }));
    const { control } = efficiency(batches);
    expect(control.signals.map(({ batch, rule, side }) => [batch, rule, side])).toEqual([["B-08", "beyond-limit", "below"]]);
    expect(control.signals[0]?.different).toEqual(["the only one with vessel borrowed", "the highest original gravity (1.0700 ± 0.0010)"]);
  });

  it("says so when nothing on record sets a batch apart, and calls no reading highest that the others' limits reach", () => {
    const { control } = efficiency(brewed([70, 71, 70, 71, 70, 71, 70, 60, 71, 70], (index) => ({ figures: { "original-gravity": figure(index === 7 ? 1.051 : 1.05, "SG", 0.001) } })));
    expect(control.signals[0]?.different).toEqual([]);
    expect(control.signals[0]?.says).toBe("B-08 below the lower limit. Nothing on record sets it apart.");
  });

  it("tells a run of eight once, with what all of it share", () => {
    // Ten on 72 ± 0.5 after ten on 70 ± 0.5: the centre is 71, the last ten lie above it.
    const values = Array.from({ length: 20 }, (_, index) => (index < 10 ? 70 : 72) + (index % 2 === 0 ? 0.5 : -0.5));
    const runs = efficiency(brewed(values, (index) => ({ recipe: { ...reportOf("x").recipe, yeast: { what: index < 10 ? "old" : "new", amount: "", detail: "" } } })))
      .control.signals.filter(({ rule }) => rule === "run-of-eight");
    expect(runs.map(({ since, batch, side }) => [since, batch, side])).toEqual([["B-01", "B-08", "below"], ["B-11", "B-18", "above"]]);
    expect(runs[1]?.different).toEqual(["all with yeast new"]);
  });

  it("holds the original gravity against its plan, batch by batch", () => {
    const report = seasonReport("S", "s", [1.05, 1.052, 1.049].map((gravity, index) => reportOf(named(index), {
      brewed: brewedOn(index), figures: { "original-gravity": figure(gravity, "SG", 0.001) },
      planned: index === 2 ? {} : { "original-gravity": { value: 1.05, unit: "SG", method: "direct-reading" } },
    })));
    const found = report.series.find((series) => series.figure === "original-gravity-off-plan");
    expect(found?.points.map(({ value }) => value.toFixed(3))).toEqual(["0.000", "0.002"]);
    expect(found?.without).toEqual([{ batch: "B-03", why: "no plan for it is recorded" }]);
  });

  it("of equal values has no signal", () => {
    expect(efficiency(brewed(Array.from({ length: 9 }, () => 0.1))).control).toMatchObject({ signals: [], upper: 0.1, lower: 0.1 });
  });
});

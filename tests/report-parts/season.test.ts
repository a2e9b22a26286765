import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/report/season.js";
import type { BatchReport, RelationReport, SeasonReport, SeasonSeries } from "../../src/report/types.js";
import { expectedValue, fixture } from "./fixture.js";
import { brewedOn, figure, liftTasting, reportOf, seasonOf } from "./reports.js";

const season = (batches: readonly BatchReport[]): SeasonReport => seasonReport("Pales 2026", "pales-2026", batches);

function relation(report: SeasonReport, x: string, y: string): RelationReport {
  const found = report.relations.find((one) => one.x === x && one.y === y);
  if (found === undefined) throw new Error(`no relation of ${y} with ${x}`);
  return found;
}

function series(report: SeasonReport, id: string): SeasonSeries {
  const found = report.series.find((one) => one.figure === id);
  if (found === undefined) throw new Error(`no series of ${id}`);
  return found;
}

const lossAgainstDose = (batches: readonly BatchReport[]): RelationReport => relation(season(batches), "dry-hop-dose", "loss-total");

const example = "invented_8_batches";
const eight = fixture("trend_example").filter((row) => row.text("example") === example).map((row) => [row.number("x"), row.number("y")] as const);
const stat = (name: string): number => expectedValue("trend_expected", name, example);

describe("one thing against another", () => {
  const found = lossAgainstDose(seasonOf(eight));

  it("gives slope, interval and exact Kendall p of the worked example", () => {
    // trend_expected.csv: COMPUTED with R and scipy, which agree.
    expect(found.n).toBe(8);
    expect(found.slope).toBeCloseTo(stat("slope"), 10);
    expect(found.low).toBeCloseTo(stat("slope_lo95"), 10);
    expect(found.high).toBeCloseTo(stat("slope_hi95"), 10);
    expect(found.p).toBeCloseTo(stat("kendall_p"), 9);
    expect(found.robust?.slope).toBeCloseTo(stat("theil_sen_slope"), 10);
    expect(found.robust?.low).toBeCloseTo(stat("theil_lo95_exact"), 9);
    expect(found.robust?.high).toBeCloseTo(stat("theil_hi95_exact"), 9);
  });

  it("draws the line over the data's own range, with the interval of the mean", () => {
    const line = found.line ?? [];
    expect([line[0]?.x, line.at(-1)?.x]).toEqual([1, 8]);
    // At the mean of x, 4.5, the half-width is t(6, 97.5 %) s / √8 = 2.446912 × 0.04535136 / 2.828427.
    const middle = line.find(({ x }) => x === 4.5);
    expect(middle?.y).toBeCloseTo(stat("intercept") + 4.5 * stat("slope"), 8);
    expect((middle?.high ?? 0) - (middle?.y ?? 0)).toBeCloseTo(2.446912 * stat("resid_sd") / Math.sqrt(8), 7);
  });

  it("adjusts by Holm over all trends of the page", () => {
    // Dose rises with the date here, so loss over time has the same p: two tests, p × 2.
    expect(found.adjusted).toBeCloseTo(2 * stat("kendall_p"), 9);
  });

  it("says at most that it is possible from six batches to nine", () => {
    expect(found.claim).toBe("possible");
    expect(found.says).toContain("Possible, for other batches to confirm: each extra g/L of dry-hop dose went with 0.025 L less total loss (0.008 to 0.043), 8 batches");
  });

  it("puts Theil–Sen beside it, and says that Kendall's p is exact", () => {
    // trend_expected.csv: slope −0.025, exact interval −0.048 to −0.00667.
    expect(found.says).toContain("Theil–Sen, which one odd batch hardly moves, gives 0.025 L less total loss (0.007 to 0.048); the p is Kendall's, exact.");
  });

  it("says it plainly from ten batches on", () => {
    // Loss 1.5 + 0.12 × dose, ± 0.05 by turns.
    const ten = lossAgainstDose(seasonOf(Array.from({ length: 11 }, (_, dose) => [dose, 1.5 + 0.12 * dose + (dose % 2 === 0 ? 0.05 : -0.05)] as const)));
    expect(ten.claim).toBe("shown");
    expect(ten.says).toMatch(/^Each extra g\/L of dry-hop dose went with 0\.1\d\d? L more total loss \(0\.\d+ to 0\.\d+\), 11 batches; p /u);
  });

  it("says too few under six, and fits nothing, however straight the points", () => {
    for (const n of [1, 2, 3, 5]) {
      const few = lossAgainstDose(seasonOf(eight.slice(0, n)));
      expect(few).toMatchObject({ claim: "too-few", n });
      expect(few).not.toHaveProperty("slope");
      expect(few).not.toHaveProperty("line");
      expect(few.says).toContain("too few to speak of a trend");
    }
  });

  it("shows nothing where order is all chance", () => {
    const noise = lossAgainstDose(seasonOf([[1, 2], [2, 3], [3, 1], [4, 3.5], [5, 1.5], [6, 2.5], [7, 2.2], [8, 2.1], [9, 1.8], [10, 2.4]]));
    expect(noise.claim).toBe("none");
    expect(noise.says).toContain("a trend is not shown");
  });

  it("has no slope when all doses are equal, and says so", () => {
    const same = lossAgainstDose(seasonOf([2, 2.1, 1.9, 2.2, 2.3, 1.8, 2.4].map((loss) => [5, loss] as const)));
    expect(same).toMatchObject({ claim: "none", n: 7 });
    expect(same).not.toHaveProperty("slope");
    expect(same.says).toContain("all 7 batches had the same dry-hop dose within what the readings can tell (about 5.0 g/L), so there is no slope to fit");
  });

  it("takes doses for equal that the readings can't tell apart", () => {
    // 4.9 to 5.1 g/L, each ± 0.2: the ends differ by 0.2, less than √(0.2² + 0.2²) = 0.28.
    const batches = [4.9, 5, 5.1, 4.95, 5.05, 5, 4.98].map((dose, index) => reportOf(`B-${index}`, {
      brewed: brewedOn(index), figures: { "dry-hop-dose": figure(dose, "g/L", 0.2), "loss-total": figure(2 + 0.1 * index, "L") },
    }));
    expect(lossAgainstDose(batches).says).toContain("had the same dry-hop dose");
  });

  it("says so when the outcome was the same in all", () => {
    const flat = lossAgainstDose(seasonOf(Array.from({ length: 7 }, (_, dose) => [dose, 2] as const)));
    expect(flat).toMatchObject({ claim: "none" });
    expect(flat.says).toContain("total loss was the same in all 7 batches");
  });

  it("names what moved together, and refuses to split beyond an inflation of ten", () => {
    // confounding_example.csv: r .9129, variance inflation 6.
    const rows = fixture("confounding_example");
    const confounded = (temperature: (index: number) => number): RelationReport => lossAgainstDose(rows.map((row, index) => reportOf(`B-${index}`, {
      brewed: brewedOn(index),
      figures: { "dry-hop-dose": figure(row.number("dose"), "g/L"), "dry-hop-temperature": figure(temperature(index), "C"), "loss-total": figure(row.number("y"), "L") },
    })));
    const warned = confounded((index) => rows[index]?.number("temp") ?? 0);
    expect(warned.together?.[0]?.figure).toBe("dry-hop-temperature");
    expect(warned.together?.[0]?.inflation).toBeCloseTo(expectedValue("confounding_expected", "VIF"), 9);
    expect(warned.says).toContain("Temperature in contact moved largely along with dry-hop dose: part of this may be due to that.");
    const aliased = confounded((index) => rows[index]?.number("temp_aliased") ?? 0);
    expect(aliased.together).toEqual([{ figure: "dry-hop-temperature", title: "Temperature in contact" }]);
    expect(aliased.says).toContain("which of them it goes with can't be told");
  });
});

describe("a season over time", () => {
  it("is in brew order, whatever order the batches came in", () => {
    const batches = seasonOf(eight);
    const shuffled = [5, 2, 7, 0, 3, 6, 1, 4].flatMap((place) => batches[place] ?? []);
    expect(season(shuffled.map((batch) => ({ ...batch })))).toEqual(season(batches));
    expect(season(shuffled).batches).toEqual(["B-01", "B-02", "B-03", "B-04", "B-05", "B-06", "B-07", "B-08"]);
  });

  it("puts two batches of one day in the order of their numbers, a time before noon before a bare date", () => {
    const named = (batch: string, brewed: string): BatchReport => reportOf(batch, { brewed });
    expect(season([named("B", "2026-03-07"), named("A", "2026-03-07"), named("C", "2026-03-07 08:00"), named("D", "2026-03-06")]).batches)
      .toEqual(["D", "C", "A", "B"]);
  });

  it("lists the batches without a figure, and why", () => {
    const report = season([...seasonOf([[5, 2]]), reportOf("B-02", { brewed: "2026-02-01", missing: { "loss-total": "package.volume isn't recorded" } })]);
    expect(series(report, "loss-total").points.map(({ batch, value }) => [batch, value])).toEqual([["B-01", 2]]);
    expect(series(report, "loss-total").without).toEqual([{ batch: "B-02", why: "package.volume isn't recorded" }]);
  });

  it("states no trend for one batch, nor for a few", () => {
    expect(series(season(seasonOf([[5, 2]])), "loss-total").says).toBe("One batch, B-01: 2.0 L. One batch shows no trend.");
    expect(series(season(seasonOf([[5, 2], [6, 3]])), "loss-total").says).toContain("2 batches, from 2.0 L (B-01) to 3.0 L (B-02), middle value 2.5. 2 batches are too few to speak of a trend.");
  });

  it("tells what the brewers set without testing it", () => {
    const dose = series(season(seasonOf(eight)), "dry-hop-dose");
    expect(dose).not.toHaveProperty("claim");
    expect(dose.says).toBe("8 batches, from 1.0 g/L (B-01) to 8.0 g/L (B-08), middle value 4.5.");
  });

  it("tells a drift by the month", () => {
    // Loss rises 0.1 L a batch, ± 0.01 by turns: slope 0.1 − 0.06/143 a batch (Σ x e = −0.06, Σ x² = 143); a fortnight
    // apart that is × 30.4375 / 14 = 0.2165 L a month.
    const found = series(season(seasonOf(Array.from({ length: 12 }, (_, place) => [5, 1 + 0.1 * place + (place % 2 === 0 ? 0.01 : -0.01)] as const))), "loss-total");
    expect(found.claim).toBe("shown");
    expect(found.says).toContain("It rose over the season, by 0.216 L a month (0.212 to 0.22");
  });

  it("survives an empty season and one of a single planned batch", () => {
    expect(season([]).summary).toContain("No batch of this season is recorded.");
    const planned = season([reportOf("B-01", { status: "planned" })]);
    expect(planned.summary).toBe("1 batch with brew dates on 2026-03-07: 1 planned. Too few batches have the figures to ask about any trend. No tasting scored an attribute before and after.");
    expect(planned.relations).toEqual([]);
  });

  it("gives rows with the hops of each batch, dry hops first", () => {
    const batch = reportOf("B-01", {
      dryHops: [{ hop: "Cascade", slug: "cascade", form: "pellet", into: "fermenter", added: "2026-03-18", notes: [] }],
      recipe: { ...reportOf("x").recipe, kettleHops: [{ what: "Chinook", amount: "18 g", detail: "" }, { what: "Cascade", amount: "20 g", detail: "" }] },
    });
    expect(season([batch]).rows[0]).toMatchObject({ batch: "B-01", hops: ["Cascade", "Chinook"] });
  });
});

describe("what tasters found, against the dose", () => {
  const tasted = (lifts: readonly number[], attribute = "orange peel"): BatchReport[] => lifts.map((lift, index) => reportOf(`B-${index}`, {
    brewed: brewedOn(index), figures: { "dry-hop-dose": figure(index + 1, "g/L") },
    tastings: [liftTasting(attribute, [lift - 1, lift, lift + 1, lift, lift - 1, lift + 1])],
  }));

  it("relates the lift of an attribute to the dose", () => {
    // Lift 0.4 × dose, ± 0.1 by turns.
    const found = relation(season(tasted(Array.from({ length: 11 }, (_, index) => 0.4 * (index + 1) + (index % 2 === 0 ? 0.1 : -0.1)))), "dry-hop-dose", "lift-orange-peel");
    expect(found).toMatchObject({ n: 11, claim: "shown", yTitle: "Rise in orange peel", yUnit: "points" });
    expect(found.says).toMatch(/^Each extra g\/L of dry-hop dose went with 0\.4\d* points more orange peel \(/u);
  });

  it("leaves out batches without a tasting, and those tasted against another batch", () => {
    const batches = tasted([1, 2, 3]);
    const [first, second, third] = batches;
    if (first === undefined || second === undefined || third === undefined) throw new Error("three batches were asked for");
    const across = { ...second, tastings: second.tastings.map((tasting) => ({ ...tasting, samples: { before: "B-0/keg", after: "keg" } })) };
    expect(relation(season([first, across, { ...third, tastings: [] }]), "dry-hop-dose", "lift-orange-peel").points.map(({ batch }) => batch)).toEqual(["B-0"]);
  });

  it("keeps two attributes apart whose names shorten to one address", () => {
    const [one] = tasted([1], "orange peel");
    const [other] = tasted([1], "Orange-Peel");
    if (one === undefined || other === undefined) throw new Error("two batches were asked for");
    const ids = season([one, { ...other, batch: "B-9", slug: "b-9" }]).relations.map(({ x, y }) => `${x} ${y}`);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

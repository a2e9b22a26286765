import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/report/season.js";
import type { BatchReport, DryHopReport, GroupReport, RelationReport } from "../../src/report/types.js";
import { brewedOn, figure, liftTasting, reportOf } from "./reports.js";

const hop = (name: string, grams = 80, form = "pellet"): DryHopReport => ({ hop: name, slug: name.toLowerCase(), form, into: "fermenter", grams, added: "2026-03-18", notes: [] });

/** Loss by vessel: [vessel, loss, dose]. */
function brewed(rows: readonly (readonly [vessel: string, loss: number, dose?: number])[]): BatchReport[] {
  return rows.map(([equipment, loss, dose], index) => reportOf(`B-${String(index + 1).padStart(2, "0")}`, {
    brewed: brewedOn(index), equipment,
    figures: { "loss-total": figure(loss, "L"), ...(dose === undefined ? {} : { "dry-hop-dose": figure(dose, "g/L") }) },
  }));
}

function lossBy(by: string, batches: readonly BatchReport[]): GroupReport {
  const found = seasonReport("S", "s", batches).groups.find((group) => group.by === by && group.y === "loss-total");
  if (found === undefined) throw new Error(`no loss by ${by}`);
  return found;
}

describe("one outcome by something named", () => {
  it("has the exact p of Mann and Whitney: 5 against 5, wholly apart, 2 of 252 orders", () => {
    const found = lossBy("vessel", brewed([2, 2.1, 2.2, 2.3, 2.4, 3, 3.1, 3.2, 3.3, 3.4].map((loss, index) => [index < 5 ? "bucket" : "keg", loss] as const)));
    // C(10, 5) = 252 orders, two of them as far out.
    expect(found.apart?.p).toBeCloseTo(2 / 252, 12);
    expect(found.apart?.difference).toBeCloseTo(-1, 12);
    // Pooled standard deviation √0.025, standard error 0.1, t(8, 97.5 %) = 2.306004.
    expect(found.apart?.low).toBeCloseTo(-1.2306004, 6);
    expect(found.groups.map(({ name, mean, points }) => [name, Number(mean.toFixed(6)), points.length])).toEqual([["bucket", 2.2, 5], ["keg", 3.2, 5]]);
  });

  it("names the odd one out among three, its p counted three times", () => {
    const values = [2, 2.1, 2.2, 2.05, 2.15, 2.25, 4, 4.1, 4.2, 4.3];
    const found = lossBy("vessel", brewed(values.map((loss, index) => [index < 3 ? "a" : index < 6 ? "b" : "c", loss] as const)));
    expect(found.apart?.group).toBe("c");
    // C(10, 4) = 210 orders, two as far out, three groups tried.
    expect(found.apart?.p).toBeCloseTo(3 * 2 / 210, 12);
  });

  it("refuses groups under three, with the counts", () => {
    const found = lossBy("vessel", brewed(Array.from({ length: 8 }, (_, index) => [index < 2 ? "keg" : "bucket", 2 + 0.1 * index] as const)));
    expect(found).toMatchObject({ claim: "none" });
    expect(found).not.toHaveProperty("apart");
    expect(found.says).toBe("Total loss by vessel: no group of at least 3 can be held against at least 3 others that differ (6 bucket and 2 keg).");
  });

  it("says too few under six batches, and that all had the same", () => {
    expect(lossBy("vessel", brewed([["a", 1], ["b", 2], ["a", 3]])).says).toBe("Total loss by vessel: 3 batches (2 a and 1 b) are too few to compare.");
    expect(lossBy("vessel", brewed([["a", 1], ["a", 2]])).says).toBe("Total loss by vessel: all 2 batches had the same, a.");
  });

  it("names what else differed between the groups, and refuses to split it", () => {
    // The keg always had 10 g/L, the bucket always 5: one follows from the other.
    const found = lossBy("vessel", brewed([2, 2.1, 2.2, 2.3, 2.4, 3, 3.1, 3.2, 3.3, 3.4].map((loss, index) => [index < 5 ? "bucket" : "keg", loss, index < 5 ? 5 : 10] as const)));
    expect(found.together).toEqual([{ figure: "dry-hop-dose", title: "Dry-hop dose" }]);
    expect(found.says).toContain("Vessel bucket and dry-hop dose changed together in these batches: which of them it goes with can't be told.");
  });

  it("puts a batch of two hops with the one of more than half the mass, else under mixed", () => {
    const batches = [[hop("Cascade", 80), hop("Chinook", 20)], [hop("Cascade", 50), hop("Chinook", 50)], [hop("Cascade")]].map((dryHops, index) =>
      reportOf(`B-${index}`, { brewed: brewedOn(index), dryHops, figures: { "loss-total": figure(2 + index, "L") } }));
    expect(lossBy("hop", batches).groups.map(({ name, points }) => [name, points.length])).toEqual([["Cascade", 2], ["mixed", 1]]);
  });

  it("leaves out batches that don't say, and those in no vessel", () => {
    const found = lossBy("vessel", [...brewed([["a", 1], ["b", 2]]), reportOf("B-9", { brewed: brewedOn(9), figures: { "loss-total": figure(3, "L") } })]);
    expect(found.n).toBe(2);
  });
});

describe("the list of pairs", () => {
  const full = (n: number): BatchReport[] => Array.from({ length: n }, (_, index) => reportOf(`B-${String(index).padStart(2, "0")}`, {
    brewed: brewedOn(index), packaged: brewedOn(index + 1), equipment: "a", dryHops: [hop("Cascade")], recipe: { ...reportOf("x").recipe, yeast: { what: "ale", amount: "", detail: "" } },
    figures: Object.fromEntries(["dry-hop-dose", "dry-hop-contact", "dry-hop-temperature", "loss-total", "dry-hop-ph-rise", "dry-hop-gravity-drop"].map((id, place) => [id, figure(1 + ((index + 1) * (place + 3)) % 11, "x")])),
    tastings: [{ ...liftTasting("orange peel", [1, 2, index % 4]), date: brewedOn(index + 2), preference: { before: 2, after: 5, none: 0, p: 1, share: 0.2 + 0.05 * (index % 9) } }],
  }));
  const report = seasonReport("S", "s", full(12));
  const asked = new Set([...report.relations.map(({ x, y }) => `${x} ${y}`), ...report.groups.map(({ by, y }) => `${by} ${y}`)]);

  it("holds every setting against every outcome, but the wait for the tasting against what was measured before it", () => {
    const outcomes = ["lift-orange-peel", "preference-share", "loss-total", "dry-hop-ph-rise", "dry-hop-gravity-drop"];
    for (const x of ["dry-hop-dose", "dry-hop-contact", "dry-hop-temperature", "form", "hop", "yeast", "vessel"]) for (const y of outcomes) expect(asked).toContain(`${x} ${y}`);
    expect([...asked].filter((pair) => pair.startsWith("days-to-tasting"))).toEqual(["days-to-tasting lift-orange-peel", "days-to-tasting preference-share"]);
  });

  it("counts the days from the packaging to the first tasting", () => {
    const waited = report.relations.find(({ x }) => x === "days-to-tasting");
    expect(new Set(waited?.points.map((point) => point.x))).toEqual(new Set([14]));
    expect(waited?.says).toContain("had the same time to the tasting");
  });

  it("says how many questions were put and that each p allows for them", () => {
    expect(report.tested.says).toContain(`${report.tested.count} questions were put to this season's figures`);
  });
});

describe("a plateau in dose", () => {
  /** Lift over dose, scattered ± 0.1 by turns, from twelve batches of 1 to 12 g/L. */
  function liftOverDose(lift: (dose: number) => number): RelationReport {
    const batches = Array.from({ length: 12 }, (_, index) => reportOf(`B-${String(index).padStart(2, "0")}`, {
      brewed: brewedOn(index), figures: { "dry-hop-dose": figure(index + 1, "g/L") },
      tastings: [liftTasting("orange peel", [-1, 0, 1].map((each) => lift(index + 1) + each + (index % 2 === 0 ? 0.1 : -0.1)))],
    }));
    const found = seasonReport("S", "s", batches).relations.find(({ y }) => y === "lift-orange-peel");
    if (found === undefined) throw new Error("no lift over dose");
    return found;
  }

  it("is shown where the lift levels off, with what a gram is worth at both ends", () => {
    const { bend, says, line } = liftOverDose((dose) => 4 * (1 - Math.exp(-dose / 3)));
    expect(bend?.claim).toBe("shown");
    expect(says).toContain("It is not a straight line but levels off");
    expect(bend?.ends.map(({ x }) => x)).toEqual([1, 12]);
    expect(bend?.ends[0]?.low).toBeGreaterThan(0);
    // The curve that is drawn: steeper at the foot than at the top.
    const [first, second, ...rest] = line ?? [];
    expect((second?.y ?? 0) - (first?.y ?? 0)).toBeGreaterThan((rest.at(-1)?.y ?? 0) - (rest.at(-2)?.y ?? 0));
  });

  it("is not assumed: a straight rise stays straight, and says so", () => {
    const { bend, says, line = [] } = liftOverDose((dose) => 0.3 * dose);
    expect(bend?.claim).toBe("none");
    expect(says).toContain("No bend is shown: a curve fits no better than the straight line");
    const steps = line.slice(1).map(({ y }, index) => y - (line[index]?.y ?? 0));
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-9);
  });
});

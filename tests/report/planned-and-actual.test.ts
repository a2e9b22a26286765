import { describe, expect, it } from "vitest";
import type { BatchReport, OutlookLine, PlanRow } from "../../src/report/index.js";
import { at, batchOf, BENCH, everyHours, logOf, logReportOf, type Corners, type Fields } from "./bench-batch.js";

/** Long before anything is brewed. */
const before = { asOf: "2026-03-01" };

function planned(fields: Fields): BatchReport {
  return batchOf({ yeast: undefined, ...fields }, before);
}

describe("planned figures", () => {
  const { planned: figures, status } = planned({
    plan: "{original_gravity: 1.048, final_gravity: 1.010, fermenter: 20 L, dry_hop: 5 g/L, dry_hop_for: 4 d, dry_hop_temperature: 11 C to 13 C, crash: 0 C, crash_for: 2 d, package: 18 L, carbonation: 2.48 vol}",
    hops: "[{hop: Chinook, amount: 20 g, alpha: 10 %, boil: 60 min}]",
  });

  it.each([
    ["abv", 5.045, 0.005, "Balling, as in the batch worked by hand: 11.912 °P to 2.561 °P"],
    ["original-extract", 11.912, 0.001, "ASBC cubic at 1.048"],
    ["dry-hop-mass", 100, 1e-9, "5 g/L in 20 L"],
    ["dry-hop-contact", 6, 1e-9, "4 days warm and 2 cold, to the transfer"],
    ["dry-hop-temperature", 8, 1e-9, "(4 × 12 + 2 × 0)/6"],
    ["package-yield", 90, 1e-9, "18 of 20 L"],
    ["keg-pressure", 55.2, 3.5, "printed chart, 32 °F: 2.48 volumes at 8 psi, read to half a psi"],
    ["bitterness", 23.5, 0.2, "Tinseth by hand: 1.65 × 0.000125^0.048 × 0.9093/4.15 = 0.2348; 0.2348 × 0.1 × 20 000/20"],
  ] as const)("hold %s of %d (± %d): %s", (id, value, within, _derivation) => {
    expect(Math.abs((figures[id]?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(within);
  });

  it("belong to a batch that is planned, and claim no reading's uncertainty", () => {
    expect(status).toBe("planned");
    for (const figure of Object.values(figures)) expect(figure).not.toHaveProperty("plusMinus");
  });
});

describe("plan against actual", () => {
  function row(figure: string, fields: Fields, temperature?: Corners): PlanRow | undefined {
    const files = temperature === undefined ? {} : { "fermentation.csv": logOf(temperature, everyHours(temperature, 1)) };
    return batchOf(fields, { files }).planRows.find((each) => each.figure === figure);
  }
  const gravity = (written: string) => row("original-gravity", { plan: "{original_gravity: 1.050}", fermenter: `{gravity: ${written}}` });

  // A hydrometer good to ± 0.001 is good to 2 × 0.001/√3 = 0.00115 at 95 %.
  it.each([["1.050", "as planned", "as planned"], ["1.051", "as planned", "0.0010 above, within what the readings can be off by"], ["1.0488", "differs", "0.0012 below the plan"], ["1.052", "differs", "0.0020 above the plan"]])(
    "a gravity of %s for a planned 1.050 is %s", (written, verdict, says) => {
      expect(gravity(written)).toMatchObject({ verdict, says });
    });

  it("counts as planned anywhere inside a planned band, and from the nearer end outside it", () => {
    const cooled: Corners = [[0, 18], [300, 18], [308, 2], [400, 2]];
    const held = (hours: number) => row("crash-hours", {
      plan: "{crash_for: 1 d to 2 d}", fermentation: "{log: fermentation.csv}", crash: `{set: 2 C, from: ${at(300)}}`, transfer: `{at: ${at(307.5 + hours)}}`,
    }, cooled);
    expect(held(30)).toMatchObject({ verdict: "as planned", difference: 0 });
    expect(held(60)?.difference).toBeCloseTo(12, 6);
    expect(held(60)?.verdict).toBe("differs");
    expect(held(20)?.difference).toBeCloseTo(-4, 6);
  });

  it("is open for what hasn't been read", () => {
    expect(row("original-gravity", { plan: "{original_gravity: 1.050}" })).toMatchObject({ verdict: "open", says: "not read yet" });
  });

  it("is empty without a plan", () => {
    expect(batchOf({ fermenter: "{gravity: 1.050}" }).planRows).toEqual([]);
  });
});

describe("what to prepare", () => {
  const lines = (fields: Fields): readonly OutlookLine[] => planned(fields).outlook;
  const line = (id: string, fields: Fields) => lines(fields).find((each) => each.id === id);

  it("heats strike water by the 0.2 rule", () => {
    // Palmer's infusion rule in US units, by hand: 15 qt on 12 lb are 1.25 qt/lb; 0.2/1.25 × (152 − 68) + 152 = 165.44 °F = 74.13 °C. Rounding 0.2 qt/lb is the rule's own.
    const strike = line("strike-temperature", { grist: "[{malt: Pale malt, amount: 12 lb}]", mash: "{water: 15 qt, rests: [{temperature: 152 F}]}" });
    expect(strike).toMatchObject({ unit: "C", value: expect.closeTo(74.13, 1) as number, caution: expect.stringContaining("scalds") as string });
  });

  it("adds what the boil takes and what the grain keeps", () => {
    // 20 L wanted, 3 L/h boiled off, 5 kg of grain that keep 0.8 to 1.1 L each: 23 L, 27 to 28.5 L.
    const fields = { plan: "{fermenter: 20 L}", boil: "{for: 60 min}", grist: "[{malt: Pale malt, amount: 5 kg}]" };
    expect(line("before-boil", fields)?.value).toBeCloseTo(23, 9);
    expect(line("water", fields)).toMatchObject({ low: expect.closeTo(27, 9) as number, high: expect.closeTo(28.5, 9) as number });
  });

  it("says what efficiency the plan asks for while this brewery's own isn't known", () => {
    // 20 L at 1.048: 20 × 0.998204 × 1.048 × 0.11912 = 2.4923 kg of extract, of 4 × 0.96 × 0.8 = 3.072 kg: 81.1 %.
    const fields = { plan: "{fermenter: 20 L, original_gravity: 1.048}", grist: "[{malt: Pale malt, amount: 4 kg, extract: 80 %, moisture: 4 %}]" };
    expect(line("efficiency-needed", fields)?.value).toBeCloseTo(81.13, 1);
  });

  it("takes off what pellets keep, as a range with its source", () => {
    // 5 g/L in 20 L are 0.1 kg, at 7 to 8.35 L/kg (a vendor's measurement; a US gallon a pound): 0.7 to 0.835 L.
    const fields = { plan: "{fermenter: 20 L, dry_hop: 5 g/L}" };
    expect(line("hop-loss", fields)).toMatchObject({ low: expect.closeTo(0.7, 9) as number, high: expect.closeTo(0.835, 9) as number, basis: "common practice" });
    expect(line("package-expected", fields)).toMatchObject({ low: expect.closeTo(19.165, 9) as number, high: expect.closeTo(19.3, 9) as number, basis: "common practice" });
    expect(line("hop-loss", { ...fields, dry_hops: "[{hop: Cascade, form: cone}]" })).toMatchObject({ low: expect.closeTo(1, 9) as number, high: expect.closeTo(1.5, 9) as number });
  });

  it("is nothing for a finished batch", () => {
    expect(lines({ plan: "{fermenter: 20 L, dry_hop: 5 g/L}", status: "packaged" })).toEqual([]);
  });
});

describe("what this brewery's own batches show", () => {
  const HOPS_G = [0, 50, 100, 150, 200];

  /** Packaged batches of 20 L that lost 1 L and 8 L for each kilogram of hops, and what each strays from that. */
  function made(strays: readonly number[], more: Fields = {}): Fields[] {
    return strays.map((stray, index) => ({
      batch: `OWN-${String(index + 1)}`, brewed: `2026-01-0${String(index + 1)}`, yeast: undefined,
      grist: "[{malt: Pale malt, amount: 4 kg, extract: 80 %, moisture: 4 %}]", fermenter: "{volume: 20 L, gravity: 1.048}",
      dry_hops: HOPS_G[index] === 0 ? "[]" : `[{hop: Cascade, form: pellet, amount: ${String(HOPS_G[index] ?? 0)} g}]`,
      package: `{into: keg, volume: ${(19 - 0.008 * (HOPS_G[index] ?? 0) - stray).toFixed(6)} L}`,
      ...more,
    }));
  }

  function outlook(earlier: readonly Fields[], more: Fields = {}): readonly OutlookLine[] {
    const next = { batch: "NEXT", yeast: undefined, grist: "[{malt: Pale malt, amount: 4 kg, extract: 80 %, moisture: 4 %}]", plan: "{fermenter: 20 L, dry_hop: 5 g/L, original_gravity: 1.048}", ...more };
    const bothBenches = `${BENCH}${BENCH.replace("bench:", "other:")}`;
    return logReportOf([...earlier, next], { ...before, equipment: bothBenches }).batches.find(({ batch }) => batch === "NEXT")?.outlook ?? [];
  }
  const find = (lines: readonly OutlookLine[], id: string) => lines.find((each) => each.id === id);

  it("is the line itself where five batches lie on one", () => {
    const lines = outlook(made([0, 0, 0, 0, 0]));
    const loss = find(lines, "hop-loss-own");
    expect(loss).toMatchObject({ batches: 5, basis: "this brewery" });
    for (const end of [loss?.value, loss?.low, loss?.high]) expect(end).toBeCloseTo(8, 4);
    const packaged = find(lines, "package-expected");
    for (const end of [packaged?.value, packaged?.low, packaged?.high]) expect(end).toBeCloseTo(20 - 1 - 0.8, 4);
    expect(find(lines, "hop-loss")?.basis).toBe("common practice");
  });

  it("carries the scatter of five batches as Student's t for three degrees of freedom", () => {
    // Strays that leave the line where it is (Σr = Σrx = 0): s² = 0.14/3, s = 0.2160; Sxx = 0.025; t = 3.182 in any printed table.
    // Slope 8 ± 3.182 × 0.2160/√0.025 = 4.348; one more batch at the middle: ± 3.182 × 0.2160 × √1.2 = 0.7531.
    const lines = outlook(made([0.1, -0.2, 0.2, -0.2, 0.1]));
    expect(find(lines, "hop-loss-own")).toMatchObject({ value: expect.closeTo(8, 4) as number, low: expect.closeTo(3.652, 2) as number, high: expect.closeTo(12.348, 2) as number });
    expect(find(lines, "package-expected")).toMatchObject({ value: expect.closeTo(18.2, 4) as number, low: expect.closeTo(17.447, 2) as number, high: expect.closeTo(18.953, 2) as number });
  });

  it("gives the gravity its own efficiency gives: the same grist in the same volume, the same gravity", () => {
    const gravity = find(outlook(made([0, 0, 0, 0, 0])), "grist-gravity");
    expect(gravity).toMatchObject({ value: expect.closeTo(1.048, 6) as number, basis: "this brewery", batches: 5 });
  });

  it("stays silent below five batches, on other equipment, for unnamed equipment and for dumped batches", () => {
    const silent = [
      outlook(made([0, 0, 0, 0])),
      outlook(made([0, 0, 0, 0, 0], { equipment: "other" })),
      outlook(made([0, 0, 0, 0, 0], { equipment: undefined }), { equipment: undefined }),
      outlook(made([0, 0, 0, 0, 0], { status: "dumped" })),
    ];
    for (const lines of silent) expect(lines.filter(({ basis }) => basis === "this brewery")).toEqual([]);
    expect(find(silent[0] ?? [], "package-expected")?.says).toContain("Fewer than five comparable batches");
  });
});

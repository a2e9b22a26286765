import { describe, expect, it } from "vitest";
import type { BatchReport } from "../../src/report/index.js";
import { at, BENCH, everyHours, logOf, logReportOf, type Around, type Corners, type Fields } from "./bench-batch.js";
import { faultsIn } from "./faults-in.js";

/** Records that are let through and yet can't be right, or leave out what a figure needs: each gives a whole report, none an exception. */
function report(fields: Fields, around: Around = {}): BatchReport {
  const log = logReportOf([fields], around);
  expect(faultsIn(log)).toEqual([]);
  const [batch] = log.batches;
  if (batch === undefined) throw new Error("the batch has no report");
  return batch;
}

function verdict(batch: BatchReport, id: string): string | undefined {
  return batch.checks.find((check) => check.id === id)?.verdict;
}

const hops = `[{hop: Cascade, form: pellet, amount: 100 g, added: ${at(240)}}]`;
const cooled: Corners = [[0, 18], [300, 18], [308, 2], [360, 2]];

describe("a ledger with more out than in", () => {
  const fields: Fields = {
    fermenter: "{volume: 21 L}", samples: "[]", dumps: "[]", dry_hops: "[]", transfer: `{at: ${at(360)}, left: 1 L}`, package: "{into: keg, volume: 20.5 L}",
  };

  it("keeps its minus sign, says that more came out, and still sums to what went in", () => {
    const batch = report(fields);
    expect(batch.figures["loss-unaccounted"]?.value).toBeCloseTo(-0.5, 9);
    expect(batch.ledgerDetail?.says).toContain("More beer came out than went in: −0.5 ± 0.4 L");
    expect(batch.ledger.reduce((sum, { litres }) => sum + litres, 0)).toBeCloseTo(21, 9);
    expect(verdict(batch, "ledger-closes")).toBe("fail");
  });

  it("is within the readings where they can be off by as much", () => {
    expect(verdict(report({ ...fields, fermenter: "{volume: 21 L ± 1 L}" }), "ledger-closes")).toBe("pass");
  });
});

describe("a log that doesn't cover the contact", () => {
  const fields: Fields = {
    fermenter: "{volume: 21 L}", dry_hops: hops, fermentation: "{log: fermentation.csv}", crash: `{set: 2 C, from: ${at(300)}, vent: gas}`, transfer: `{at: ${at(360)}}`,
  };

  it("that ends before it gives no temperature, and says which hours it lacks", () => {
    const batch = report(fields, { temperature: [[0, 18], [200, 18]] });
    for (const id of ["dry-hop-temperature", "crash-temperature", "crash-hours", "crash-lowest", "crash-rate"]) expect(batch.figures[id]).toBeUndefined();
    expect(batch.missing["dry-hop-temperature"]).toBe(`fermentation.log has no unbroken readings from ${at(240)} to ${at(360)}`);
    for (const id of ["contact-temperature", "crash-hold", "crash-freezing"]) expect(verdict(batch, id)).toBe("unknown");
    expect(batch.timeline?.notes.join(" ")).toContain("Outside the log");
  });

  it("that starts after the dry hop gives no mean from a few hours of many", () => {
    const batch = report(fields, { temperature: [[340, 2], [360, 2]] });
    expect(batch.missing["dry-hop-temperature"]).toBe(`fermentation.log covers only 20 h of the 120 h from ${at(240)} to ${at(360)}`);
    expect(batch.missing["fermentation-temperature"]).toContain("fermentation.log has no unbroken readings");
    expect(batch.dryHops[0]).not.toHaveProperty("temperatureMean");
    expect(batch.dryHops[0]?.contactDays).toBeCloseTo(5, 9);
    expect(verdict(batch, "contact-temperature")).toBe("unknown");
  });

  it("that starts a little after it gives the mean of what it covers, with a note of what it doesn't", () => {
    const batch = report(fields, { temperature: [[250, 18], [300, 18], [308, 2], [360, 2]] });
    // 50 h at 18, 8 h at a mean of 10 and 52 h at 2 °C: 1084/110.
    expect(batch.figures["dry-hop-temperature"]?.value).toBeCloseTo(1084 / 110, 6);
    expect(batch.figures["dry-hop-temperature"]?.notes?.join(" ")).toContain("no readings for 10 h of the 120 h");
  });
});

describe("a gap in the log", () => {
  it("is said and left out, never bridged", () => {
    const corners: Corners = [[0, 18], [100, 18], [140, 26], [180, 18], [240, 18]];
    const read = everyHours(corners, 1).filter((hour) => hour <= 100 || hour >= 180);
    const batch = report({ fermentation: "{log: gap.csv}", dry_hops: hops }, { files: { "gap.csv": logOf(corners, read) } });
    expect(batch.figures["fermentation-temperature"]).toMatchObject({ value: expect.closeTo(18, 6) as number, notes: [expect.stringContaining("no readings for 80 h of the 240 h") as string] });
    expect(batch.timeline?.gaps).toEqual([{ fromHour: 100, toHour: 180 }]);
    expect(batch.timeline?.notes.join(" ")).toContain(`no reading from ${at(100)} to ${at(180)}`);
  });
});

describe("two logs that overlap", () => {
  it("are joined on one axis, and where both read is said", () => {
    const [first, second]: [Corners, Corners] = [[[0, 18], [200, 18]], [[150, 20], [240, 20]]];
    const files = { "a.csv": logOf(first, everyHours(first, 1)), "b.csv": logOf(second, everyHours(second, 1)) };
    const batch = report({ fermentation: "{log: [a.csv, b.csv]}", dry_hops: hops }, { files });
    // 149 h at 18 °C, an hour from 18 to the two probes' mean of 19, 50 h of both, an hour from 19 to 20, 39 h at 20 °C.
    expect(batch.figures["fermentation-temperature"]?.value).toBeCloseTo((149 * 18 + 18.5 + 50 * 19 + 19.5 + 39 * 20) / 240, 6);
    expect(batch.timeline?.notes.join(" ")).toContain(`Two logs overlap from ${at(150)} to ${at(200)}`);
  });

  it("aren't named where one follows the other", () => {
    const [first, second]: [Corners, Corners] = [[[0, 18], [149, 18]], [[150, 20], [240, 20]]];
    const files = { "a.csv": logOf(first, everyHours(first, 1)), "b.csv": logOf(second, everyHours(second, 1)) };
    expect(report({ fermentation: "{log: [a.csv, b.csv]}", dry_hops: hops }, { files }).timeline?.notes).toEqual([]);
  });
});

describe("additions whose beer isn't known", () => {
  it("have a mass and no dose, and name the volume", () => {
    const batch = report({ dry_hops: hops });
    expect(batch.figures["dry-hop-mass"]?.value).toBe(100);
    expect(batch.missing["dry-hop-dose"]).toBe("fermenter.volume isn't recorded");
    expect(batch.missing["dry-hop-oil"]).toContain("fermenter.volume isn't recorded");
  });

  it("have no dose while a sample drawn before them has no volume", () => {
    expect(report({ dry_hops: hops, fermenter: "{volume: 20 L}", samples: `[{at: ${at(200)}}]` }).missing["dry-hop-dose"]).toBe("samples[0].volume isn't recorded");
  });

  it("name the keg's volume where they went into the keg", () => {
    const keg = `[{hop: Cascade, amount: 20 g, added: ${at(380)}, into: keg}]`;
    expect(report({ dry_hops: keg, fermenter: "{volume: 20 L}", package: "{into: keg}" }).missing["dry-hop-dose"]).toBe("package.volume isn't recorded");
  });

  it("weigh nothing and have no contact where nothing went in", () => {
    const batch = report({ dry_hops: `[{hop: Cascade, amount: 0 g, added: ${at(240)}}]`, fermenter: "{volume: 20 L}", transfer: `{at: ${at(360)}}` });
    expect(batch.figures["dry-hop-dose"]?.value).toBe(0);
    expect(batch.figures["dry-hop-contact"]).toBeUndefined();
  });

  it("of fruit by mass leave the ledger's volumes alone", () => {
    const batch = report({ fermenter: "{volume: 20 L}", additions: `[{what: plums, amount: 2 kg, at: ${at(150)}}]`, transfer: `{at: ${at(360)}, volume: 18 L, left: 1 L}` });
    expect(batch.figures["transfer-efficiency"]?.value).toBeCloseTo(90, 9);
  });
});

describe("pressure gear and glass", () => {
  it("fails a keg whose limit is below the pressure computed, with a caution, and builds on", () => {
    const batch = report({ package: "{into: keg, volume: 18 L, vessel: {volume: 19 L, limit: 50 kPa}, carbonation: 2.8 vol, temperature: 12 C}" });
    expect(batch.checks.find(({ id }) => id === "package-pressure")).toMatchObject({ verdict: "fail", caution: expect.stringContaining("stamped on the vessel") as string });
    expect(batch.figures["keg-pressure"]?.value).toBeGreaterThan(50);
  });

  it("fails bottles above what glass commonly stands, with a caution", () => {
    const batch = report({ package: "{into: bottles, volume: 18 L, carbonation: 4.5 vol, temperature: 4 C}" });
    expect(batch.checks.find(({ id }) => id === "bottle-carbonation")).toMatchObject({ verdict: "fail", caution: expect.stringContaining("burst") as string });
  });

  it("never passes a sealed vessel whose rating isn't known, whatever else is", () => {
    for (const equipment of [BENCH, "bench: {}\n", "bench:\n  fermenter: {volume: 30 L, pressure: 200 kPa, sealed: true}\n"]) {
      for (const fermentation of ["{pressure: 100 kPa}", "{log: fermentation.csv}", undefined]) {
        const batch = report({ fermenter: "{volume: 20 L}", fermentation, crash: `{set: 2 C, from: ${at(300)}, vent: sealed}`, transfer: `{at: ${at(360)}}` }, { equipment, temperature: cooled });
        expect(verdict(batch, "crash-vessel")).not.toBe("pass");
      }
    }
  });

  it("gives no sugar before terminal gravity, and says why", () => {
    const batch = report({
      package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol, priming: {sugar: sucrose}}", transfer: `{at: ${at(360)}}`,
      fermentation: `{readings: [{at: ${at(300)}, gravity: 1.016}, {at: ${at(350)}, gravity: 1.013}]}`,
    });
    expect(batch.figures["priming-sugar"]).toBeUndefined();
    expect(batch.missing["priming-sugar"]).toContain("gravity isn't terminal");
    expect(batch.packages[0]?.missing.join(" ")).toContain("gravity isn't terminal");
  });
});

describe("readings that can't be used together", () => {
  it.each([
    ["two gravities at one time", { fermentation: `{readings: [{at: ${at(200)}, gravity: 1.010}, {at: ${at(200)}, gravity: 1.012}, {at: 2026-03-16, gravity: 1.010}, {at: 2026-03-16, gravity: 1.011}]}`, dry_hops: hops }],
    ["a refractometer's reading of beer without an original gravity", { fermentation: `{readings: [{at: ${at(200)}, gravity: 6 Bx}, {at: ${at(230)}, gravity: 6 Bx}]}`, dry_hops: hops, transfer: `{at: ${at(360)}}` }],
    ["a final gravity above the original", { fermenter: "{volume: 20 L, gravity: 1.010}", fermentation: `{readings: [{at: ${at(200)}, gravity: 1.050}]}`, transfer: `{at: ${at(360)}}` }],
    ["a fermenter fuller than it is large", { fermenter: "{volume: 40 L}", fermentation: "{log: fermentation.csv}", crash: `{set: 2 C, from: ${at(300)}, vent: sealed}`, transfer: `{at: ${at(360)}}` }],
    ["hops and transfer on one day, the transfer without a time", { dry_hops: `[{hop: Cascade, amount: 9 g, added: 2026-03-20 19:00}]`, transfer: "{at: 2026-03-20}" }],
    ["a crash that the beer was colder than already", { fermentation: "{log: fermentation.csv}", crash: `{set: 15 C, from: ${at(320)}, vent: gas}`, transfer: `{at: ${at(350)}}` }],
    ["a plan of nothing", { plan: "{fermenter: 0 L, dry_hop: 0 g/L, dry_hop_for: 0 d, dry_hop_temperature: 12 C, crash_for: 0 d, crash: 2 C, package: 0 L, original_gravity: 0.990}", grist: "[{malt: Pale malt, amount: 0 kg}]" }],
    ["a plan without a grist", { plan: "{fermenter: 20 L, original_gravity: 1.050}", grist: "[]", hops: "[]" }],
    ["a grist far too large for the plan", { plan: "{fermenter: 1 L, original_gravity: 1.050, dry_hop: 5 g/L}", grist: "[{malt: Pale malt, amount: 20 kg, extract: 80 %}]", boil: "{for: 1 h}", mash: "{water: 1 L, rests: [{temperature: 66 C}]}" }],
    ["empty lists throughout", { samples: "[]", dumps: "[]", dry_hops: "[]", transfer: "[]", package: "[]", additions: "[]", hops: "[]", grist: "[]", tastings: "[]", fermentation: "{readings: []}" }],
  ] as const)("%s give a report all the same", (_, fields) => {
    const batch = report(fields, { temperature: cooled });
    expect(Object.keys(batch.figures).length + Object.keys(batch.missing).length).toBeGreaterThan(40);
  });

  it("don't make a final gravity of the wort's own at pitching", () => {
    const batch = report({ fermenter: "{volume: 20 L, gravity: 1.050}", fermentation: `{readings: [{at: ${at(0)}, gravity: 1.050}]}`, transfer: `{at: ${at(360)}}` });
    expect(batch.missing["final-gravity"]).toBe("fermentation.readings holds no gravity between pitching and packaging");
    expect(batch.figures["abv"]).toBeUndefined();
  });

  it("count no lag for beer that was cold before the crash began, whatever the log's step", () => {
    const batch = report({ fermentation: "{log: fermentation.csv}", crash: `{set: 2 C, from: ${at(320.5)}, vent: gas}`, transfer: `{at: ${at(350)}}` }, { temperature: cooled });
    expect(batch.figures["crash-lag"]?.value).toBe(0);
    expect(batch.figures["crash-hours"]?.value).toBeCloseTo(29.5, 9);
  });

  it("leave hours in a band uncertain only as far as the probe's error moves them", () => {
    const hours = (set: string) => report({ fermentation: "{log: fermentation.csv}", crash: `{set: ${set}, from: ${at(300)}, vent: gas}`, transfer: `{at: ${at(360)}}` }, { temperature: cooled }).figures["crash-hours"];
    // ± 0.3 °C at 2 °C an hour moves the moment of passing 3 °C by ± 0.15 h: 2 × 0.15/√3. Beer that passes right through 4 to 6 °C does so in an hour wherever the probe's zero is.
    expect(hours("2 C")?.plusMinus).toBeCloseTo(0.1732, 4);
    expect(hours("5 C")).toMatchObject({ value: expect.closeTo(1, 6) as number });
    expect(hours("5 C")).not.toHaveProperty("plusMinus");
  });

  it("place a crossing between two log rows at a time that a clock can show", () => {
    // 2 °C an hour from 18 °C passes 3.1234567 °C after 7.43827165 h, 26,777,777.94 ms: between two milliseconds.
    const batch = report({ fermentation: "{log: fermentation.csv}", crash: `{set: 2.1234567 C, from: ${at(300)}, vent: gas}`, transfer: `{at: ${at(350)}}` }, { temperature: cooled });
    expect(batch.figures["crash-lag"]?.value).toBeCloseTo((18 - 3.1234567) / 2, 6);
  });
});

describe("several moves", () => {
  const moved = (moves: string) => report({ fermenter: "{volume: 20 L}", transfer: moves });

  it("from one vessel into two are added", () => {
    expect(moved(`[{at: ${at(300)}, volume: 9 L}, {at: ${at(310)}, volume: 8 L, left: 1 L}]`).figures["transfer-efficiency"]?.value).toBeCloseTo(85, 9);
  });

  it("that follow each other count once, by the last, and it is said", () => {
    const efficiency = moved(`[{at: ${at(300)}, volume: 19 L}, {at: ${at(350)}, volume: 18 L, left: 0.5 L}]`).figures["transfer-efficiency"];
    expect(efficiency?.value).toBeCloseTo(90, 9);
    expect(efficiency?.notes?.join(" ")).toContain("followed each other");
  });
});

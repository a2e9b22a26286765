import { describe, expect, it } from "vitest";
import { at, batchOf, BENCH, checkOf, everyHours, logOf, type Corners, type Fields } from "./bench-batch.js";

/**
 * Each limit is one that brewers pass on (common practice): terminal means unchanged over two to three days;
 * a few days' contact, not much beyond a week; a forced diacetyl test before the cold. Verdicts are asked
 * for on both sides of each limit.
 */
const HOPS_AT = 240;
const CRASH_AT = 330;
const MOVED_AT = 380;

/** One gravity reading, hours after pitching. */
type Taken = readonly [hour: number, gravity: string, more?: string];

function readings(...taken: readonly Taken[]): string {
  return `[${taken.map(([hour, gravity, more = ""]) => `{at: ${at(hour)}, gravity: ${gravity}${more}}`).join(", ")}]`;
}

const hops = `[{hop: Cascade, form: pellet, amount: 100 g, added: ${at(HOPS_AT)}}]`;

describe("terminal before the dry hop", () => {
  const verdict = (...taken: readonly Taken[]) => checkOf("terminal-before-dry-hop", { dry_hops: hops, fermentation: `{readings: ${readings(...taken)}}` })?.verdict;

  it.each([
    [48, "pass"], [72, "pass"], [47, "watch"], [24, "watch"], [23, "fail"],
  ] as const)("with gravity unchanged for %d h before the hops is a %s", (hours, expected) => {
    expect(verdict([HOPS_AT - hours, "1.010"], [HOPS_AT - 1, "1.010"])).toBe(expected);
  });

  it("counts a reading 0.001 away as unchanged and one 0.0011 away as a change", () => {
    expect(verdict([HOPS_AT - 50, "1.011"], [HOPS_AT - 1, "1.010"])).toBe("pass");
    expect(verdict([HOPS_AT - 50, "1.0111"], [HOPS_AT - 1, "1.010"])).toBe("fail");
  });

  it("counts back to the last reading that differs, whatever came before it", () => {
    expect(verdict([HOPS_AT - 90, "1.010"], [HOPS_AT - 60, "1.014"], [HOPS_AT - 30, "1.010"], [HOPS_AT - 1, "1.010"])).toBe("watch");
  });

  it("can't be told from one reading, nor from two of one moment, and names the readings", () => {
    const one = checkOf("terminal-before-dry-hop", { dry_hops: hops, fermentation: `{readings: ${readings([200, "1.010"])}}` });
    expect(one).toMatchObject({ verdict: "unknown", says: expect.stringContaining("fermentation.readings") as string });
    expect(verdict([200, "1.010"], [200, "1.0105"])).toBe("unknown");
    expect(verdict()).toBe("unknown");
  });

  it("leaves out a reading after the hops and the wort's own at pitching", () => {
    expect(verdict([0, "1.010"], [200, "1.010"])).toBe("unknown");
    expect(verdict([200, "1.010"], [HOPS_AT + 1, "1.010"])).toBe("unknown");
  });

  it("isn't asked of hops meant for fermenting beer, nor of a batch without hops", () => {
    expect(checkOf("terminal-before-dry-hop", { dry_hops: hops, plan: "{dry_hop_when: fermenting}" })).toMatchObject({ verdict: "pass", against: "plan" });
    expect(checkOf("terminal-before-dry-hop", { dry_hops: "[]" })).toBeUndefined();
  });
});

describe("terminal by a floating probe", () => {
  const probed = (corners: Corners, byHand: string) => checkOf("terminal-before-dry-hop",
    { dry_hops: hops, fermentation: `{log: probe.csv, readings: ${byHand}}` }, { files: { "probe.csv": logOf(corners, everyHours(corners, 1), "gravity [SG]") } });
  const flat: Corners = [[0, 1.05], [120, 1.014], [HOPS_AT, 1.014]];

  it("isn't upset by a hydrometer that reads 0.003 lower than the probe", () => {
    expect(probed(flat, readings([HOPS_AT - 60, "1.011"], [HOPS_AT - 1, "1.011"]))?.verdict).toBe("pass");
  });

  it("gives way to two recent hydrometer readings that show a fall", () => {
    // A probe that hangs in the foam reads level while the beer ferments on.
    expect(probed(flat, readings([HOPS_AT - 60, "1.014"], [HOPS_AT - 1, "1.011"]))?.verdict).toBe("fail");
  });

  it("says the same at any step of the log", () => {
    const corners: Corners = [[0, 1.05], [180, 1.014], [HOPS_AT + 60, 1.014]];
    const hours = [5 / 60, 0.5, 1].map((step) => {
      const log = { files: { "probe.csv": logOf(corners, everyHours(corners, step), "gravity [SG]", (value) => value.toFixed(5)) } };
      return batchOf({ dry_hops: hops, fermentation: "{log: probe.csv}" }, log).figures["terminal-hours"]?.value;
    });
    // Level to 0.001 from 175 h on (0.0002 an hour before 180 h), in stretches of six hours that end at 180 h: 60 h.
    expect(hours).toEqual([60, 60, 60]);
  });
});

describe("diacetyl clear before the crash", () => {
  const check = (taken: string, more: Fields = {}) =>
    checkOf("vdk-before-crash", { crash: `{set: 2 C, from: ${at(CRASH_AT)}, vent: gas}`, fermentation: `{readings: ${taken}}`, ...more });

  it.each([
    ["clear is a pass", [[CRASH_AT - 2, "1.010", ", diacetyl: clear"]], "pass"],
    ["present is a fail", [[CRASH_AT - 2, "1.010", ", diacetyl: present"]], "fail"],
    ["clear after present is a pass", [[CRASH_AT - 50, "1.010", ", diacetyl: present"], [CRASH_AT - 2, "1.010", ", diacetyl: clear"]], "pass"],
    ["none is unknown", [[CRASH_AT - 2, "1.010"]], "unknown"],
    ["only after cooling began is unknown", [[CRASH_AT + 1, "1.010", ", diacetyl: clear"]], "unknown"],
  ] as const)("a forced test that read %s", (_, taken, verdict) => {
    expect(check(readings(...taken))?.verdict).toBe(verdict);
  });

  it("is to watch when the test came before the hops and none was made after them", () => {
    expect(check(readings([HOPS_AT - 2, "1.010", ", diacetyl: clear"]), { dry_hops: hops })?.verdict).toBe("watch");
  });

  it("isn't asked of a batch that wasn't cooled", () => {
    expect(checkOf("vdk-before-crash", { fermentation: `{readings: ${readings([100, "1.010", ", diacetyl: clear"])}}` })).toBeUndefined();
  });
});

describe("contact time without a plan", () => {
  const check = (hours: number) => checkOf("contact-time", { dry_hops: hops, transfer: `{at: ${at(HOPS_AT + hours)}}` });

  it.each([
    [11.9, "fail"], [12, "watch"], [23.9, "watch"], [24, "pass"], [168, "pass"], [168.1, "watch"], [336, "watch"], [336.1, "fail"],
  ] as const)("of %d h is a %s by common practice", (hours, verdict) => {
    expect(check(hours)).toMatchObject({ verdict, against: "common practice" });
  });

  it("is judged by the addition that stands worst", () => {
    const two = `[{hop: Cascade, amount: 50 g, added: ${at(HOPS_AT)}}, {hop: Chinook, amount: 50 g, added: ${at(HOPS_AT + 90)}}]`;
    expect(checkOf("contact-time", { dry_hops: two, transfer: `{at: ${at(HOPS_AT + 100)}}` })?.verdict).toBe("fail");
  });

  it("ends when the hops are taken out, not at the transfer", () => {
    const out = `[{hop: Cascade, amount: 50 g, added: ${at(HOPS_AT)}, removed: ${at(HOPS_AT + 30)}}]`;
    expect(batchOf({ dry_hops: out, transfer: `{at: ${at(HOPS_AT + 400)}}` }).figures["dry-hop-contact"]?.value).toBeCloseTo(1.25, 9);
  });

  it("runs to the first move after the addition where part of the beer was moved before it", () => {
    const moves = `[{at: ${at(HOPS_AT - 24)}, volume: 9 L}, {at: ${at(HOPS_AT + 96)}, volume: 9 L}]`;
    expect(batchOf({ dry_hops: hops, transfer: moves }).figures["dry-hop-contact"]?.value).toBeCloseTo(4, 9);
  });

  it("can't be told while the hops are in, and says so", () => {
    const still = batchOf({ dry_hops: hops }, { asOf: at(HOPS_AT + 60) });
    expect(still.checks.find(({ id }) => id === "contact-time")).toMatchObject({ verdict: "unknown", says: "In contact for 2.5 d so far; common practice is 1 to 7 days." });
    expect(still.missing["dry-hop-contact"]).toContain("the transfer isn't recorded yet");
    expect(checkOf("contact-time", { dry_hops: hops }, { asOf: at(HOPS_AT + 169) })?.verdict).toBe("watch");
    expect(checkOf("contact-time", { dry_hops: hops, status: "packaged" })?.says).toContain("transfer.at isn't recorded");
  });
});

describe("contact time by the plan", () => {
  const check = (plan: string, hours: number) =>
    checkOf("contact-time", { plan: `{dry_hop_for: ${plan}}`, dry_hops: hops, crash: `{set: 2 C, from: ${at(HOPS_AT + hours)}}`, transfer: `{at: ${at(HOPS_AT + hours + 48)}}` });

  it.each([
    ["4 d", 84, "pass"], ["4 d", 83.9, "watch"], ["4 d", 108, "pass"], ["4 d", 108.1, "watch"],
    ["3 d to 5 d", 72, "pass"], ["3 d to 5 d", 71.9, "watch"], ["3 d to 5 d", 120.1, "watch"],
  ] as const)("of %s, cooled after %d h, is a %s: one value means ± 12 h, and the cold counts apart", (plan, hours, verdict) => {
    expect(check(plan, hours)).toMatchObject({ verdict, against: "plan" });
  });
});

describe("temperature in contact", () => {
  const check = (temperature: Corners, more: Fields = {}) =>
    checkOf("contact-temperature", { dry_hops: hops, fermentation: "{log: fermentation.csv}", transfer: `{at: ${at(340)}}`, ...more }, { temperature });
  /** At 22 °C, above it for so many hours from 250 h on; the straight lines leave 22 °C exactly there. */
  const above = (hours: number): Corners => [[0, 22], [250, 22], [251, 24], [249 + hours, 24], [250 + hours, 22], [340, 22]];

  it.each([
    ["between 4 and 22 °C throughout is a pass", [[0, 20], [240, 22], [340, 4]], "pass"],
    ["above 22 °C for 6 h is to watch", above(6), "watch"],
    ["above 22 °C for 7 h is a fail", above(7), "fail"],
    ["below 4 °C for 10 h is a fail", [[0, 18], [250, 18], [260, 4], [265, 3], [270, 4], [340, 18]], "fail"],
  ] as const)("%s, by common practice", (_, temperature, verdict) => {
    expect(check(temperature)).toMatchObject({ verdict, against: "common practice" });
  });

  it("is held against the planned band, one value meaning ± 1 °C", () => {
    expect(check([[0, 13], [340, 13]], { plan: "{dry_hop_temperature: 12 C}" })).toMatchObject({ verdict: "pass", against: "plan" });
    expect(check([[0, 13.1], [340, 13.1]], { plan: "{dry_hop_temperature: 12 C}" })?.verdict).toBe("fail");
    expect(check([[0, 13.1], [340, 13.1]], { plan: "{dry_hop_temperature: 12 C to 14 C}" })?.verdict).toBe("pass");
  });

  it("counts until the crash: the cold is a step of its own", () => {
    expect(check([[0, 12], [300, 12], [310, 1], [340, 1]], { plan: "{dry_hop_temperature: 12 C}", crash: `{set: 1 C, from: ${at(300)}}` })?.verdict).toBe("pass");
  });

  it("can't be told without a log, for hops in a keg, or over a silence longer than may pass unseen", () => {
    expect(checkOf("contact-temperature", { dry_hops: hops, transfer: `{at: ${at(340)}}` })).toMatchObject({ verdict: "unknown", says: expect.stringContaining("fermentation.log isn't recorded") as string });
    expect(check([[0, 12], [340, 12]], { dry_hops: `[{hop: Cascade, amount: 9 g, added: ${at(335)}, into: keg, removed: ${at(350)}}]` })?.says).toContain("which no log covers");
    expect(gapped(8)).toMatchObject({ verdict: "unknown", says: expect.stringContaining("no readings for 8 h") as string });
  });

  it("still passes over a shorter silence, and says how long it was", () => {
    expect(gapped(5)).toMatchObject({ verdict: "pass", says: expect.stringContaining("no readings for 5 h") as string });
  });

  /** An hourly log at 12 °C with nothing read for so many hours of the contact. */
  function gapped(hours: number) {
    const corners: Corners = [[0, 12], [340, 12]];
    const read = everyHours(corners, 1).filter((hour) => hour <= 260 || hour >= 260 + hours);
    return checkOf("contact-temperature", { dry_hops: hops, fermentation: "{log: gap.csv}", transfer: `{at: ${at(340)}}` }, { files: { "gap.csv": logOf(corners, read) } });
  }
});

describe("hop creep", () => {
  const check = (before: string, after: string, equipment = BENCH) => checkOf("hop-creep", {
    dry_hops: hops, fermenter: "{volume: 20 L, gravity: 1.050}", transfer: `{at: ${at(MOVED_AT)}}`,
    fermentation: `{readings: ${readings([HOPS_AT - 60, before], [HOPS_AT - 1, before], [MOVED_AT - 1, after])}}`,
  }, { equipment });
  /** Good to ± 0.0002: a difference of two readings is good to 2 √2 × 0.0002/√3 = 0.00033. */
  const FINE = BENCH.replace("hydrometer: {within: 0.001", "hydrometer: {within: 0.0002");

  it.each([
    ["1.010", "1.010", "pass"], ["1.010", "1.012", "pass"], ["1.011", "1.010", "pass"],
    ["1.0111", "1.010", "watch"], ["1.012", "1.010", "watch"], ["1.0121", "1.010", "fail"],
  ] as const)("from %s to %s is a %s with readings good to ± 0.001", (before, after, verdict) => {
    expect(check(before, after)).toMatchObject({ verdict, against: "common practice" });
  });

  it("is to watch from 0.001 on where the readings are good enough to show it", () => {
    expect(check("1.011", "1.010", FINE)?.verdict).toBe("watch");
    expect(check("1.0104", "1.010", FINE)?.verdict).toBe("pass");
  });

  it("is named, with what it is worth in gas to the readings' own uncertainty, and cautioned", () => {
    // 1.050 is 12.39 °P; 0.003 of gravity are 0.77 °P apparent, 0.63 real, 0.326 % of alcohol (/1.934), 0.312 % of gas: 3.1 g/L or 1.6 volumes,
    // and the fall of 0.0030 is good to 0.0016, half of it.
    const found = check("1.013", "1.010");
    expect(found?.says).toMatch(/hop creep, worth about 1\.6 ± 0\.[89] vol/u);
    expect(found?.caution).toContain("rating");
  });

  it("isn't put down to the hops alone where gravity hadn't stood still before them", () => {
    const fields = { dry_hops: hops, transfer: `{at: ${at(MOVED_AT)}}`, fermentation: `{readings: ${readings([HOPS_AT - 1, "1.015"], [MOVED_AT - 1, "1.010"])}}` };
    expect(checkOf("hop-creep", fields)).toMatchObject({ verdict: "fail", says: expect.stringContaining("or fermentation that hadn't ended") as string });
  });

  it("can't be told without a reading on each side of the dry hop, and names what is missing", () => {
    const fields = (taken: string) => ({ dry_hops: hops, transfer: `{at: ${at(MOVED_AT)}}`, fermentation: `{readings: ${taken}}` });
    for (const taken of [readings([HOPS_AT - 1, "1.010"]), readings([MOVED_AT - 1, "1.010"]), "[]"]) {
      expect(checkOf("hop-creep", fields(taken))).toMatchObject({ verdict: "unknown", says: expect.stringContaining("fermentation.readings holds no gravity") as string });
    }
  });

  it("is watched while the hops are still in", () => {
    const fields = { dry_hops: hops, fermentation: `{readings: ${readings([HOPS_AT - 60, "1.012"], [HOPS_AT - 1, "1.012"], [HOPS_AT + 60, "1.009"])}}` };
    expect(checkOf("hop-creep", fields)).toMatchObject({ verdict: "fail", from: ["latest-gravity"] });
  });

  it("isn't judged where the plan wants hops in fermenting beer", () => {
    const fields = { plan: "{dry_hop_when: fermenting}", dry_hops: hops, transfer: `{at: ${at(MOVED_AT)}}`, fermentation: `{readings: ${readings([HOPS_AT - 1, "1.020"], [MOVED_AT - 1, "1.010"])}}` };
    expect(checkOf("hop-creep", fields)).toMatchObject({ verdict: "unknown", against: "plan" });
  });
});

import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { formatNumber, inUsUnits, toOwnUnit } from "../../src/units/index.js";
import { at, checkOf, type Corners } from "./bench-batch.js";

// Facts of the trade in section 13 of the reference, and the oxygen the trade quotes: all common practice, none of them a measurement.
// Each is held against the check that stands on it, just inside and just outside.

const rows = parse<Record<"case" | "expected" | "status", string>>(readFileSync(new URL("../science/fixtures/check_values.csv", import.meta.url)), { columns: true });
const fact = (name: string): string => rows.find((row) => row.case === name)?.expected ?? `no row "${name}"`;

const HOPS_AT = 240;
const hops = `[{hop: Cascade, form: pellet, amount: 100 g, added: ${at(HOPS_AT)}}]`;

describe("common practice", () => {
  it("calls gravity terminal that reads the same, within 0.001, over two to three days", () => {
    expect(fact("terminal gravity")).toBe("same reading (within 0.001) over 2-3 d");
    const check = (days: number, fall: number) => checkOf("terminal-before-dry-hop", {
      dry_hops: hops, fermentation: `{readings: [{at: ${at(HOPS_AT - 24 * days)}, gravity: ${(1.01 + fall).toFixed(4)}}, {at: ${at(HOPS_AT - 1)}, gravity: 1.0100}]}`,
    });
    expect(check(2, 0.001)).toMatchObject({ verdict: "pass", against: "common practice" });
    expect(check(3, 0)?.verdict).toBe("pass");
    expect(check(1, 0)?.verdict).toBe("watch");
    expect(check(3, 0.0015)?.verdict).toBe("fail");
  });

  it("crashes to 3 or 4 °C, 37 to 39 °F, for about two days", () => {
    expect(fact("cold crash")).toBe("3-4 C (37-39 F) for about 2 d");
    const cold = (celsius: number): Corners => [[0, 18], [300, 18], [305, celsius], [353, celsius]];
    const check = (celsius: number) => checkOf("crash-hold", {
      fermentation: "{log: fermentation.csv}", crash: `{set: ${celsius} C, from: ${at(300)}, vent: gas}`, transfer: `{at: ${at(353)}}`,
    }, { temperature: cold(celsius) });
    for (const celsius of [3, 4]) expect(check(celsius)).toMatchObject({ verdict: "pass", against: "common practice" });
    expect(check(9)?.verdict).toBe("fail");
  });

  it("reads 3 to 4 °C as 37.4 to 39.2 °F, and 50 °F as 10 °C", () => {
    expect(inUsUnits(3, "C", 0.1)?.value).toBe(fact("3-4 C in F low"));
    expect(inUsUnits(4, "C", 0.1)?.value).toBe(fact("4 C in F"));
    expect(toOwnUnit(50, "F")).toBeCloseTo(10, 12);
  });

  it("dry-hops from 10 °C, 50 °F, up to fermentation temperature, for a few days", () => {
    expect(fact("dry-hop temperature band")).toBe("10 C (50 F) up to fermentation temperature");
    const check = (id: string, celsius: string, days: number) => {
      const temperature = Number(celsius);
      return checkOf(id, { dry_hops: hops, fermentation: "{log: fermentation.csv}", transfer: `{at: ${at(HOPS_AT + 24 * days)}}` }, { temperature: [[0, temperature], [600, temperature]] });
    };
    for (const celsius of ["10", "18", "20"]) expect(check("contact-temperature", celsius, 4)).toMatchObject({ verdict: "pass", against: "common practice" });
    expect(check("contact-temperature", "26", 4)?.verdict).toBe("fail");
    for (const days of [2, 3, 4, 5]) expect(check("contact-time", "18", days)).toMatchObject({ verdict: "pass", against: "common practice" });
    expect(check("contact-time", "18", 20)?.verdict).toBe("fail");
  });

  it("asks for a forced test of diacetyl before the crash", () => {
    expect(fact("forced VDK test")).toContain("compare");
    const check = (diacetyl: string) => checkOf("vdk-before-crash", { fermentation: `{readings: [{at: ${at(250)}, gravity: 1.010${diacetyl}}]}`, crash: `{set: 3 C, from: ${at(300)}}` });
    expect(check(", diacetyl: clear")).toMatchObject({ verdict: "pass", against: "common practice" });
    expect(check("")?.verdict).toBe("unknown");
  });

  it("quotes less than 0.2 mg/L of oxygen for packaged beer", () => {
    expect(fact("TPO commercial target quoted")).toBe("<0.2");
    const says = checkOf("package-purge", { package: "{into: keg, volume: 18 L, vessel: {volume: 19 L}, purge: {by: liquid, left: 0.05 L}, temperature: 4 C}" })?.says;
    const limit = formatNumber(0.2, "mg/L");
    expect(says).toContain(`the trade quotes ${limit.value} ${limit.unit}`);
  });
});

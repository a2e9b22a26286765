import { describe, expect, it } from "vitest";
import { at, batchOf, checkOf, type Fields } from "./bench-batch.js";

const MOVED_AT = 400;

/** Two readings two days apart that agree, and no dry hop: gravity stands still. */
const still: Fields = { fermentation: `{readings: [{at: ${at(200)}, gravity: 1.010}, {at: ${at(248)}, gravity: 1.010}]}`, dry_hops: "[]" };

describe("the purge", () => {
  const keg = (purge: string) => `{into: keg, volume: 18.3 L, temperature: 4 C, vessel: {volume: 19 L}${purge}}`;
  const check = (...kegs: readonly string[]) => checkOf("package-purge", { package: kegs.length === 1 ? kegs[0] : `[${kegs.join(", ")}]` });

  // 20.95 % of a pocket of 0.02 L of air at 4 °C: 0.2095 × 0.02 × 44.0 mol/m³ × 32 g/mol over 18.3 L is 0.32 mg/L; half the pocket, half of it.
  // The trade quotes 0.2 mg/L for packaged beer.
  it.each([["0.01 L", "pass"], ["0.02 L", "watch"]])("that leaves a pocket of %s is a %s", (left, verdict) => {
    expect(check(keg(`, purge: {by: liquid, left: ${left}}`))?.verdict).toBe(verdict);
  });

  it("passes only where it does for every keg", () => {
    const [good, poor] = [keg(", purge: {by: liquid, left: 0.01 L}"), keg(", purge: {by: liquid, left: 0.1 L}")];
    expect(check(good, good)?.verdict).toBe("pass");
    expect(check(good, poor)?.verdict).toBe("watch");
    expect(check(good, keg(""))?.verdict).toBe("unknown");
  });

  it("isn't asked of bottles beside a purged keg", () => {
    expect(check(keg(", purge: {by: liquid, left: 0.01 L}"), "{into: bottles, count: 6, volume: 2 L}")?.verdict).toBe("pass");
  });

  it.each([
    ["package.purge", ""], ["package.purge.left", ", purge: {by: liquid}"], ["package.purge.cycles", ", purge: {by: cycles, pressure: 200 kPa}"],
    ["package.purge.pressure", ", purge: {by: cycles, cycles: 5}"],
  ])("can't be told without %s, and names it", (field, purge) => {
    expect(check(keg(purge))).toMatchObject({ verdict: "unknown", says: expect.stringContaining(`${field} isn't recorded`) as string });
  });

  it("can't be told without the vessel's volume or the beer's, and isn't asked without a package", () => {
    expect(check("{into: keg, volume: 18 L, purge: {by: liquid, left: 0.02 L}}")?.says).toContain("package.vessel.volume isn't recorded");
    expect(check("{into: keg, vessel: {volume: 19 L}, purge: {by: liquid, left: 0.02 L}}")?.says).toContain("package.volume isn't recorded");
    expect(checkOf("package-purge", { package: "[]" })).toBeUndefined();
  });
});

describe("pressure within the vessel's limit", () => {
  const check = (keg: string) => checkOf("package-pressure", { package: keg });
  const purged = (pressure: string, limit: string) => check(`{into: keg, volume: 18 L, vessel: {volume: 19 L, limit: ${limit}}, purge: {by: cycles, cycles: 5, pressure: ${pressure}}}`);

  it.each([
    ["320 kPa", "400 kPa", "pass"], ["321 kPa", "400 kPa", "watch"], ["400 kPa", "400 kPa", "watch"], ["401 kPa", "400 kPa", "fail"],
    ["48 psi", "60 psi", "pass"], ["60 psi", "60 psi", "watch"],
  ])("purged at %s in a keg limited to %s is a %s: 80 %% of the limit, then the limit", (pressure, limit, verdict) => {
    expect(purged(pressure, limit)?.verdict).toBe(verdict);
  });

  // 2.4 volumes at 4 °C: about 10.7 psi or 74 kPa on the printed chart.
  it.each([["100 kPa", "pass"], ["90 kPa", "watch"], ["70 kPa", "fail"]])("needed for 2.4 volumes at 4 °C in a keg limited to %s is a %s", (limit, verdict) => {
    expect(check(`{into: keg, volume: 18 L, vessel: {limit: ${limit}}, carbonation: 2.4 vol, temperature: 4 C}`)).toMatchObject({
      verdict, caution: expect.stringContaining("stamped on the vessel") as string,
    });
  });

  it("is the worst of several vessels", () => {
    expect(check("[{into: keg, vessel: {limit: 400 kPa}, carbonation: 2.4 vol, temperature: 4 C}, {into: cask, vessel: {limit: 70 kPa}, carbonation: 2.4 vol, temperature: 4 C}]")?.verdict).toBe("fail");
  });

  it("can't be told without the vessel's limit, and says what is used all the same", () => {
    expect(check("{into: keg, carbonation: 2.4 vol, temperature: 4 C}")).toMatchObject({ verdict: "unknown", says: expect.stringMatching(/package\.vessel\.limit isn't recorded, and up to 7\d kPa is used/u) as string });
  });

  it("can't be told from a purge alone while carbonation is asked for at a temperature that isn't known", () => {
    expect(check("{into: keg, vessel: {volume: 19 L, limit: 400 kPa}, purge: {by: cycles, cycles: 3, pressure: 100 kPa}, carbonation: 2.4 vol}"))
      .toMatchObject({ verdict: "unknown", says: expect.stringContaining("package.temperature isn't recorded") as string });
  });

  it("isn't asked of bottles", () => {
    expect(check("{into: bottles, carbonation: 2.4 vol, temperature: 4 C}")).toBeUndefined();
  });
});

describe("bottles and carbonation", () => {
  const check = (bottles: string, more: Fields = {}) => checkOf("bottle-carbonation", { ...still, transfer: `{at: ${at(MOVED_AT)}}`, package: bottles, ...more });

  it.each([["3.0 vol", "pass"], ["3.1 vol", "watch"], ["3.5 vol", "watch"], ["3.6 vol", "fail"]])("at %s is a %s by common practice for bottles of unknown rating", (carbonation, verdict) => {
    expect(check(`{into: bottles, volume: 18 L, carbonation: ${carbonation}}`)).toMatchObject({
      verdict, against: "common practice", caution: expect.stringContaining("burst") as string,
    });
  });

  it("is judged by what was found later where that is more than was asked for", () => {
    expect(check("{into: bottles, volume: 18 L, carbonation: 2.4 vol, measured: 3.6 vol}")?.verdict).toBe("fail");
    expect(check("{into: bottles, volume: 18 L, measured: 2.4 vol}")?.verdict).toBe("pass");
  });

  it("is the worst of several fillings", () => {
    expect(check("[{into: bottles, carbonation: 2.4 vol}, {into: bottles, carbonation: 3.6 vol}]")?.verdict).toBe("fail");
  });

  const falling = { fermentation: `{readings: [{at: ${at(300)}, gravity: 1.014}, {at: ${at(399)}, gravity: 1.012}]}` };

  it("fails with gravity that still fell, primed or not", () => {
    expect(check("{into: bottles, carbonation: 2.4 vol, priming: {sugar: sucrose}}", falling)?.verdict).toBe("fail");
    expect(check("{into: bottles, carbonation: 2.4 vol}", falling)).toMatchObject({ verdict: "fail", says: expect.stringContaining("isn't terminal") as string });
    expect(check("{into: bottles}", falling)?.verdict).toBe("fail");
  });

  const hopped = (...gravities: readonly (readonly [number, string])[]): Fields => ({
    dry_hops: `[{hop: Cascade, amount: 100 g, added: ${at(250)}}]`,
    fermentation: `{readings: [${gravities.map(([hour, gravity]) => `{at: ${at(hour)}, gravity: ${gravity}}`).join(", ")}]}`,
  });

  it("fails while hop creep is suspected, and passes once two days of readings after it agree", () => {
    expect(check("{into: bottles, carbonation: 2.4 vol}", hopped([190, "1.012"], [249, "1.012"], [399, "1.010"]))?.verdict).toBe("fail");
    expect(check("{into: bottles, carbonation: 2.4 vol}", hopped([190, "1.012"], [249, "1.012"], [345, "1.010"], [399, "1.010"]))?.verdict).toBe("pass");
  });

  it("can't be told without two readings a day apart, nor without the carbonation, and names them", () => {
    expect(check("{into: bottles, carbonation: 2.4 vol}", { fermentation: undefined })).toMatchObject({ verdict: "unknown", says: expect.stringContaining("fermentation.readings") as string });
    expect(check("{into: bottles, carbonation: 2.4 vol}", { fermentation: `{readings: [{at: ${at(380)}, gravity: 1.010}, {at: ${at(399)}, gravity: 1.010}]}` })?.verdict).toBe("unknown");
    expect(check("{into: bottles}")).toMatchObject({ verdict: "unknown", says: expect.stringContaining("package.carbonation isn't recorded") as string });
  });

  it("fails above 3.5 volumes whatever isn't known of the gravity", () => {
    expect(check("{into: bottles, carbonation: 4 vol}", { fermentation: undefined })?.verdict).toBe("fail");
  });
});

describe("the style's targets", () => {
  const styles = "Bench Pale:\n  original_gravity: 1.045 to 1.055\n";
  const check = (gravity: string | undefined) =>
    checkOf("style-targets", { style: "Bench Pale", ...(gravity === undefined ? {} : { fermenter: `{gravity: ${gravity}}` }) }, { styles });

  // A hydrometer good to ± 0.001 gives 2 × 0.001/√3 = 0.00115 at 95 %: inside with the whole interval, outside with the whole interval, or on the line.
  it.each([
    ["1.050", "pass"], ["1.0462", "pass"], ["1.0461", "watch"], ["1.0439", "watch"], ["1.0438", "fail"], ["1.0538", "pass"], ["1.0539", "watch"], ["1.0562", "fail"],
  ])("of 1.045 to 1.055 with %s is a %s", (gravity, verdict) => {
    expect(check(gravity)).toMatchObject({ verdict, against: "style" });
  });

  it("can't be told before a figure is known, and isn't asked without a style", () => {
    expect(check(undefined)?.verdict).toBe("unknown");
    expect(checkOf("style-targets", {})).toBeUndefined();
  });
});

describe("samples that can be compared", () => {
  const check = (differs: string, isPublic = true) => checkOf("tasting-comparable", {
    samples: `[{at: ${at(200)}, volume: 0.5 L, kept: control}]`, package: "{into: keg}",
    tastings: `[{samples: {before: control, after: keg}${differs}, public: ${String(isPublic)}, triangle: {correct: 5}, tasters: 9}]`,
  });

  it.each([["nothing else differed", ", differs: []", "pass"], ["carbonation differed", ", differs: [carbonation]", "watch"], ["it doesn't say", "", "unknown"]])("by a record in which %s", (_, differs, verdict) => {
    expect(check(differs)?.verdict).toBe(verdict);
  });

  it("are asked for by public tastings only", () => {
    expect(check(", differs: [carbonation]", false)).toBeUndefined();
  });
});

describe("priming sugar", () => {
  const sugar = (more: Fields) => batchOf({ ...still, transfer: `{at: ${at(MOVED_AT)}}`, package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol, priming: {sugar: sucrose}}", ...more });

  it("is weighed for the carbonation asked less what is dissolved", () => {
    // 12 g of carbon and 32 of oxygen from each of 12 in sucrose: 342.3/(4 × 44.01) g of sugar a gram of gas, 1.977 g/L a volume: 3.84 g a litre and volume.
    // Level at 20 °C for the days after fermentation the beer holds 0.86 to 0.88 volumes: (2.4 − 0.87) × 18 × 3.84 = 106 g.
    const readings = `{log: fermentation.csv, readings: [{at: ${at(200)}, gravity: 1.010}, {at: ${at(248)}, gravity: 1.010}]}`;
    const { figures } = batchOf({ ...still, fermentation: readings, transfer: `{at: ${at(MOVED_AT)}}`, package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol, priming: {sugar: sucrose}}" }, { temperature: [[0, 20], [MOVED_AT, 20]] });
    expect(figures["priming-sugar"]?.value).toBeGreaterThan(103);
    expect(figures["priming-sugar"]?.value).toBeLessThan(109);
  });

  it.each([
    ["still falls", `{readings: [{at: ${at(300)}, gravity: 1.014}, {at: ${at(399)}, gravity: 1.012}]}`],
    ["was read once", `{readings: [{at: ${at(300)}, gravity: 1.010}]}`],
    ["was never read", "{readings: []}"],
  ])("isn't computed for a gravity that %s, and says why", (_, fermentation) => {
    const { figures, missing, packages } = sugar({ fermentation });
    expect(figures["priming-sugar"]).toBeUndefined();
    expect(missing["priming-sugar"]).toMatch(/bottles can burst: .*terminal/u);
    expect(packages[0]?.primingSugar).toBeUndefined();
    expect(packages[0]?.missing.join(" ")).toContain("bottles can burst");
  });
});

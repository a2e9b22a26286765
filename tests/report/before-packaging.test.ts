import { describe, expect, it } from "vitest";
import { at, batchOf, type Corners, type Fields } from "./bench-batch.js";

const plan = "{package: 19 L, carbonation: 2.4 vol}";
const sugar = (fields: Fields, hour = 400, temperature?: Corners) =>
  batchOf(fields, { asOf: at(hour), ...(temperature === undefined ? {} : { temperature }) }).outlook.find(({ id }) => id === "priming-sugar");

// By hand: a volume is 1.977 g of gas a litre; sucrose gives 4 × 44.01/342.30 of its mass, so 3.844 g a litre and volume.
// Hibberd's table leaves 0.88 vol at 20 °C: 19 L × (2.4 − 0.88) × 3.844 = 111 g.
const BY_HAND_G = 111;

describe("sugar for beer that isn't packaged yet", () => {
  const readings = (...gravities: readonly (readonly [hour: number, gravity: string])[]): string =>
    `{log: fermentation.csv, pressure: 0 kPa, readings: [${gravities.map(([hour, gravity]) => `{at: ${at(hour)}, gravity: ${gravity}}`).join(", ")}]}`;
  const warm: Corners = [[0, 20], [400, 20]];
  const brewed = { fermenter: "{volume: 21 L, gravity: 1.050}", status: "conditioning" };

  it("is a range to buy by while the batch is planned", () => {
    const line = sugar({ plan, status: "planned" });
    expect(line).toMatchObject({ unit: "g", says: expect.stringContaining("not to weigh by") as string });
    expect(line?.value).toBeUndefined();
    expect(line?.low).toBeLessThan(BY_HAND_G);
    expect(line?.high).toBeGreaterThan(BY_HAND_G);
    expect((line?.high ?? 0) - (line?.low ?? 0)).toBeLessThan(0.15 * BY_HAND_G);
  });

  it("is one figure once gravity stands still", () => {
    const line = sugar({ ...brewed, plan, fermentation: readings([200, "1.010"], [300, "1.010"]) }, 400, warm);
    expect(Math.abs((line?.value ?? 0) - BY_HAND_G)).toBeLessThan(3);
  });

  it.each([
    ["gravity falls", readings([200, "1.016"], [300, "1.013"]), plan, "gravity isn't terminal"],
    ["nothing shows that it stands still", readings([300, "1.010"]), plan, "isn't shown to be terminal"],
    ["hops are still to come", readings([200, "1.010"], [300, "1.010"]), "{package: 19 L, carbonation: 2.4 vol, dry_hop: 5 g/L}", "the hops are still to come"],
  ])("is withheld, with the reason, while %s", (_, fermentation, asked, why) => {
    const line = sugar({ ...brewed, plan: asked, fermentation }, 400, warm);
    expect(line).toMatchObject({ says: expect.stringContaining(why) as string });
    expect([line?.value, line?.low, line?.high]).toEqual([undefined, undefined, undefined]);
  });

  it("isn't asked without a carbonation, nor once a package says what it goes into", () => {
    expect(sugar({ plan: "{package: 19 L}", status: "planned" })).toBeUndefined();
    expect(sugar({ plan, package: "{into: keg, volume: 19 L}" })).toBeUndefined();
  });
});

describe("settling at the hold", () => {
  const cooled = (celsius: number) => batchOf({ crash: `{set: ${celsius} C, from: ${at(300)}, vent: gas}` });

  it("is an estimate with its assumptions, and claims no reading's uncertainty", () => {
    const { figures } = cooled(6);
    // Stokes' law by hand at 2.42 mPa s, a lager at 6 °C (Liger-Belair 2021): 8 µm and 70 kg/m³ give 3.63 mm/h, 100 µm and 30 kg/m³ 243 mm/h.
    expect(figures["settling-cell"]).toMatchObject({ value: expect.closeTo(3.63, 1) as number, unit: "mm/h", method: "settling-velocity" });
    expect(Math.abs((figures["settling-clump"]?.value ?? 0) - 243)).toBeLessThan(3);
    expect(figures["settling-cell"]?.plusMinus).toBeUndefined();
    expect(figures["settling-cell"]?.notes?.join(" ")).toMatch(/single yeast cell.*factor of three/u);
  });

  it("is slower in colder, thicker beer", () => {
    expect(cooled(1).figures["settling-cell"]?.value).toBeLessThan(cooled(6).figures["settling-cell"]?.value ?? 0);
  });
});

describe("a keg and a few bottles of one batch", () => {
  const batch = batchOf({
    fermenter: "{volume: 21 L, gravity: 1.050}", samples: "[]", dumps: `[{at: ${at(250)}, volume: 0.5 L}]`, dry_hops: "[]",
    fermentation: `{log: fermentation.csv, readings: [{at: ${at(200)}, gravity: 1.010}, {at: ${at(300)}, gravity: 1.010}]}`,
    transfer: `[{at: ${at(320)}, volume: 16.1 L}, {at: ${at(321)}, volume: 3.1 L, left: 1 L}]`,
    package: `[{date: ${at(322)}, into: keg, volume: 16 L, vessel: {volume: 19 L, limit: 400 kPa}, carbonation: 2.4 vol, temperature: 4 C},
      {date: ${at(322)}, into: bottles, count: 6, volume: 3 L, carbonation: 2.4 vol, priming: {sugar: sucrose}}]`,
  }, { temperature: [[0, 20], [400, 20]] });

  it("has each of them in the ledger, which sums to what went in", () => {
    expect(batch.ledger.filter(({ to }) => to === "package").map(({ what, litres }) => [what, litres])).toEqual([["keg", 16], ["6 bottles", 3]]);
    expect(batch.ledger.reduce((sum, { litres }) => sum + litres, 0)).toBeCloseTo(21, 9);
    expect(batch.figures["loss-total"]?.value).toBeCloseTo(2, 9);
    expect(batch.figures["package-yield"]?.value).toBeCloseTo(100 * 19 / 21, 9);
    expect(batch.figures["transfer-efficiency"]?.value).toBeCloseTo(100 * 19.2 / 21, 9);
  });

  it("gives the keg its pressure and the bottles their sugar, neither the other's", () => {
    const [keg, bottles] = batch.packages;
    // By the printed chart's relation 10.75 psi at 2.4 vol and 4 °C; 3 L × (2.4 − 0.88) × 3.844 = 17.5 g.
    expect(keg?.pressure).toMatchObject({ value: expect.closeTo(74.1, 0) as number, unit: "kPa" });
    expect(keg?.primingSugar).toBeUndefined();
    expect(bottles?.pressure).toBeUndefined();
    expect(Math.abs((bottles?.primingSugar?.value ?? 0) - 17.5)).toBeLessThan(0.5);
    expect(batch.checks.filter(({ id }) => id === "package-pressure" || id === "bottle-carbonation").map(({ verdict }) => verdict)).toEqual(["pass", "pass"]);
  });
});

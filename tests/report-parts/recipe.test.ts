import { describe, expect, it } from "vitest";
import { recipeReport } from "../../src/report/recipe.js";
import { at, batchOf, q } from "./records.js";

describe("recipeReport", () => {
  it("gives the grist as written, with shares by mass whatever the unit", () => {
    // 4.60 kg and 0.40 kg make 5.00 kg: 92 % and 8 %.
    const { grist } = recipeReport(batchOf({ grist: [
      { malt: "Pale malt", amount: q("4.60 kg", "mass"), extract: q("80.5 %", "share"), color: q("5 EBC", "color"), into: "mash" },
      { malt: "Sugar", amount: q("400 g", "mass"), into: "kettle" },
    ] }));
    expect(grist[0]).toEqual({ what: "Pale malt", amount: "4.60 kg", detail: "in the mash, extract 80.5 %, 5 EBC", share: 92 });
    expect(grist[1]).toEqual({ what: "Sugar", amount: "400 g", detail: "in the kettle", share: 8 });
  });

  it("counts pounds and ounces into the same shares", () => {
    // 1 lb is 16 oz: 9 lb and 16 oz are 90 % and 10 %.
    const { grist } = recipeReport(batchOf({ grist: [
      { malt: "Pale malt", amount: q("9 lb", "mass"), into: "mash" }, { malt: "Wheat malt", amount: q("16 oz", "mass"), into: "mash" },
    ] }));
    expect(grist.map(({ share }) => share?.toFixed(9))).toEqual(["90.000000000", "10.000000000"]);
  });

  it("gives no share at all while one amount isn't recorded", () => {
    const { grist } = recipeReport(batchOf({ grist: [{ malt: "Pale malt", amount: q("4 kg", "mass"), into: "mash" }, { into: "mash" }] }));
    expect(grist.map((line) => "share" in line)).toEqual([false, false]);
    expect(grist[1]).toMatchObject({ what: "not named", amount: "not recorded" });
  });

  it("tells a boil from a stand, in the brewer's units", () => {
    const { kettleHops } = recipeReport(batchOf({ hops: [
      { hop: "Chinook", amount: q("18 g", "mass"), alpha: q("12.4 %", "share"), boil: q("60 min", "time"), crop: 2025, lot: "A17" },
      { hop: "Cascade", amount: q("1.5 oz", "mass"), stand: q("20 min", "time"), temperature: q("176 F", "temperature") },
    ] }));
    expect(kettleHops).toEqual([
      { what: "Chinook", amount: "18 g", detail: "60 min boil, alpha 12.4 %, crop 2025, lot A17" },
      { what: "Cascade", amount: "1.5 oz", detail: "20 min stand at 176 F" },
    ]);
  });

  it("tells how dry hops went in", () => {
    const { dryHops } = recipeReport(batchOf({ dryHops: [
      { hop: "Cascade", form: "pellet", amount: q("110 g", "mass"), held: "bag", into: "keg", added: at("2026-03-18 19:00"), removed: at("2026-03-22") },
    ] }));
    expect(dryHops).toEqual([{ what: "Cascade", amount: "110 g", detail: "pellet, in a bag, in the keg, in 2026-03-18 19:00, out 2026-03-22" }]);
  });

  it("tells yeast, water, mash and later additions", () => {
    const report = recipeReport(batchOf({
      yeast: { strain: "English ale", form: "slurry", amount: q("150 mL", "volume"), pitched: at("2026-03-07 16:00"), generation: 2, from: "TP-01" },
      water: { salts: [{ salt: "gypsum", amount: q("4 g", "mass") }], ions: { calcium: q("85 mg/L", "concentration") } },
      mash: { water: q("15 L", "volume"), ph: 5.35, rests: [{ temperature: q("66 C", "temperature"), for: q("60 min", "time") }] },
      additions: [{ what: "sugar syrup", amount: q("200 g", "mass"), extract: q("70 %", "share"), at: at("2026-03-10 09:00") }],
    }));
    expect(report.yeast).toEqual({ what: "English ale", amount: "150 mL", detail: "slurry, pitched 2026-03-07 16:00, generation 2, from TP-01" });
    expect(report.water).toEqual([
      { what: "gypsum", amount: "4 g", detail: "added" }, { what: "calcium", amount: "85 mg/L", detail: "in the brewing water" },
    ]);
    expect(report.mash).toEqual([
      { what: "strike water", amount: "15 L", detail: "" }, { what: "mash pH", amount: "5.35", detail: "at room temperature" },
      { what: "rest", amount: "66 C", detail: "for 60 min" },
    ]);
    expect(report.additions).toEqual([{ what: "sugar syrup", amount: "200 g", detail: "2026-03-10 09:00, extract 70 %" }]);
  });

  it("is empty, not broken, for a record with its required fields only", () => {
    expect(recipeReport(batchOf())).toEqual({ grist: [], kettleHops: [], dryHops: [], water: [], mash: [], additions: [] });
  });
});

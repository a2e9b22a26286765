import { describe, expect, it } from "vitest";
import { logReportOf, type Fields } from "./bench-batch.js";

const batch = (number: string, brewed: string, fields: Fields = {}): Fields =>
  ({ batch: number, title: `Pale ${number}`, brewed, season: "pales", fermenter: "{volume: 20 L, gravity: 1.050}", package: "{into: keg, volume: 18 L}", ...fields });

describe("a season read from records", () => {
  const records = [
    batch("BB-03", "2026-03-07"), batch("BB-02", "2026-03-07"), batch("BB-01", "2026-02-01"),
    batch("BB-09", "2026-03-01", { season: undefined }), batch("BB-10", "2026-03-02", { season: "other" }),
  ];

  it("holds its own batches, two of one day in the order of their numbers, and none that is in no season", () => {
    const { seasons, batches } = logReportOf(records);
    expect(seasons.map(({ season, batches: held }) => [season, held])).toEqual([["other", ["BB-10"]], ["pales", ["BB-01", "BB-02", "BB-03"]]]);
    expect(batches.map(({ batch: number }) => number)).toContain("BB-09");
  });

  it("is the same whatever order the records came in", () => {
    expect(JSON.stringify(logReportOf(records.toReversed()).seasons)).toBe(JSON.stringify(logReportOf(records).seasons));
  });

  it("of batches without a tasting and without a dry hop says what is missing and claims nothing", () => {
    const [, season] = logReportOf(records).seasons;
    expect(season?.summary).toContain("No tasting scored an attribute before and after.");
    expect([...season?.relations ?? [], ...season?.groups ?? []].filter(({ claim }) => claim === "shown" || claim === "possible")).toEqual([]);
    expect(season?.series.find(({ figure }) => figure === "dry-hop-dose")?.without.map(({ batch: number }) => number)).toEqual(["BB-01", "BB-02", "BB-03"]);
  });
});

import { describe, expect, it } from "vitest";
import { seriesTastings } from "../../src/report/series-tastings.js";
import { withTastingsElsewhere } from "../../src/report/tasted-elsewhere.js";
import { brewedOn, liftTasting, reportOf } from "./reports.js";

const against = { ...liftTasting("lemon", [1, 2, 1, 2, 1, 2]), name: "Against the last", samples: { before: "TP-02/keg", after: "keg" } };

describe("a tasting that pours two batches", () => {
  it("shows on both: with the batch that tells it, and with the other, by its place there", () => {
    const [earlier, later] = withTastingsElsewhere([reportOf("TP-02"), reportOf("TP-03", { tastings: [liftTasting("lemon", [1]), against] })]);
    expect(earlier?.tastedElsewhere).toEqual([{ batch: "TP-03", slug: "tp-03", title: "Pale TP-03", number: 2, tasting: against }]);
    expect(later).not.toHaveProperty("tastedElsewhere");
  });

  it("leaves a batch that was poured nowhere else the same object, and gives the same again for the same tastings", () => {
    const reports = [reportOf("TP-02"), reportOf("TP-03", { tastings: [against] })];
    expect(withTastingsElsewhere(reports)[1]).toBe(reports[1]);
    expect(withTastingsElsewhere(reports)[0]).toBe(withTastingsElsewhere(reports)[0]);
  });
});

describe("a series, version after version", () => {
  const version = (place: number, differences: readonly number[]) =>
    reportOf(`TP-0${place}`, { brewed: brewedOn(place), tastings: [liftTasting("lemon", differences, { low: 0.5, high: 1.5, adjusted: 0.01 })] });

  it("sets one attribute's moves side by side, each from its own before and after", () => {
    const tastings = seriesTastings([version(1, [1, 1]), version(2, [2, 2]), reportOf("TP-03")]);
    expect(tastings?.attributes.map(({ attribute, versions }) => [attribute, versions.map(({ batch, lift, shown }) => [batch, lift, shown])])).toEqual([["lemon", [["TP-01", 1, "up"], ["TP-02", 2, "up"]]]]);
  });

  it("claims no course under six scored versions", () => {
    expect(seriesTastings([version(1, [1]), version(2, [2])])?.says.join(" ")).toContain("no course over the versions is claimed");
    expect(seriesTastings([1, 2, 3, 4, 5, 6].map((place) => version(place, [1])))?.says.join(" ")).not.toContain("no course");
  });

  it("tells apart what was poured side by side, and counts it for no version", () => {
    const tastings = seriesTastings([reportOf("TP-02"), reportOf("TP-03", { tastings: [against] })]);
    expect(tastings?.attributes).toEqual([]);
    expect(tastings?.against).toMatchObject([{ batch: "TP-03", number: 1, name: "Against the last" }]);
  });

  it("has nothing to say where one version alone was scored", () => {
    expect(seriesTastings([version(1, [1]), reportOf("TP-02")])).toBeUndefined();
  });
});

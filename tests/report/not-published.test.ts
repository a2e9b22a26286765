import { describe, expect, it } from "vitest";
import { buildLogReport, type BatchReport, type LogReport } from "../../src/report/index.js";
import { at, logFrom, logReportOf, type Fields } from "./bench-batch.js";

/** What only the batch that isn't published holds, each a word that nothing else in these logs has. */
const ONLY_THERE = ["QP-01", "qp-01", "Moonless", "Petham Golding", "moonbrewer", "hidden-2026", "moonseries", "secret notes"];

const hidden: Fields = {
  batch: "QP-01", title: "Moonless", brewed: "2026-02-01", publish: "false", brewer: "moonbrewer", season: "hidden-2026", series: "moonseries", yeast: "{strain: English ale}",
  aim: "{words: secret notes}", dry_hops: `[{hop: Petham Golding, form: pellet, amount: 100 g, added: ${at(240)}}]`, fermenter: "{volume: 20 L, gravity: 1.050}", samples: "[{kept: moonsample, volume: 0.3 L}]",
  transfer: `{at: ${at(380)}, volume: 18 L}`, package: "{into: keg, volume: 17 L}",
};

function report(...others: readonly Fields[]): LogReport {
  return logReportOf([hidden, ...others.map((fields, index) => ({ batch: `BB-0${String(index + 2)}`, title: "Shown", ...fields }))]);
}

function only(log: LogReport): BatchReport {
  const [batch, second] = log.batches;
  if (batch === undefined || second !== undefined) throw new Error("one batch was to be published");
  return batch;
}

const tasted = (before: string): Fields => ({
  package: "{into: keg, volume: 18 L}",
  tastings: `[{name: Side by side, samples: {before: ${before}, after: keg}, differs: [], triangle: {correct: 9}, tasters: 12, pair: {attribute: pine, before: 2, after: 10}, preference: {before: 3, after: 8, none: 1}}]`,
});

describe("a batch that isn't published", () => {
  it.each<readonly [string, Fields]>([
    ["stands alone", {}],
    ["is repeated by another", { repeats: "QP-01" }],
    ["gave its yeast to another", { yeast: "{strain: English ale, from: QP-01, generation: 2}" }],
    ["gave its yeast in other words", { yeast: '{strain: English ale, from: "qp-01, second dump"}' }],
    ["was poured in another's tasting", tasted("QP-01/keg")],
    ["was poured from a kept sample", tasted("QP-01/moonsample")],
    ["comes before another in a series", { series: "moonseries-2" }],
  ])("that %s leaves no trace", (_, other) => {
    const text = JSON.stringify(report(other));
    expect(text).toContain("BB-02");
    for (const word of [...ONLY_THERE.filter((each) => each !== "moonseries"), '"moonseries"', "moonsample"]) expect(text).not.toContain(word);
  });

  it("is not what another of its series is compared with", () => {
    const batch = only(report({ series: "moonseries" }));
    expect(batch).not.toHaveProperty("comparison");
    expect(JSON.stringify(batch)).not.toContain("QP-01");
  });

  it("isn't replaced, where it is what another repeats, by one that isn't", () => {
    const [last] = report({ series: "tideline", brewed: "2026-03-01" }, { series: "tideline", repeats: "QP-01" }).batches;
    expect(last?.batch).toBe("BB-03");
    expect(last).not.toHaveProperty("comparison");
  });

  it("counts for nothing this brewery shows", () => {
    const hiddenOnes = Array.from({ length: 6 }, (_, index) => ({ ...hidden, batch: `QP-1${String(index)}`, dry_hops: `[{hop: Petham Golding, form: pellet, amount: ${String(20 * index)} g, added: ${at(240)}}]` }));
    const [open] = logReportOf([...hiddenOnes, { batch: "BB-02", plan: "{fermenter: 20 L, dry_hop: 5 g/L}" }]).batches;
    expect(open?.outlook.filter(({ basis }) => basis === "this brewery")).toEqual([]);
    expect(open?.outlook.map(({ id }) => id)).toContain("hop-loss");
  });

  it("still counts as another batch where its beer was poured", () => {
    const [tasting] = only(report(tasted("QP-01/keg"))).tastings;
    expect(tasting?.comparable).toBe("differs");
    expect(tasting?.samples["before"]).toContain("not published");
  });
});

describe("batches that are published", () => {
  it("are named where another repeats them, has their yeast or pours them", () => {
    const [last] = report({ brewed: "2026-03-01" }, { repeats: "BB-02", yeast: "{from: BB-02}", ...tasted("BB-02/keg") }).batches;
    expect(last?.comparison?.with).toBe("BB-02");
    expect(last?.recipe.yeast?.detail).toContain("from BB-02");
    expect(last?.tastings[0]?.samples["before"]).toBe("BB-02/keg");
  });

  it("keep what came from outside the log", () => {
    expect(only(report({ yeast: "{from: QP-011}" })).recipe.yeast?.detail).toContain("from QP-011");
  });

  it("give the same report object again while nothing has changed", () => {
    // What a page is drawn from is held against what it was drawn from last: a new object is a new page.
    const log = logFrom([hidden, { batch: "BB-02", yeast: "{from: QP-01}" }]);
    const asOf = { text: "2026-04-01", date: "2026-04-01" };
    expect(buildLogReport(log, { asOf }).batches[0]).toBe(buildLogReport(log, { asOf }).batches[0]);
  });
});

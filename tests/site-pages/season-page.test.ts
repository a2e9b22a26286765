import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/report/season.js";
import { seriesVersions } from "../../src/report/series-versions.js";
import type { BatchReport, LogReport } from "../../src/report/types.js";
import { chanceFrom, noisySeason } from "../report-parts/noise.js";
import { reportOf, seasonOf } from "../report-parts/reports.js";
import { sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

function logOf(batches: readonly BatchReport[]): LogReport {
  return {
    ...sampleLog(batches), seasons: [seasonReport("Pales", "pales", batches)],
    series: [{ name: "tideline", slug: "tideline", batches: batches.map(({ slug }) => slug), versions: seriesVersions(batches) }], hops: [],
  };
}

const pageOf = (batches: readonly BatchReport[]): string => rendered(sampleSite(logOf(batches)), "seasons/pales.html");
/** What the page says, marks left out. */
const wordsOf = (html: string): string => html.replaceAll(/<(script|style)[\s\S]*?<\/\1>/gu, "").replaceAll(/<[^>]*>/gu, " ").replaceAll(/\s+/gu, " ");

describe("a season's page", () => {
  it("of one batch says too few and draws no limits", () => {
    const words = wordsOf(pageOf(seasonOf([[5, 2]])));
    expect(words).toContain("Too few batches have the figures to ask about any trend.");
    expect(words).toContain("Readings give no figure of the process in two batches yet.");
  });

  it("of a hundred batches is made, with every batch in it and limits that are set", () => {
    const batches = noisySeason(chanceFrom(100), 100);
    const html = pageOf(batches);
    for (const { slug } of batches) expect(html).toContain(`batches/${slug}.html`);
    expect(wordsOf(html)).not.toContain("fewer than eight batches");
  });

  it("of equal doses says that there is no slope", () => {
    expect(wordsOf(pageOf(seasonOf([2, 2.1, 1.9, 2.2, 2.3, 1.8].map((loss) => [5, loss] as const))))).toContain("so there is no slope to fit");
  });

  it("without tastings says so in words", () => {
    expect(wordsOf(pageOf(seasonOf([[1, 2], [2, 3]])))).toContain("No tasting with scores is recorded in this season.");
  });

  it("is the same whatever order its batches came in, two of one day included", () => {
    const batches = noisySeason(chanceFrom(9), 12).map((batch, index) => index === 4 ? { ...batch, brewed: "2026-02-14" } : batch);
    const shuffled = batches.toSorted((one, other) => one.title.length - other.title.length || (one.batch.charCodeAt(3) * 7 + one.batch.charCodeAt(2)) % 5 - (other.batch.charCodeAt(3) * 7 + other.batch.charCodeAt(2)) % 5);
    expect(shuffled.map(({ batch }) => batch)).not.toEqual(batches.map(({ batch }) => batch));
    const season = (order: readonly BatchReport[]): string => {
      const log = { ...logOf(batches), seasons: [seasonReport("Pales", "pales", order.map((batch) => ({ ...batch })))] };
      return rendered(sampleSite(log), "seasons/pales.html");
    };
    expect(season(shuffled)).toBe(season(batches));
  });

  it("leaves out a batch that is in no season", () => {
    const log = { ...logOf(seasonOf([[1, 2], [2, 3]])), batches: [...seasonOf([[1, 2], [2, 3]]), reportOf("STRAY-1")] };
    expect(rendered(sampleSite(log), "seasons/pales.html")).not.toContain("STRAY-1");
  });

  it("puts no figure of the drawing script on the page itself, and asks for the script only in the button's own code", () => {
    const html = pageOf(noisySeason(chanceFrom(2), 10));
    expect(html).not.toMatch(/<script[^>]*\ssrc="[^"]*explore/u);
    expect(html).toContain('data-season="pales-explore.js"');
    expect(html).toContain('data-draw="../assets/season-explore.js"');
  });
});

describe("what the season's script may draw", () => {
  it("is a script that sets data and nothing else, whatever a record says", () => {
    const [one, two] = seasonOf([[1, 2], [4, 3]]);
    if (one === undefined || two === undefined) throw new Error("two batches were asked for");
    const hostile = "</script><script>alert(1)</script>\u2028\"});alert(2)//";
    const script = rendered(sampleSite(logOf([{ ...one, equipment: hostile }, { ...two, style: hostile }])), "seasons/pales-explore.js");
    expect(script).not.toContain("<");
    const window: { gylebookSeason?: { groupings: { id: string; values: unknown[] }[]; axes: { id: string; values: unknown[] }[] } } = {};
    const context = createContext({ window, alert: () => { throw new Error("a record ran"); } });
    runInContext(script, context);
    expect(window.gylebookSeason?.axes.find(({ id }) => id === "dry-hop-dose")?.values).toEqual([1, 4]);
    expect(JSON.stringify(window.gylebookSeason?.groupings)).toContain("alert(2)");
  });
});

describe("a series' page", () => {
  it("of a hundred versions, and of one, is made", () => {
    for (const count of [100, 1]) {
      const batches = noisySeason(chanceFrom(7), count);
      expect(rendered(sampleSite(logOf(batches)), "series/tideline.html")).toContain(batches[0]?.title ?? "?");
    }
  });

  it("has the brewer's own notes of each version, as safe as on the batch's page", () => {
    const [one, two] = seasonOf([[1, 2], [4, 3]]);
    if (one === undefined || two === undefined) throw new Error("two batches were asked for");
    const html = rendered(sampleSite(logOf([{ ...one, notes: "Sparged *slowly*. <script>alert(1)</script>" }, two])), "series/tideline.html");
    expect(html).toContain("Sparged <em>slowly</em>.");
    expect(html).not.toContain("<script>alert");
  });
});

interface Explore {
  readonly parseChoice: (hash: string, data: object) => { x: string; y: string; by: string };
  readonly choiceHash: (choice: object) => string;
  readonly pointsOf: (data: object, choice: object) => { batch: string; x: number; y: number; group: string }[];
  readonly axisTicks: (values: readonly number[]) => number[];
}

/** The script as the browser gets it, run where there is no page. */
function exploreParts(): Explore {
  const context = createContext({ URLSearchParams }) as { gylebookExplore?: Explore };
  runInContext(readFileSync(new URL("../../src/site/assets/season-explore.js", import.meta.url), "utf8"), context);
  if (context.gylebookExplore === undefined) throw new Error("the script gave nothing away");
  return context.gylebookExplore;
}

describe("the script that draws what one asks for", () => {
  const parts = exploreParts();
  const data = {
    batches: [{ batch: "A", slug: "a" }, { batch: "B", slug: "b" }, { batch: "C", slug: "c" }],
    axes: [{ id: "abv", title: "", unit: "%", values: [5, null, 6] }, { id: "dry-hop-dose", title: "", unit: "", values: [1, 2, 3] }, { id: "loss-total", title: "", unit: "", values: [2, 2, 3] }],
    groupings: [{ id: "form", title: "Form", values: ["pellet", "cone", null] }],
  };

  it("weighs 8 KB at most", () => {
    expect(readFileSync(new URL("../../src/site/assets/season-explore.js", import.meta.url)).byteLength).toBeLessThanOrEqual(8192);
  });

  it("takes from the address what the data have, and nothing else", () => {
    expect(parts.parseChoice("#x=abv&y=dry-hop-dose&by=form", data)).toEqual({ x: "abv", y: "dry-hop-dose", by: "form" });
    expect(parts.parseChoice("#x=%3Cscript%3E&y=constructor&by=__proto__", data)).toEqual({ x: "dry-hop-dose", y: "loss-total", by: "" });
    expect(parts.parseChoice("", data)).toEqual({ x: "dry-hop-dose", y: "loss-total", by: "" });
    expect(parts.parseChoice("#x=loss-total", data).y).not.toBe("loss-total");
  });

  it("gives an address that leads back to the same choice", () => {
    for (const choice of [{ x: "abv", y: "loss-total", by: "form" }, { x: "dry-hop-dose", y: "abv", by: "" }]) {
      expect(parts.parseChoice(parts.choiceHash(choice), data)).toEqual(choice);
    }
  });

  it("draws only batches that have both, those without a group apart", () => {
    expect(parts.pointsOf(data, { x: "abv", y: "loss-total", by: "form" }).map(({ batch, x, y, group }) => [batch, x, y, group]))
      .toEqual([["A", 5, 2, "pellet"], ["C", 6, 3, "not recorded"]]);
  });

  it.each([[[0, 12]], [[1.04, 1.055]], [[5, 5]], [[0, 0]], [[-0.0005, 0.0005]], [[3, 300]]])("marks an axis over %j in a few rounded steps that hold every value", (values) => {
    const ticks = parts.axisTicks(values);
    expect(ticks.length).toBeGreaterThanOrEqual(2);
    expect(ticks.length).toBeLessThanOrEqual(8);
    expect(ticks[0]).toBeLessThanOrEqual(Math.min(...values));
    expect(ticks.at(-1)).toBeGreaterThanOrEqual(Math.max(...values));
  });
});

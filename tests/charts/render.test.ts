import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { HtmlValidate } from "html-validate/node";
import { afterEach, describe, expect, it, vi } from "vitest";
import { chartFermentation, chartLedger, chartRelation, CHART_CSS, renderChart, renderCharts, type Chart } from "../../src/charts/index.js";
import { RENDERER } from "../../src/charts/render/chart-cache.js";
import { deepFreeze, everyChart } from "./every-chart.js";
import { ledger, relation, run, timeline } from "./sample-reports.js";

const folders: string[] = [];

async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "charts-"));
  folders.push(folder);
  return folder;
}

function required(chart: Chart | undefined): Chart {
  if (chart === undefined) throw new Error("there is nothing to draw");
  return chart;
}

afterEach(async () => {
  vi.restoreAllMocks();
  vi.resetModules();
  await Promise.all(folders.splice(0).map((folder) => rm(folder, { recursive: true })));
});

describe("a drawing", () => {
  it("is two svg elements, named for those who don't see it, with no id twice on a page", async () => {
    const charts = everyChart();
    const drawn = await renderCharts(charts, { prefix: "tp-03" });
    const page = [...drawn.values()].join("");
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(page.match(/<svg /g)).toHaveLength(2 * charts.length);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => id?.startsWith("tp-03-"))).toBe(true);
    for (const [, labels = ""] of page.matchAll(/aria-labelledby="([^"]+)"/g)) {
      for (const id of labels.split(" ")) expect(ids).toContain(id);
    }
  });

  it("passes html-validate on a page, with its style", async () => {
    const drawn = await renderCharts(everyChart(), { prefix: "tp-03" });
    const figures = [...drawn].map(([id, markup]) => `<figure class="chart-figure" id="${id}">${markup}<figcaption>${id}</figcaption></figure>`);
    const page = `<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>Charts</title><style>${CHART_CSS}</style></head><body><main>${figures.join("")}</main></body></html>\n`;
    const validator = new HtmlValidate({ extends: ["html-validate:recommended", "html-validate:a11y"] });
    const report = await validator.validateString(page);
    expect(report.results.flatMap((result) => result.messages.map((message) => `${message.ruleId}: ${message.message}`))).toEqual([]);
  });

  it("asks for nothing from outside and runs nothing", async () => {
    const page = [...(await renderCharts(everyChart(), { prefix: "a" })).values()].join("");
    expect(page).not.toMatch(/href|url\(|<script|<style|<image|\son\w+=|http/);
  });

  it("shows what a record wrote as letters, not as markup", async () => {
    const hostile = "<script>alert(1)</script>\u0000\u0007\"'&";
    const report = { ...timeline(), says: hostile, events: [{ kind: "addition" as const, at: "", hour: 50, dateOnly: false, label: hostile }] };
    const markup = await renderChart(required(chartFermentation(report, { batch: hostile })), { prefix: "a" });
    expect(markup).not.toContain("<script");
    expect(markup).toContain("&lt;script&gt;");
    // eslint-disable-next-line no-control-regex -- control characters are what is looked for
    expect(markup).not.toMatch(/[\u0000-\u0008]/);
  });

  it("leaves a frozen chart alone", async () => {
    expect(await renderChart(deepFreeze(required(chartLedger(ledger(), { batch: "A" }))), { prefix: "a" })).toContain("</svg>");
  });

  it("has the same bytes whatever was drawn before it", async () => {
    const alone = await renderChart(required(chartRelation(relation())), { prefix: "a" });
    await renderCharts(everyChart(), { prefix: "b" });
    const other = { ...relation(), points: relation().points.map((point) => ({ ...point, x: point.x * 3 - 7, y: point.y * 11 })) };
    await renderChart(required(chartRelation(other)), { prefix: "a" });
    expect(await renderChart(required(chartRelation(relation())), { prefix: "a" })).toBe(alone);
  });

  it.each(everyChart())("is what a view that drew nothing before draws: $id", async (chart) => {
    vi.resetModules();
    const fresh = await import("../../src/charts/index.js");
    expect(await renderChart(chart, { prefix: "a" })).toBe(await fresh.renderChart(chart, { prefix: "a" }));
  });

  it("of a fermentation is drawn alike after one with more rows, other ticks and more events, and after one with fewer", async () => {
    const middle = required(chartFermentation(timeline(), { batch: "A" }));
    const long = { ...timeline(), gaps: [], temperature: { unit: "C", source: "log" as const, runs: [run(0, 700, 0.2, (hour) => 5 + 20 * Math.sin(hour / 9))] } };
    const short = { ...timeline(), events: [], phases: [], temperature: { unit: "C", source: "log" as const, runs: [run(0, 30, 1, (hour) => 18 + hour / 100)] } };
    const alone = await renderChart(middle, { prefix: "a" });
    for (const report of [long, short]) {
      expect(await renderChart(required(chartFermentation(report, { batch: "A" })), { prefix: "a" })).not.toBe(alone);
      expect(await renderChart(middle, { prefix: "a" })).toBe(alone);
    }
  });

  it("has the same bytes in every zone, and asks no locale", async () => {
    const zone = process.env["TZ"];
    const bytes: string[] = [];
    const offsets = new Set<number>();
    try {
      for (const name of ["UTC", "Pacific/Kiritimati", "America/St_Johns"]) {
        process.env["TZ"] = name;
        offsets.add(new Date(2026, 0, 1).getTimezoneOffset());
        vi.resetModules();
        const forbidden = (): never => { throw new Error("a drawing must not depend on the locale"); };
        vi.spyOn(Intl, "NumberFormat").mockImplementation(forbidden);
        vi.spyOn(Intl, "DateTimeFormat").mockImplementation(forbidden);
        vi.spyOn(Number.prototype, "toLocaleString").mockImplementation(forbidden);
        const fresh = await import("../../src/charts/index.js");
        bytes.push([...(await fresh.renderCharts(everyChart(), { prefix: "a" })).values()].join("\n"));
        vi.restoreAllMocks();
      }
    } finally {
      if (zone === undefined) delete process.env["TZ"];
      else process.env["TZ"] = zone;
    }
    expect(offsets.size).toBe(3);
    expect(new Set(bytes).size).toBe(1);
  });

  it("of a fermentation, both widths, stays under 12 kB gzipped, a log of 40,000 rows included", async () => {
    const wobble = (hour: number): number => 18 + 3 * Math.sin(hour / 5) + Math.sin(hour * 37);
    const dense = {
      ...timeline(), gaps: [],
      temperature: { unit: "C", source: "log" as const, runs: [run(0, 400, 0.01, wobble)] },
      gravity: { unit: "SG", source: "log" as const, runs: [run(0, 400, 0.01, (hour) => 1.01 + 0.04 * Math.exp(-hour / 50) + 0.001 * Math.sin(hour * 31))] },
    };
    for (const report of [timeline(), dense]) {
      const markup = await renderChart(required(chartFermentation(report, { batch: "TP-03" })), { prefix: "tp-03" });
      expect(gzipSync(markup).length).toBeLessThan(12_000);
    }
  });

  it("refuses two charts of one id on a page", async () => {
    const chart = required(chartLedger(ledger(), { batch: "A" }));
    await expect(renderCharts([chart, chart], { prefix: "a" })).rejects.toThrow(RangeError);
  });
});

describe("the cache", () => {
  const chart = required(chartLedger(ledger(), { batch: "TP-03" }));

  it("gives back the bytes that were drawn, for the same chart only", async () => {
    const cacheDir = await emptyFolder();
    const first = await renderChart(chart, { prefix: "a", cacheDir });
    expect(await readdir(cacheDir)).toHaveLength(1);
    expect(await renderChart(chart, { prefix: "a", cacheDir })).toBe(first);
    await renderChart({ ...chart, description: "Another." }, { prefix: "a", cacheDir });
    await renderChart(chart, { prefix: "b", cacheDir });
    expect(await readdir(cacheDir)).toHaveLength(3);
  });

  it("draws anew when cold, and what it draws is what it kept", async () => {
    const cacheDir = await emptyFolder();
    const first = await renderChart(chart, { prefix: "a", cacheDir });
    const [name = ""] = await readdir(cacheDir);
    const kept = first.replace("Where the beer went", "Where it went");
    await writeFile(join(cacheDir, name), kept);
    expect(await renderChart(chart, { prefix: "a", cacheDir })).toBe(kept);
    expect(await renderChart(chart, { prefix: "a", cacheDir, cold: true })).toBe(first);
    expect(await readFile(join(cacheDir, name), "utf8")).toBe(first);
  });

  it.each([
    ["half a drawing", (text: string) => text.slice(0, 200)],
    ["a script", (text: string) => text.replace("<title", "<script>1</script><title")],
    ["a handler", (text: string) => text.replace("<path", "<path onload=\"x()\"")],
    ["a link", (text: string) => text.replace("<path", "<path href=\"x\"")],
    ["nothing", () => ""],
  ])("doesn't believe %s", async (_, spoil) => {
    const cacheDir = await emptyFolder();
    const first = await renderChart(chart, { prefix: "a", cacheDir });
    const [name = ""] = await readdir(cacheDir);
    await writeFile(join(cacheDir, name), spoil(first));
    expect(await renderChart(chart, { prefix: "a", cacheDir })).toBe(first);
  });

  it("is keyed by the versions that are installed", () => {
    const require = createRequire(import.meta.url);
    const version = (name: string): string => (require(`../../node_modules/${name}/package.json`) as { version: string }).version;
    expect(RENDERER).toContain(`vega ${version("vega")};`);
    expect(RENDERER).toContain(`vega-lite ${version("vega-lite")}`);
  });
});

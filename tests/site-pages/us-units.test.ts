import path from "node:path";
import { describe, expect, it } from "vitest";
import { parseLog, readLogFolder, type LogFiles } from "../../src/records/index.js";
import { buildLogReport } from "../../src/report/index.js";
import { pageCharts } from "../../src/site/index.js";
import { rendered, sampleSite } from "./sample-site.js";
import { metricFirst, visibleLines } from "./visible-text.js";

/** The demo log as its club would read it across the ocean. */
function usLog() {
  const files = readLogFolder(path.resolve(import.meta.dirname, "..", ".."));
  const read: LogFiles["read"] = (file) => {
    const text = files.read(file);
    return file === "shared/club.yaml" ? `${Buffer.from(text).toString()}\nunits: us\n`.replace(/^units: metric$/mu, "") : text;
  };
  const { log } = parseLog({ ...files, read });
  return buildLogReport(log, { asOf: { text: "2026-10-20 12:00", date: "2026-10-20", time: "12:00" } });
}

const log = usLog();
const files = sampleSite(log);
const paths = files.map((file) => file.path).filter((file) => /^(?:index|batches\/.*|seasons\/.*|series\/.*|hops\/.*)\.html$/u.test(file));

describe("a club that puts US units first", () => {
  it("has planned, open and packaged batches with sheets and a season to show them in", () => {
    expect(log.club.units).toBe("us");
    expect(log.batches.map(({ status }) => status)).toEqual(expect.arrayContaining(["planned", "fermenting", "conditioning", "packaged"]));
    expect(paths.filter((file) => file.endsWith("-sheet.html")).length).toBe(log.batches.length);
    expect(paths.filter((file) => file.endsWith("-brew-day.html")).length).toBeGreaterThan(0);
    expect(paths.filter((file) => file.startsWith("seasons/")).length).toBeGreaterThan(0);
  });

  it.each(paths)("meets no metric quantity first on %s", (file) => {
    const found = visibleLines(rendered(files, file)).flatMap((line) => metricFirst(line).map((quantity) => `${quantity} in: ${line}`));
    expect(found, found.join("\n")).toEqual([]);
  });

  it("has no metric unit in what its charts draw", () => {
    const drawn = pageCharts(log).flatMap(({ page, charts }) => charts.flatMap((chart) => {
      const words = JSON.stringify([chart.wide.spec, chart.narrow.spec]).matchAll(/"((?:[^"\\]|\\.)*)"/gu);
      return [...words].flatMap(([, text = ""]) => metricFirst(text).map((quantity) => `${page} ${chart.id}: ${quantity} in ${text}`));
    }));
    expect(drawn, drawn.join("\n")).toEqual([]);
  });

  it("keeps metric units in JSON, as documented", () => {
    const report = JSON.parse(rendered(files, "batches/tp-08.json")) as { figures: Record<string, { unit: string }>; checks: { id: string; says: string }[] };
    expect(report.figures["dry-hop-dose"]?.unit).toBe("g/L");
    expect(report.checks.find(({ id }) => id === "package-pressure")?.says).toContain("kPa");
    expect(report.checks.flatMap(({ says }) => [...says.matchAll(/°F|oz|gal\b|psi/gu)])).toEqual([]);
  });
});

import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { siteAssets, siteFiles } from "../../src/site/index.js";
import { fullBatch } from "./sample-full.js";
import { minimalBatch, plannedBatch, sampleLog } from "./sample-report.js";
import { rendered, sampleInputs, sampleSite } from "./sample-site.js";

const keysOf = (files: ReturnType<typeof sampleSite>): Map<string, string> => new Map(files.map(({ path, key }) => [path, key]));

describe("keys", () => {
  it("and bytes are the same for the same log", () => {
    expect(keysOf(sampleSite())).toEqual(keysOf(sampleSite()));
    expect(sampleSite().map(({ render }) => render())).toEqual(sampleSite().map(({ render }) => render()));
  });

  it("change for every file whose bytes change, whatever changes in the log", () => {
    const before = sampleSite();
    const changes = [
      sampleLog([plannedBatch, { ...fullBatch, title: "Another name" }, minimalBatch]),
      sampleLog([plannedBatch, { ...fullBatch, notes: `${fullBatch.notes} More words.` }, minimalBatch]),
      sampleLog([plannedBatch, { ...fullBatch, working: fullBatch.working.slice(1) }, minimalBatch]),
      sampleLog([plannedBatch, { ...fullBatch, checks: [] }, minimalBatch]),
      sampleLog([fullBatch, minimalBatch]),
      { ...sampleLog(), club: { ...sampleLog().club, units: "us" as const } },
      { ...sampleLog(), leftOut: [{ file: "batches/x.md", why: "a mistake" }] },
    ];
    for (const log of changes) {
      const after = sampleSite(log);
      const bytes = new Map(after.map(({ path, render }) => [path, render()]));
      for (const { path, key, render } of before) {
        if (bytes.has(path) && bytes.get(path) !== render()) expect(keysOf(after).get(path), path).not.toBe(key);
      }
    }
  });

  it("of other batches stay when one record changes, so that only its own pages are rendered again", () => {
    const after = keysOf(sampleSite(sampleLog([plannedBatch, { ...fullBatch, notes: "Other words." }, minimalBatch])));
    const before = keysOf(sampleSite());
    expect(after.get("batches/tp-03.html")).not.toBe(before.get("batches/tp-03.html"));
    for (const path of ["batches/tp-02.html", "batches/tp-04.html", "methods/index.html", "help/record.html"]) expect(after.get(path)).toBe(before.get(path));
  });

  it("change with the program's version", () => {
    const inputs = sampleInputs();
    const [one, other] = [keysOf(siteFiles(inputs)), keysOf(siteFiles({ ...inputs, version: "9.9.9" }))];
    for (const [path, key] of one) expect(other.get(path), path).not.toBe(key);
  });
});

describe("the data folder", () => {
  const files = sampleSite();

  it("has checksums that the files' bytes give", () => {
    for (const name of ["batches.csv", "figures.csv", "datapackage.json"]) {
      const sum = createHash("sha256").update(rendered(files, `data/${name}`)).digest("hex");
      expect(rendered(files, "data/checksums.txt")).toContain(`${sum}  ${name}\n`);
    }
  });

  it("describes every column it writes, in order (Data Package standard 2.0: a resource has a path and a schema with fields)", () => {
    const descriptor = JSON.parse(rendered(files, "data/datapackage.json")) as { resources: { path: string; schema?: { fields: { name: string; type: string; description: string }[] } }[] };
    for (const { path, schema } of descriptor.resources) {
      const text = rendered(files, `data/${path}`);
      if (schema !== undefined) expect(text.split("\n")[0]).toBe(schema.fields.map(({ name }) => name).join(","));
    }
    expect(descriptor.resources.map(({ path }) => path)).toEqual(["batches.csv", "figures.csv", "fermentation/tp-03.csv"]);
  });

  it("carries a unit or a method with every number: in a column of its own, in the figure's entry, and methods that exist", () => {
    // Data Package 2.0 lets fields and the descriptor carry further properties; a figure's unit and method stand in its row and in `figures`.
    const descriptor = JSON.parse(rendered(files, "data/datapackage.json")) as {
      resources: { name: string; schema?: { fields: { name: string; type: string; unit?: string; description: string; unitField?: string; methodField?: string }[] } }[];
      figures: { id: string; unit: string; methods: string[] }[]; methods: { id: string }[];
    };
    const numbers = descriptor.resources.flatMap(({ schema }) => schema?.fields.filter(({ type }) => type === "number") ?? []);
    expect(numbers.map(({ name }) => name)).toEqual(["value", "plus_minus", "model", "low", "high"]);
    for (const field of numbers) expect(field).toMatchObject({ unitField: "unit", methodField: "method" });
    const methods = new Set(descriptor.methods.map(({ id }) => id));
    const [head = "", ...rows] = rendered(files, "data/figures.csv").trim().split("\n");
    const place = (name: string): number => head.split(",").indexOf(name);
    const entries = new Map(descriptor.figures.map((entry) => [entry.id, entry]));
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows.map((line) => line.split(","))) {
      const entry = entries.get(row[place("figure")] ?? "");
      expect(entry?.unit, row.join()).toBe(row[place("unit")]);
      expect(entry?.methods, row.join()).toContain(row[place("method")]);
    }
    for (const { methods: used } of descriptor.figures) for (const id of used) expect(["plan", ...methods], id).toContain(id);
  });

  it("keeps a fermentation log as it was recorded, line ends and all", () => {
    expect(rendered(files, "data/fermentation/tp-03.csv")).toBe("time,temperature [C]\r\n2026-01-24 16:10,18.2\r\n");
  });

  it("has a season's series by figure, as documented", () => {
    const season = JSON.parse(rendered(files, "seasons/pales-2026.json")) as { series: Record<string, { values: unknown[] }> };
    expect(season.series["dry-hop-dose"]?.values).toEqual([{ batch: "TP-03", brewed: "2026-01-24", value: 4.52, plusMinus: 0.08 }]);
  });
});

describe("assets", () => {
  it("stay within the fonts' budget and are the same every time", () => {
    const assets = siteAssets();
    expect(assets).toEqual(siteAssets());
    expect(assets.map(({ path }) => path)).toEqual([
      "assets/gylebook.css", "assets/fonts.css", "assets/batch-list.js", "assets/search.js", "assets/compare.js", "assets/copy.js", "assets/season-explore.js", "assets/minisearch.js", "assets/fonts-license.txt",
    ]);
  });
});

import { createContext, runInContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { fullBatch } from "./sample-full.js";
import { minimalBatch, plannedBatch, sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

interface SearchData {
  readonly batches: readonly { readonly id: string; readonly hops: string; readonly notes: string; readonly figures: Readonly<Record<string, readonly [number, string]>> }[];
  readonly pages: readonly { readonly path: string; readonly title: string }[];
}
interface Cell { readonly part: string; readonly what: string; readonly text: string; readonly key?: string; readonly value?: number }

/** Runs classic scripts as a page would, and gives what they leave behind. */
function run(...scripts: readonly string[]): Record<string, unknown> {
  const window: Record<string, unknown> = {};
  const context = createContext({ window });
  for (const script of scripts) runInContext(script, context);
  return window;
}

const files = sampleSite();

describe("what the search page looks through", () => {
  const data = run(rendered(files, "search-data.js"))["gylebookSearch"] as SearchData;

  it("has every published batch with its notes in plain words, its hops, and its figures as printed with how each came about", () => {
    expect(data.batches.map(({ id }) => id)).toEqual(sampleLog().batches.map(({ slug }) => slug));
    const batch = data.batches.find(({ id }) => id === "tp-03")!;
    expect(batch.figures["abv"]).toEqual([5.11, "5.11\u00a0±\u00a00.22\u00a0%", "computed"]);
    expect(batch.hops).toContain("Cascade");
    expect(batch.notes).not.toMatch(/[*_#]|\]\(/u);
  });

  it("has every season, series, hop and method by its own page", () => {
    const paths = data.pages.map(({ path }) => path);
    for (const path of ["seasons/pales-2026.html", "series/tideline.html", "hops/cascade.html", "methods/alcohol-by-volume.html"]) expect(paths).toContain(path);
    for (const path of paths) expect(files.map((file) => file.path)).toContain(path);
  });

  it("is loaded by the search page and by no other", () => {
    for (const { path } of files.filter((file) => file.path.endsWith(".html"))) {
      expect(rendered(files, path).includes("search-data.js"), path).toBe(path === "search.html");
    }
  });

  it("can't be left by a note that ends a script", () => {
    const hostile = rendered(sampleSite(sampleLog([{ ...fullBatch, notes: "</script><script>alert(1)</script> \u2028 end" }])), "search-data.js");
    expect((run(hostile)["gylebookSearch"] as SearchData).batches[0]?.notes).toContain("end");
  });
});

describe("the search page", () => {
  it("says without a script what to do instead, and leads to the list", () => {
    const html = rendered(files, "search.html");
    expect(html).toMatch(/class="without-script"[^]*href="batches\/index\.html"/u);
  });
});

describe("what is set side by side", () => {
  const cells = (batch: typeof fullBatch): readonly Cell[] => {
    const site = sampleSite(sampleLog([batch]));
    return (run(rendered(site, `batches/${batch.slug}-compare.js`))["gylebookCompared"] as Record<string, { cells: readonly Cell[] }>)[batch.slug]!.cells;
  };

  it("has a script for each batch, which adds to what is there already", () => {
    const both = run(rendered(files, "batches/tp-03-compare.js"), rendered(files, "batches/tp-02-compare.js"))["gylebookCompared"] as object;
    expect(Object.keys(both)).toEqual(["tp-03", "tp-02"]);
  });

  it("has recipe, process, result and tasters, each figure as printed with its value beside", () => {
    const told = cells(fullBatch);
    expect(new Set(told.map(({ part }) => part))).toEqual(new Set(["recipe", "process", "result", "tasters"]));
    expect(told.find(({ what }) => what === "Alcohol by volume")).toMatchObject({ text: "5.11\u00a0±\u00a00.22\u00a0%", value: 5.11 });
  });

  it("calls a recipe the same whatever the order and the unit it was written in", () => {
    // 3.88 oz × 28.3495 g = 110.0 g
    const hops = (amounts: readonly [string, string][]) => cells({ ...fullBatch, recipe: { ...fullBatch.recipe, kettleHops: amounts.map(([what, amount]) => ({ what, amount, detail: "60 min boil" })) } }).find(({ what }) => what === "Kettle hops")?.key;
    expect(hops([["Cascade", "110 g"], ["Chinook", "18 g"]])).toBe(hops([["Chinook", "18 g"], ["Cascade", "3.88 oz"]]));
    expect(hops([["Cascade", "110 g"]])).not.toBe(hops([["Cascade", "120 g"]]));
  });

  it("has nothing of what isn't recorded", () => {
    expect(cells({ ...minimalBatch }).length).toBe(0);
    expect(cells({ ...plannedBatch }).filter(({ value }) => value !== undefined)).toEqual([]);
  });
});

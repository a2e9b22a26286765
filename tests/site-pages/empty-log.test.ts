import { HtmlValidate } from "html-validate";
import { describe, expect, it } from "vitest";
import { sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

describe("a log with no batch in it", () => {
  const empty = sampleLog([]);
  const files = sampleSite({ ...empty, seasons: [], series: [], hops: [] });

  it.each(["index.html", "batches/index.html"])("still has a sensible %s", async (path) => {
    const html = rendered(files, path);
    expect(html).toMatch(/No batch|brewed nothing/u);
    const report = await new HtmlValidate({ extends: ["html-validate:recommended"] }).validateString(html);
    expect(report.results).toEqual([]);
  });

  it("has tables with heads and no rows", () => {
    expect(rendered(files, "data/batches.csv").trimEnd().split("\n")).toHaveLength(1);
    expect(rendered(files, "data/figures.csv").trimEnd().split("\n")).toHaveLength(1);
  });
});

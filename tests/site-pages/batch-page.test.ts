import { describe, expect, it } from "vitest";
import { rendered, sampleSite } from "./sample-site.js";

const files = sampleSite();
const full = rendered(files, "batches/tp-03.html");

describe("a batch page", () => {
  it("is told in the order of outputs.md, each part at a fixed address", () => {
    for (const path of ["batches/tp-03.html", "batches/tp-04.html", "batches/tp-02.html"]) {
      const ids = [...rendered(files, path).matchAll(/<section class="part" id="([^"]+)">/gu)].map(([, id]) => id);
      expect(ids).toEqual(["aim", "what-happened", "dry-hop", "ledger", "tasters", "changes", "package", "recipe", "working"]);
    }
  });

  it("says in words what was tried and whether it worked before any number stands alone", () => {
    const lead = full.indexOf('<p class="lead">');
    expect(lead).toBeGreaterThan(0);
    expect(lead).toBeLessThan(full.indexOf("<table"));
    expect(full.slice(lead)).toMatch(/^<p class="lead">Twice the Cascade/u);
  });

  it("shows each chart with its words, its numbers as a table and as CSV", () => {
    for (const id of ["fermentation", "ledger", "tasting-1-scores"]) {
      expect(full).toContain(`<figure class="chart-figure" id="chart-${id}">`);
      expect(full).toContain(`href="tp-03-${id}.csv"`);
      expect(rendered(files, `batches/tp-03-${id}.csv`).split("\n").length).toBeGreaterThan(2);
    }
  });

  it("tells each caution once, beside the check it belongs to", () => {
    const cautions = [...full.matchAll(/<div class="margin caution">/gu)];
    expect(cautions).toHaveLength(2);
    expect(full).toMatch(/id="check-crash-vessel">[^]*?A vessel closed while it cools can collapse/u);
  });

  it("gives verdicts as words, failures before passes", () => {
    const dryHop = full.slice(full.indexOf('id="dry-hop"'), full.indexOf('id="ledger"'));
    expect([...dryHop.matchAll(/verdict-(\w+)/gu)].map(([, word]) => word)).toEqual(["watch", "pass", "pass"]);
    expect(full).toMatch(/verdict-fail">fail/u);
  });

  it("folds away what stayed the same since the last one", () => {
    const changes = full.slice(full.indexOf('id="changes"'), full.indexOf('id="package"'));
    expect(changes.indexOf("Dry-hop dose")).toBeLessThan(changes.indexOf("<details>"));
    expect(changes.indexOf("Alcohol by volume")).toBeGreaterThan(changes.indexOf("<details>"));
  });

  it("works figures out down to the readings, and names the one to improve", () => {
    const working = full.slice(full.indexOf('id="working-abv"'));
    expect(working).toContain("fermentation.readings[3].gravity");
    expect(working).toContain("written “<bdi>1.0105</bdi>”");
    expect(working).toMatch(/Its uncertainty comes from [^]*53.%[^]*46.%/u);
    expect(working).toContain('href="#working-original-gravity"');
  });

  it("of an open or planned batch says what it needs next", () => {
    expect(rendered(files, "batches/tp-04.html")).toContain("What it needs next");
    expect(full).not.toContain("What it needs next");
  });

  it("stands in the JSON beside it, as documented", () => {
    const report = JSON.parse(rendered(files, "batches/tp-03.json")) as Record<string, Record<string, unknown>>;
    expect(Object.keys(report)).toEqual(expect.arrayContaining(["batch", "title", "status", "figures", "missing", "planned", "checks", "tastings", "ledger"]));
    expect(report["figures"]?.["abv"]).toMatchObject({ value: 5.11, unit: "%", plusMinus: 0.22, method: "alcohol-by-volume" });
  });
});

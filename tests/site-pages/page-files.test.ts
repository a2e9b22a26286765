import { HtmlValidate } from "html-validate";
import { describe, expect, it } from "vitest";
import { FACES_FIRST } from "../../src/site/page/layout.js";
import { rendered, sampleSite } from "./sample-site.js";

const files = sampleSite();
const pages = files.filter(({ path }) => path.endsWith(".html")).map(({ path }) => ({ path, html: rendered(files, path) }));
/** Words of a page: its text without tags and styles. */
const words = (html: string): string => html.replaceAll(/<style[\s\S]*?<\/style>/gu, "").replaceAll(/<[^>]*>/gu, " ");

/** What makes a page handier, in the order it is loaded. */
function scriptsOf(path: string): string[] {
  if (path === "batches/index.html") return [' src="../assets/batch-list.js"'];
  if (path === "search.html") return [' src="assets/minisearch.js" defer', ' src="search-data.js" defer', ' src="assets/search.js"'];
  if (path === "compare.html") return [' src="assets/compare.js"'];
  // A season's button loads its drawing when pressed; no text waits for it.
  const season = /^seasons\/(.+)\.html$/u.exec(path)?.[1];
  if (season !== undefined) return [` data-season="${season}-explore.js" data-draw="../assets/season-explore.js" data-batches="../batches/"`];
  return /^batches\/(?!.*-(?:sheet|brew-day|entry)\.html)/u.test(path) ? [' src="../assets/copy.js" defer'] : [];
}

describe("the site", () => {
  it("has the files that outputs.md names for this log", () => {
    const paths = files.map(({ path }) => path);
    for (const path of [
      "index.html", "404.html", "batches/index.html", "batches/tp-03.html", "batches/tp-03.json", "batches/tp-03-sheet.html", "batches/tp-04.html",
      "batches/tp-02.html", "seasons/pales-2026.html", "seasons/pales-2026.json", "series/tideline.html", "hops/cascade.html", "methods/index.html",
      "methods/alcohol-by-volume.html", "help/record.html", "help/problems.html", "data/batches.csv", "data/figures.csv", "data/datapackage.json",
      "data/checksums.txt",
    ]) expect(paths).toContain(path);
  });

  it("has one file a path", () => {
    expect(new Set(files.map(({ path }) => path)).size).toBe(files.length);
  });
});

describe("every page", () => {
  // html-validate's recommended set, as outputs.md asks for.
  it("is valid HTML", async () => {
    const validator = new HtmlValidate({ extends: ["html-validate:recommended"] });
    for (const { path, html } of pages) {
      const report = await validator.validateString(html);
      const found = report.results.flatMap(({ messages }) => messages.map(({ ruleId, message, selector }) => `${ruleId}: ${message} at ${selector ?? ""}`));
      expect(found, path).toEqual([]);
    }
  });

  it("has one h1, a main landmark, a language, a title, a description and a skip link to its text", () => {
    for (const { path, html } of pages) {
      expect(html.match(/<h1[\s>]/gu), path).toHaveLength(1);
      expect(html.match(/<main[\s>]/gu), path).toHaveLength(1);
      expect(html, path).toContain('<html lang="en">');
      expect(html, path).toMatch(/<title>[^<]+<\/title>/u);
      expect(html, path).toMatch(/<meta name="description" content="[^"]+"/u);
      expect(html, path).toMatch(/<a class="skip" href="#text">[^]*<main [^>]*id="text"/u);
    }
  });

  it("says nothing that only a program would: undefined, NaN, null, an object", () => {
    for (const { path, html } of pages) expect(words(html), path).not.toMatch(/\bundefined\b|\bNaN\b|\bnull\b|\[object|Infinity/u);
  });

  it("asks no other host for anything and needs no script to be read", () => {
    for (const { path, html } of pages) {
      expect(html, path).not.toMatch(/(?:src|srcset|poster|action)="(?:https?:)?\/\//u);
      expect(html, path).not.toMatch(/<link[^>]+href="(?:https?:)?\/\//u);
      const scripts = [...html.matchAll(/<script([^>]*)>([^<]*)<\/script>/gu)].map(([, attributes, code]) => attributes === "" ? code : attributes);
      const own = path === "404.html" ? [] : [FACES_FIRST];
      expect(scripts, path).toEqual([...own, ...scriptsOf(path)]);
    }
  });

  it("gives each picture its size, so that nothing moves when it arrives", () => {
    const images = pages.flatMap(({ html }) => [...html.matchAll(/<img [^>]*>/gu)].map(([image]) => image));
    expect(images.length).toBeGreaterThan(0);
    for (const image of images) expect(image).toMatch(/width="\d+" height="\d+"/u);
  });
});

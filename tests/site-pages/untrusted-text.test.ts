import { HtmlValidate } from "html-validate";
import { describe, expect, it } from "vitest";
import type { BatchReport } from "../../src/report/index.js";
import { fullBatch } from "./sample-full.js";
import { sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

const attack = '"><script>alert(1)</script><img src=x onerror=alert(2)>';
/** Renders the page of the full batch with parts of its record changed. */
const page = (changes: Partial<BatchReport>): string => rendered(sampleSite(sampleLog([{ ...fullBatch, ...changes }])), "batches/tp-03.html");
const notes = (text: string): string => {
  const html = page({ notes: text, photos: [] });
  return html.slice(html.indexOf('<div class="notes">'), html.indexOf('<section class="part" id="working">'));
};

describe("text of a record", () => {
  it("puts no markup on any page, wherever it stands", () => {
    const hostile: BatchReport = {
      ...fullBatch, title: attack, batch: attack, brewer: attack, style: attack, series: attack, season: attack, summary: attack, notes: attack,
      aim: { ...fullBatch.aim, raise: [attack], lower: [], hold: [], words: attack, verdict: attack },
      dryHops: fullBatch.dryHops.map((addition) => ({ ...addition, hop: attack, form: attack, notes: [attack] })),
      recipe: { ...fullBatch.recipe, grist: [{ what: attack, amount: attack, detail: attack }] },
      tastings: fullBatch.tastings.map((tasting) => ({ ...tasting, name: attack, samples: { [attack]: attack }, says: [attack], differs: [attack] })),
      missing: { "keg-pressure": attack }, photos: [{ file: "batches/2026-01-tideline-3/boil.jpg", alt: attack }], assumptions: [attack],
    };
    const log = sampleLog([hostile]);
    const files = sampleSite({ ...log, club: { ...log.club, name: attack }, hops: [{ name: attack, slug: "cascade", batches: ["tp-03"] }], leftOut: [{ file: attack, why: attack }] });
    for (const { path, render } of files.filter((file) => file.path.endsWith(".html"))) {
      expect(render(), path).not.toMatch(/<script>alert|<img src=x/u);
      expect(render(), path).not.toMatch(/<[a-z][^<>]* onerror=/u);
    }
  });

  it("keeps a colour that isn't one out of the drawing", () => {
    expect(page({ swatch: { css: 'red" onload="alert(1)', glassCm: 8, ebc: 10 } })).not.toContain("onload");
  });

  it.each([
    ["javascript:alert(1)"], ["JaVaScRiPt:alert(1)"], ["java\tscript:alert(1)"], ["vbscript:x"], ["data:text/html;base64,PHNjcmlwdD4="], ["file:///etc/passwd"],
    ["//evil.example/x"], ["/\\evil.example"], ["\\\\evil.example"], ["../../../etc/passwd"], ["/etc/passwd"], ["tp-99.html"], ["&#106;avascript:alert(1)"],
  ])("makes no link of %s", (href) => {
    const html = notes(`Read [the words](<${href}>) and ![a picture](<${href}>).`);
    expect(html).not.toMatch(/<a |<img /u);
    expect(html).toContain("the words");
  });

  it("keeps links to the web, to post and to other batches of the log", () => {
    const html = notes("[web](https://example.org/a?b=c&d) [post](mailto:club@example.org) [itself](tp-03.html#ledger)");
    expect(html).toContain('<a href="https://example.org/a?b=c&amp;d" rel="noopener nofollow ugc">web</a>');
    expect(html).toContain('<a href="mailto:club@example.org"');
    expect(html).toContain('<a href="#ledger">itself</a>');
  });

  it("shows a photo beside the record and no other picture", () => {
    expect(notes("![Foam](boil.jpg)")).toContain('<img src="../photos/0123abcd.jpg" alt="Foam" width="960" height="640" loading="lazy">');
    for (const source of ["../boil.jpg", "../../etc/passwd", "https://evil.example/p.png", "boil.svg", "./../2026-01-tideline-3/boil.jpg"]) {
      expect(notes(`![Foam](${source})`)).not.toContain("<img");
    }
  });

  it("sets its headings below the page's, skipping none", async () => {
    const html = page({ notes: "##### Deep\n\ntext\n\n# Shallow\n\n#\n\n###### Deeper" });
    expect(html).toMatch(/<h3>Deep<\/h3>[\s\S]*<h3>Shallow<\/h3>[\s\S]*<h4>Deeper<\/h4>/u);
    const report = await new HtmlValidate({ extends: ["html-validate:recommended"] }).validateString(html);
    expect(report.results).toEqual([]);
  });

  it("stays valid HTML with everything Markdown has", async () => {
    const everything = "| a | b |\n|:-:|--:|\n| 1 | 2 |\n\n```js\nx  \n```\n\n    code  \n\n1. one\n2. two\n\n> quote\n\n[](https://example.org) <https://example.org/auto>\n\n***\n\n~~gone~~ <b>raw</b> &copy; <!-- comment -->\n\n![](boil.jpg)";
    const report = await new HtmlValidate({ extends: ["html-validate:recommended"] }).validateString(page({ notes: everything }));
    expect(report.results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId} ${message}`))).toEqual([]);
  });

  it("keeps a title of 200 characters, right-to-left text and emoji, and cuts only the window's title", () => {
    const long = "Très long ".repeat(20);
    const html = page({ title: long });
    expect(html).toContain(long.trim().slice(0, 150));
    expect([.../<title>([^<]*)<\/title>/u.exec(html)?.[1] ?? ""].length).toBeLessThanOrEqual(70);
    expect(page({ title: "بيرة المد 🍺" })).toContain('<h1 dir="auto">بيرة المد 🍺</h1>');
  });

  it("opens no formula in a spreadsheet", () => {
    const csv = rendered(sampleSite(sampleLog([{ ...fullBatch, title: '=HYPERLINK("https://evil.example")' }])), "data/batches.csv");
    expect(csv).toContain(`"'=HYPERLINK(""https://evil.example"")"`);
  });
});

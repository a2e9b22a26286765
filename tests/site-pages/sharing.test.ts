import { createRequire } from "node:module";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { siteCards } from "../../src/site/index.js";
import { shareSummary } from "../../src/site/views/share-summary.js";
import { fullBatch } from "./sample-full.js";
import { plannedBatch, sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

// An independent reader of ISO/IEC 18004.
const readQr = createRequire(import.meta.url)("jsqr") as (pixels: Uint8ClampedArray, width: number, height: number) => { readonly data: string } | null;

const published = { ...sampleLog(), club: { ...sampleLog().club, url: "https://example.org/saltings/" } };

describe("a summary to pass on", () => {
  const { plain, markdown } = shareSummary(fullBatch, "metric", "https://example.org/saltings/batches/tp-03.html");

  it("says what the beer is, its figures with their uncertainty, and where the rest stands", () => {
    expect(plain).toContain(`${fullBatch.batch}: ${fullBatch.title}`);
    expect(plain).toMatch(/alcohol by volume 5\.11 ± 0\.22 %/iu);
    expect(plain).toMatch(/^Grist: .+ kg/mu);
    expect(plain.trimEnd().endsWith("https://example.org/saltings/batches/tp-03.html")).toBe(true);
  });

  it("tells what was read from an instrument apart from what was computed from readings", () => {
    expect(plain).toMatch(/^Measured: original gravity 1\./imu);
    expect(plain).toMatch(/^Computed: alcohol by volume 5\.11/imu);
    expect(plain).not.toMatch(/^Measured: .*(?:alcohol|bitterness)/imu);
  });

  it("tells what is only planned apart from what was measured", () => {
    expect(shareSummary(plannedBatch, "metric", undefined).plain).toMatch(/^Planned: /mu);
    expect(shareSummary(plannedBatch, "metric", undefined).plain).not.toMatch(/^Measured: .*alcohol/mu);
  });

  it("reads the same as Markdown: what CommonMark shows has every word of the plain text", () => {
    const shown = new MarkdownIt().render(markdown).replaceAll(/<[^>]+>/gu, " ").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&").replaceAll("&quot;", '"');
    const words = (text: string): string[] => text.split(/[\s]+/u).filter((word) => word !== "");
    expect(words(shown).join(" ").replaceAll(/ (?=[:;,.])/gu, "")).toBe(words(plain).join(" "));
  });

  it("keeps a title's marks and line breaks from becoming Markdown", () => {
    const { markdown: marked } = shareSummary({ ...fullBatch, title: "*Pale* [x](javascript:alert(1))\n# <b>big</b> `code`" }, "metric", undefined);
    const html = new MarkdownIt({ html: true }).render(marked.split("\n")[0] ?? "");
    expect(html).not.toMatch(/<(?:em|a|h1|b|code)\b/u);
  });

  it("stands on the batch's page without a script", () => {
    const page = rendered(sampleSite(), "batches/tp-03.html");
    expect(page).toMatch(/<pre class="pasted"[^>]*data-copy="the plain text"[^>]*>TP-03: /u);
    expect(page).toMatch(/<pre class="pasted"[^>]*data-copy="the Markdown"[^>]*>\*\*TP-03: /u);
  });
});

describe("with an address", () => {
  const files = sampleSite(published);

  it("the printed record carries a code that leads to the batch's page", () => {
    const sheet = rendered(files, "batches/tp-03-sheet.html");
    const [, side = "0"] = /class="qr" viewBox="0 0 (\d+) /u.exec(sheet) ?? [];
    const [, path = ""] = /<path d="([^"]+)" fill="#000"/u.exec(sheet) ?? [];
    const size = Number(side);
    const scale = 4;
    const pixels = new Uint8ClampedArray(4 * (size * scale) ** 2).fill(255);
    for (const [, x = "", y = ""] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/gu)) {
      for (let dy = 0; dy < scale; dy += 1) {
        for (let dx = 0; dx < scale; dx += 1) pixels.set([0, 0, 0, 255], 4 * ((Number(y) * scale + dy) * size * scale + Number(x) * scale + dx));
      }
    }
    expect(readQr(pixels, size * scale, size * scale)?.data).toBe("https://example.org/saltings/batches/tp-03.html");
  });

  it("every page names its own address and its card; sheets aren't in the site map, every other page is, once", () => {
    expect(rendered(files, "batches/tp-03.html")).toContain('<link rel="canonical" href="https://example.org/saltings/batches/tp-03.html">');
    expect(rendered(files, "batches/tp-03.html")).toContain('<meta property="og:image" content="https://example.org/saltings/cards/tp-03.png">');
    expect(rendered(files, "index.html")).toContain("https://example.org/saltings/cards/index.png");
    const map = rendered(files, "sitemap.xml");
    expect(XMLValidator.validate(map)).toBe(true);
    const { urlset } = new XMLParser().parse(map) as { urlset: { url: { loc: string }[] } };
    const pages = files.filter(({ path }) => path.endsWith(".html") && !/-(?:sheet|entry|brew-day)\.html$|^404/u.test(path)).map(({ path }) => `https://example.org/saltings/${path}`);
    expect(urlset.url.map(({ loc }) => loc).toSorted()).toEqual(pages.toSorted());
  });

  it("a page that isn't there leads home from any depth", () => {
    expect(rendered(files, "404.html")).toContain('href="https://example.org/saltings/index.html"');
  });

  it("cards are drawn without a letter that would need a font, one a batch and one for the book", () => {
    const cards = siteCards(published);
    expect(cards.map(({ path }) => path)).toEqual(["cards/index.png", ...published.batches.map(({ slug }) => `cards/${slug}.png`)]);
    for (const { svg } of cards) {
      expect(XMLValidator.validate(svg())).toBe(true);
      expect(svg()).not.toMatch(/<text|font|href|url\(/u);
    }
  });

  it("a title in letters that the card's face lacks is left out whole, and the card still has the batch's number", () => {
    const [, arabic] = siteCards({ ...published, batches: [{ ...fullBatch, title: "مد وجزر" }] });
    const [, numbered] = siteCards({ ...published, batches: [{ ...fullBatch, title: fullBatch.batch }] });
    expect(arabic?.svg()).toBe(numbered?.svg());
  });
});

describe("without an address", () => {
  it("there is no card, no site map, no code and no address made up", () => {
    const files = sampleSite();
    expect(siteCards(sampleLog())).toEqual([]);
    expect(files.map(({ path }) => path)).not.toContain("sitemap.xml");
    expect(rendered(files, "batches/tp-03-sheet.html")).not.toContain('class="qr"');
    expect(rendered(files, "batches/tp-03.html")).not.toMatch(/canonical|og:/u);
  });
});

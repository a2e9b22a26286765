/// <reference lib="dom" />
import { execFile } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import type { AxeResults } from "axe-core";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser } from "./browser.js";
import { onPage, overflowOf, printedPages } from "./open-page.js";

declare const axe: { run: (options?: object) => Promise<AxeResults> };

const MAIN = path.resolve(import.meta.dirname, "..", "..", "dist", "cli", "main.js");
const LONG = "Saltmarsh".repeat(23).slice(0, 200);
const RIGHT_TO_LEFT = "جعة المد \u202Eيقرأ من اليمين";
/** Plain records, so that the list is as long as a club's that has brewed for decades. */
const MANY = 396;

const record = (fields: string, notes = ""): string => `---\n${fields}\n---\n${notes}`;

const HARD: Readonly<Record<string, string>> = {
  "batches/long.md": record(`title: ${LONG}\nbatch: H-1\nbrewed: 2026-01-01\nstyle: American Pale Ale\nbrewer: ${"b".repeat(60)}\nfermenter: {volume: 20 L, gravity: 1.050}`),
  "batches/words.md": record("title: Wordy\nbatch: H-2\nbrewed: 2026-01-02", `${"low tide again and the malt was warm ".repeat(2500)}\n\nquinquereme\n`),
  "batches/bare.md": record("title: Bare\nbatch: H-3\nbrewed: 2026-01-03"),
  "batches/signs/index.md": record(`title: "${RIGHT_TO_LEFT} 🍺👩🏽‍🔬"\nbatch: H-4\nbrewed: 2026-01-04\nbrewer: "מלח 🌊"`, "Ünïcode ✨ notes.\n\n![A pale glass](glass.jpg)\n"),
  ...Object.fromEntries(Array.from({ length: MANY }, (_, index) => [`batches/many-${index}.md`, record(`title: Pale ${index}\nbatch: M-${index}\nbrewed: ${2000 + (index % 20)}-0${1 + (index % 9)}-11`)])),
};

let site = "";
let browser: Browser;

beforeAll(async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "gylebook-hard-"));
  const log = path.join(folder, "log");
  for (const [file, text] of Object.entries(HARD)) {
    await mkdir(path.dirname(path.join(log, file)), { recursive: true });
    await writeFile(path.join(log, file), text);
  }
  await sharp({ create: { width: 8000, height: 5000, channels: 3, background: "#d80" } }).withExif({ IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" } }).jpeg().toFile(path.join(log, "batches/signs/glass.jpg"));
  site = path.join(folder, "site");
  await promisify(execFile)(process.execPath, [MAIN, "build", log, "--out", site, "--as-of", "2026-06-20T12:00"], { env: { ...process.env, XDG_CACHE_HOME: path.join(folder, "cache") } });
  browser = await openBrowser();
  return async () => {
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  };
});

const PAGES = ["index.html", "batches/index.html", "batches/h-1.html", "batches/h-2.html", "batches/h-3.html", "batches/h-4.html", "batches/h-1-sheet.html", "search.html#q=quinquereme", "compare.html#h-1,h-3,h-4"];

describe("a title of 200 letters without a space, 20,000 words, nothing measured, emoji, right to left, 400 batches", () => {
  test.each(PAGES)("%s stays within its page at 320, 768 and 1440 px", async (address) => {
    await onPage(browser, site, address, {}, async (page) => {
      for (const width of [320, 768, 1440]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await overflowOf(page), `${width} px`).toBe(0);
      }
    });
  });

  test("axe finds nothing where such texts stand", async () => {
    const source = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
    for (const address of ["batches/h-1.html", "batches/h-4.html", "search.html#q=quinquereme", "compare.html#h-1,h-3,h-4"]) {
      const found = await onPage(browser, site, address, {}, async (page) => {
        await page.evaluate(source);
        const { violations } = await page.evaluate(() => axe.run({ resultTypes: ["violations"], preload: false }));
        return violations.flatMap(({ id, nodes }) => nodes.slice(0, 2).map(({ html }) => `${id}: ${html.slice(0, 120)}`));
      });
      expect(found, address).toEqual([]);
    }
  });

  test("all 400 stand in the list, which is filtered and sorted as it was with few", async () => {
    await onPage(browser, site, "batches/index.html", {}, async (page) => {
      expect(await page.locator("tbody tr").count()).toBe(MANY + 4);
      await page.getByLabel("Show only batches with").fill("M-39");
      expect(await page.locator("tbody tr:not([hidden])").count()).toBe(7); // M-39 and M-390 to M-395
      expect(await page.getByText(`7 of ${MANY + 4}`).isVisible()).toBe(true);
    });
  });

  test("search finds the one word among 20,000 and quotes its place", async () => {
    await onPage(browser, site, "search.html#q=quinquereme", {}, async (page) => {
      expect(await page.locator("#search-found .entry-title").allTextContents()).toEqual(["H-2 Wordy"]);
      expect(await page.locator("mark").textContent()).toBe("quinquereme");
    });
  });

  test("a batch with nothing measured says so, in words, with what would give it", async () => {
    await onPage(browser, site, "batches/h-3.html", {}, async (page) => {
      const text = await page.locator("main").innerText();
      expect(text).toContain("Nothing is measured yet");
      expect(text).not.toMatch(/NaN|undefined|null/u);
    });
  });

  test("a name written from right to left keeps to itself: what follows it still runs from left to right", async () => {
    await onPage(browser, site, "batches/index.html", {}, async (page) => {
      const cell = page.locator("tbody tr", { hasText: "H-4" }).locator("th");
      const [number, title] = [await cell.locator("b").boundingBox(), await cell.locator("a > bdi").first().boundingBox()];
      expect(number!.x).toBeLessThan(title!.x + title!.width);
      expect(await cell.locator("a > bdi").first().evaluate((element) => getComputedStyle(element).unicodeBidi)).toBe("isolate");
    });
  });

  test("a photo of 40 megapixels is shown small, with its size and its words, and knows no place", async () => {
    await onPage(browser, site, "batches/h-4.html", {}, async (page) => {
      const photo = page.getByAltText("A pale glass");
      expect([await photo.getAttribute("width"), await photo.getAttribute("height"), await photo.getAttribute("loading")]).toEqual(["1200", "750", "lazy"]);
      const file = await readFile(path.join(site, "batches", (await photo.getAttribute("src")) ?? ""));
      expect((await sharp(file).metadata()).exif).toBeUndefined();
    });
  });

  test("their sheets still print on one page", async () => {
    for (const slug of ["h-1", "h-2", "h-3", "h-4"]) {
      expect(await onPage(browser, site, `batches/${slug}-sheet.html`, {}, async (page) => printedPages(await page.pdf({ format: "Letter" }))), slug).toBe(1);
    }
  });
});

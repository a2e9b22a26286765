/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";
import { choosePages } from "./page-choice.js";
import { pagesOf } from "./site-files.js";
import { walk } from "./walk.js";

declare const axe: { run: (options?: object) => Promise<AxeResults> };

const site = inject("demoSite");
const chosen = choosePages(site);
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const addressOf = (file: string): string => pathToFileURL(path.join(site, file)).href;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** How far what is shown moved by itself since the page began to open, while it is scrolled through: 0 is none. */
function measureShift(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let total = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) total += (entry as PerformanceEntry & { readonly value: number }).value;
    }).observe({ type: "layout-shift", buffered: true });
    for (let y = 0; y < document.documentElement.scrollHeight; y += 600) {
      scrollTo(0, y);
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
    return total;
  });
}

/** What another width and another paper can change of what axe sees; the rest is the same document. */
const LOOKS = { runOnly: { type: "rule", values: ["color-contrast", "target-size", "scrollable-region-focusable", "link-in-text-block"] } };

async function listViolations(page: Page, rules: object = {}): Promise<string[]> {
  await page.evaluate(axeSource);
  // Without preload: a page opened from disk can't read its own style sheets' text, and no rule that is on needs it.
  const { violations } = await page.evaluate((only) => axe.run({ resultTypes: ["violations"], preload: false, ...only }), rules);
  return violations.flatMap(({ id, help, nodes }) => nodes.slice(0, 3).map(({ target, html }) => `axe: ${id} (${help}) at ${target.join(" ")}: ${html.slice(0, 120)}`));
}

/** A browser starved of time paints pages half read, and then they move whatever they are: the best of three visits counts. */
async function leastShift(page: Page): Promise<number> {
  let least = await measureShift(page);
  for (let visit = 2; visit <= 3 && least > 0; visit += 1) {
    await page.reload();
    least = Math.min(least, await measureShift(page));
  }
  return least;
}

async function listOverflow(page: Page, widths: readonly number[]): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 740 });
    const overflowPx = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    if (overflowPx > 0) found.push(`${overflowPx} px too wide at ${width} px`);
  }
  return found;
}

/** Everything that is wrong with the chosen pages: what moves, what axe finds, what is too wide, which script fails. */
async function listFaults(options: BrowserContextOptions, widths: readonly number[], rules: object = {}): Promise<string[]> {
  const errors: string[] = [];
  const faults = await walk({ browser, options, files: chosen, addressOf }, async (page) => {
    const shift = await leastShift(page);
    const violations = await listViolations(page, rules);
    return [...shift > 0 ? [`layout shift ${shift}`] : [], ...violations, ...await listOverflow(page, widths)];
  }, (page) => {
    page.on("pageerror", (error) => errors.push(`${page.url()}: ${error.message}`));
    page.on("console", (message) => { if (message.type() === "error") errors.push(`${page.url()}: ${message.text()}`); });
  });
  return [...[...faults].flatMap(([file, found]) => found.map((what) => `${file}: ${what}`)), ...errors];
}

describe("pages of every kind and state, and whatever shows something the others don't", () => {
  test("are many, and of each kind", () => {
    expect(chosen.length).toBeGreaterThan(15);
    for (const kind of [/^index\.html$/, /^batches\/index\.html$/, /^batches\/[a-z]+-\d+\.html$/, /-sheet\.html$/, /-brew-day\.html$/, /^seasons\//, /^series\//, /^hops\//, /^methods\//, /^help\//, /^404\.html$/]) {
      expect(chosen.some((file) => kind.test(file)), String(kind)).toBe(true);
    }
  });

  test("open on light paper without a shift, a failing script, anything axe finds or anything too wide", async () => {
    expect(await listFaults({ colorScheme: "light", viewport: { width: 1280, height: 900 } }, [1280, 768])).toEqual([]);
  });

  test("and so on dark paper on a phone", async () => {
    expect(await listFaults({ colorScheme: "dark", viewport: { width: 360, height: 740 } }, [360, 320], LOOKS)).toEqual([]);
  });
});

describe("the looks above see what is wrong where it is", () => {
  test("a shift", async () => {
    const page = await browser.newPage();
    await page.setContent("<!doctype html><title>x</title><p id=p>moves</p>");
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 100)));
    await page.evaluate(() => document.body.insertAdjacentHTML("afterbegin", "<div style='height:200px'></div>"));
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 100)));
    expect(await measureShift(page)).toBeGreaterThan(0);
    await page.close();
  });

  test("a picture without words, pale text, and a line that is too long", async () => {
    const page = await browser.newPage();
    await page.setContent("<!doctype html><html lang=en><title>x</title><main><h1>x</h1><img src='data:,'><p style='color:#ccc;width:900px'>pale</p></main>");
    const violations = await listViolations(page);
    expect(violations.some((found) => found.startsWith("axe: image-alt"))).toBe(true);
    expect(violations.some((found) => found.startsWith("axe: color-contrast"))).toBe(true);
    expect(await listOverflow(page, [1280, 320])).toEqual([expect.stringMatching(/px too wide at 320 px/)]);
    await page.close();
  });
});

test("a batch's sheets print on one page", async () => {
  const sheets = pagesOf(site).filter((file) => /-(?:sheet|brew-day)\.html$/.test(file));
  expect(sheets.length).toBeGreaterThan(10);
  const counts = await walk({ browser, files: sheets, addressOf }, async (page) => printedPages(await page.pdf({ format: "A4", preferCSSPageSize: true })));
  expect([...counts].filter(([, count]) => count !== 1)).toEqual([]);
});

test("the count above sees two pages where there are two", async () => {
  const page = await browser.newPage();
  await page.setContent("<!doctype html><title>x</title><p>one</p><p style='break-before: page'>two</p>");
  expect(printedPages(await page.pdf())).toBe(2);
  await page.close();
});

/** Page objects of a PDF as this browser writes them: uncompressed. PDF 32000-1:2008, 7.7.3.3. */
function printedPages(pdf: Buffer): number {
  return [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page(?!s)\b/g)].length;
}

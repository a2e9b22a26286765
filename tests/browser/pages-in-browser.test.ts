/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";
import { pagesOf } from "./site-files.js";

declare const axe: { run: (options?: object) => Promise<AxeResults> };

const site = inject("demoSite");
const pages = pagesOf(site);
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** Two pages are open at a time, since the browser draws each in a process of its own. */
const OPEN_AT_ONCE = 2;

/** Opens every page and lists what `look` finds wrong. */
async function lookAtAll(options: BrowserContextOptions, look: (page: Page, file: string) => Promise<readonly string[]>, files: readonly string[] = pages): Promise<string[]> {
  const context = await browser.newContext(options);
  const wrong: string[] = [];
  const waiting = [...files];
  const lookOn = async (): Promise<void> => {
    const page = await context.newPage();
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      await page.goto(pathToFileURL(path.join(site, file)).href, { waitUntil: "load" });
      const where = file;
      const found = await look(page, where);
      wrong.push(...found.map((what) => `${where}: ${what}`));
    }
  };
  await Promise.all(Array.from({ length: OPEN_AT_ONCE }, lookOn));
  await context.close();
  return wrong.sort();
}

/** One page of each kind, and all of those that a log shapes most. */
function onePerKind(): string[] {
  const kinds = new Map<string, string>();
  for (const file of pages) {
    const kind = file.startsWith("batches/") ? file.replace(/^batches\/(.*?)(-sheet|-entry|-brew-day)?\.html$/, (_whole, name: string, suffix = "") => `batches/${name === "index" ? name : ""}${String(suffix)}`) : path.dirname(file) === "." ? file : path.dirname(file);
    kinds.set(kind, kinds.get(kind) ?? file);
  }
  return [...kinds.values()];
}

/** Pages of methods are made from one template and the program's own text: some stand for all. */
function shapedByLog(): string[] {
  const isMethod = (file: string): boolean => /^methods\/(?!index)/.test(file);
  return pages.filter((file) => !isMethod(file)).concat(pages.filter(isMethod).filter((_file, index) => index % 6 === 0));
}

describe("every page of the demo in a browser", () => {
  const findViolations = async (page: Page): Promise<string[]> => {
    await page.evaluate(axeSource);
    const { violations } = await page.evaluate(() => axe.run({ resultTypes: ["violations"] }));
    return violations.flatMap(({ id, help, nodes }) => nodes.slice(0, 3).map(({ target, html }) => `${id} (${help}) at ${target.join(" ")}: ${html.slice(0, 120)}`));
  };

  test("axe finds nothing on light paper, on any page that the log shapes and on every sixth method's", async () => {
    expect(await lookAtAll({ colorScheme: "light", viewport: { width: 1280, height: 900 } }, findViolations, shapedByLog())).toEqual([]);
  });

  test("axe finds nothing on dark paper and on a phone, one page of each kind", async () => {
    expect(await lookAtAll({ colorScheme: "dark", viewport: { width: 360, height: 740 } }, findViolations, onePerKind())).toEqual([]);
  });

  const findOverflow = async (page: Page): Promise<string[]> => {
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    return overflow > 0 ? [`${overflow} px too wide`] : [];
  };

  test("nothing makes a page scroll sideways at 320 px", async () => {
    expect(await lookAtAll({ viewport: { width: 320, height: 740 } }, findOverflow)).toEqual([]);
  });

  test.each([360, 768, 1280])("nor at %i px, one page of each kind", async (width) => {
    expect(await lookAtAll({ viewport: { width, height: 740 } }, findOverflow, onePerKind())).toEqual([]);
  });

  test("nothing moves while a page opens and is scrolled through", async () => {
    expect(await lookAtAll({ viewport: { width: 412, height: 800 } }, async (page) => {
      const shift = await page.evaluate(async () => {
        let total = 0;
        const add = (list: PerformanceObserverEntryList): void => {
          for (const entry of list.getEntries()) total += (entry as PerformanceEntry & { readonly value: number }).value;
        };
        const observer = new PerformanceObserver(add);
        observer.observe({ type: "layout-shift", buffered: true });
        for (let y = 0; y < document.documentElement.scrollHeight; y += 600) {
          scrollTo(0, y);
          await new Promise((resolve) => requestAnimationFrame(resolve));
        }
        await new Promise((resolve) => setTimeout(resolve, 50));
        return total;
      });
      return shift > 0 ? [`layout shift ${shift}`] : [];
    }, onePerKind())).toEqual([]);
  });

  test("the check above sees a shift where there is one", async () => {
    const page = await browser.newPage();
    await page.setContent("<!doctype html><title>x</title><p id=p>moves</p>");
    const shift = await page.evaluate(async () => {
      let total = 0;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) total += (entry as PerformanceEntry & { readonly value: number }).value;
      }).observe({ type: "layout-shift", buffered: true });
      await new Promise((resolve) => setTimeout(resolve, 100));
      document.body.insertAdjacentHTML("afterbegin", "<div style='height:200px'></div>");
      await new Promise((resolve) => setTimeout(resolve, 100));
      return total;
    });
    expect(shift).toBeGreaterThan(0);
    await page.close();
  });

  test("no script of ours fails", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(`${page.url()}: ${error.message}`));
    page.on("console", (message) => { if (message.type() === "error") errors.push(`${page.url()}: ${message.text()}`); });
    for (const file of onePerKind()) await page.goto(pathToFileURL(path.join(site, file)).href);
    await context.close();
    expect(errors).toEqual([]);
  });

  test("a batch's sheets print on one page", async () => {
    const sheets = pages.filter((file) => /-(?:sheet|brew-day)\.html$/.test(file));
    expect(sheets.length).toBeGreaterThan(10);
    const wrong = await lookAtAll({}, async (page) => {
      const count = printedPages(await page.pdf({ format: "A4", preferCSSPageSize: true }));
      return count === 1 ? [] : [`${count} pages`];
    }, sheets);
    expect(wrong).toEqual([]);
  });

  test("the count above sees two pages where there are two", async () => {
    const page = await browser.newPage();
    await page.setContent("<!doctype html><title>x</title><p>one</p><p style='break-before: page'>two</p>");
    expect(printedPages(await page.pdf())).toBe(2);
    await page.close();
  });
});

/** Page objects of a PDF as this browser writes them: uncompressed. PDF 32000-1:2008, 7.7.3.3. */
function printedPages(pdf: Buffer): number {
  return [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page(?!s)\b/g)].length;
}

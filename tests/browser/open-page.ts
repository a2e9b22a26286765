/// <reference lib="dom" />
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";

/** Opens a page of a site from disk in a context of its own, does something with it, and closes both. */
export async function onPage<Result>(browser: Browser, site: string, address: string, options: BrowserContextOptions, look: (page: Page) => Promise<Result>): Promise<Result> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    const [file = "", hash] = address.split("#");
    await page.goto(pathToFileURL(path.join(site, file)).href + (hash === undefined ? "" : `#${hash}`), { waitUntil: "load" });
    return await look(page);
  } finally {
    await context.close();
  }
}

/** Page objects of a PDF as this browser writes them: uncompressed. PDF 32000-1:2008, 7.7.3.3. */
export function printedPages(pdf: Buffer): number {
  return [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page(?!s)\b/g)].length;
}

/** How much wider than its window a page is, in px. */
export function overflowOf(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";

declare const axe: { run: (options?: object) => Promise<AxeResults> };

const season = pathToFileURL(path.join(inject("demoSite"), "seasons", "pales-2026.html")).href;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

interface Shifts {
  readonly shifted: () => Promise<number>;
  readonly asked: readonly string[];
}

/** Opens the season from disk and counts layout shifts that no key or click caused. */
async function openSeason(page: Page, hash = ""): Promise<Shifts> {
  const asked: string[] = [];
  page.on("request", (request) => asked.push(path.basename(new URL(request.url()).pathname)));
  await page.addInitScript(() => {
    const seen = window as unknown as { shifted: number };
    seen.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[]) if (!entry.hadRecentInput) seen.shifted += entry.value;
    }).observe({ type: "layout-shift", buffered: true });
  });
  await page.goto(season + hash, { waitUntil: "load" });
  return { asked, shifted: () => page.evaluate(() => (window as unknown as { shifted: number }).shifted) };
}

describe("looking for oneself, from disk", () => {
  test("loads nothing until asked, then draws by keyboard alone, with the choice in the address", async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    const { asked, shifted } = await openSeason(page);
    expect(asked.filter((name) => name.includes("explore"))).toEqual([]);
    await page.locator("#explore button").focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector(".explore-chart");
    expect(asked.filter((name) => name.includes("explore"))).toEqual(["pales-2026-explore.js", "season-explore.js"]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("explore-x");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("explore-y");
    await page.locator("#explore-y").selectOption("abv");
    await page.locator("#explore-by").selectOption("yeast");
    expect(new URL(page.url()).hash).toBe("#x=dry-hop-dose&y=abv&by=yeast");
    expect(await page.locator(".explore-key li").allTextContents()).toEqual([" English ale", " American ale"]);
    expect(await page.locator("#explore [role=status]").textContent()).toMatch(/^\d+ of the season’s 24 batches have both\.$/);
    expect(await shifted()).toBe(0);
    await page.close();
  });

  test("opens what an address asks for, as many points as the table has rows, and moves nothing else", async () => {
    const page = await browser.newPage({ viewport: { width: 360, height: 740 }, colorScheme: "dark" });
    const { shifted } = await openSeason(page, "#x=dry-hop-dose&y=loss-total&by=form");
    await page.waitForSelector(".explore-chart");
    const points = await page.locator(".explore-chart path:not(.explore-grid)").count();
    expect(points).toBeGreaterThan(10);
    expect(await page.locator("#explore tbody tr").count()).toBe(points);
    expect(await shifted()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
    const { violations } = await page.evaluate(() => axe.run({ resultTypes: ["violations"], preload: false }));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
    await page.close();
  });

  test("is left out where scripts don't run, and the page is whole", async () => {
    const page = await browser.newPage({ javaScriptEnabled: false });
    await page.goto(season);
    expect(await page.locator("#explore button").count()).toBe(0);
    expect(await page.locator("#explore noscript").textContent()).toContain("Drawing needs a script");
    expect(await page.locator(".chart-figure").count()).toBeGreaterThan(5);
    await page.close();
  });
});

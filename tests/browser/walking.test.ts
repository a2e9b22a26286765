/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";
import { onPage, overflowOf } from "./open-page.js";
import { pagesOf } from "./site-files.js";

declare const axe: { run: (options?: object) => Promise<AxeResults> };

const site = inject("demoSite");
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const pages = pagesOf(site);
const firstIn = (folder: string): string[] => pages.filter((file) => file.startsWith(folder) && !file.endsWith("/index.html")).slice(0, 1);
const KINDS = [
  "index.html", "batches/index.html", "batches/tp-03.html", "batches/tp-09.html", "batches/tp-03-sheet.html", "search.html#q=cascade", "compare.html#tp-02,tp-03,tp-04",
  ...["seasons/", "series/", "hops/", "competitions/", "methods/", "help/"].flatMap(firstIn),
];

/** Of long pages, whose stops are all alike further down, as much as this. */
const MOST_STOPS = 120;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** What Tab goes through until it leaves the page, as what is seen of each stop. */
async function walk(page: Page, most: number): Promise<{ readonly stops: readonly string[]; readonly unseen: readonly string[] }> {
  const stops: string[] = [];
  const unseen: string[] = [];
  for (let step = 0; step < most; step += 1) {
    await page.keyboard.press("Tab");
    const stop = await page.evaluate(() => {
      const here = document.activeElement;
      if (here === null || here === document.body) return undefined;
      const { width, height } = here.getBoundingClientRect();
      const { outlineStyle, outlineWidth } = getComputedStyle(here);
      const name = `${here.tagName} ${here.getAttribute("aria-label") ?? here.textContent.trim().slice(0, 40)}`;
      const isSeen = width > 0 && height > 0 && outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1;
      return { name, isSeen };
    });
    if (stop === undefined) break;
    stops.push(stop.name);
    if (!stop.isSeen) unseen.push(stop.name);
  }
  return { stops, unseen };
}

describe("with the keyboard alone", () => {
  test.each(KINDS)("%s is walked from its skip link on, and every stop is seen", async (address) => {
    await onPage(browser, site, address, { viewport: { width: 1280, height: 900 } }, async (page) => {
      // The search page starts in its field: the walk starts where a page does.
      await page.evaluate(() => { (document.activeElement as HTMLElement | null)?.blur(); });
      const { stops, unseen } = await walk(page, MOST_STOPS);
      expect(unseen).toEqual([]);
      if (!address.startsWith("search")) expect(stops[0]).toBe("A Skip to the text");
      const reachable = await page.evaluate(() => [...document.querySelectorAll<HTMLElement>("a[href], button, input, select, summary")]
        .filter((element) => element.getClientRects().length > 0 && !(element as HTMLInputElement).disabled && element.closest("details:not([open]) > :not(summary)") === null).length);
      expect(stops.length).toBeGreaterThanOrEqual(Math.min(reachable, MOST_STOPS) - (address.startsWith("search") ? 12 : 0));
    });
  });

  test("the skip link goes past the running head to the text", async () => {
    await onPage(browser, site, "batches/tp-03.html", {}, async (page) => {
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      expect(await page.evaluate(() => document.activeElement?.id)).toBe("text");
    });
  });

  test("a folded working is opened by Enter, and a link to it opens it", async () => {
    await onPage(browser, site, "batches/tp-03.html", {}, async (page) => {
      const summary = page.locator("#working-abv > summary");
      await summary.focus();
      await page.keyboard.press("Enter");
      expect(await page.locator("#working-abv").getAttribute("open")).not.toBeNull();
    });
  });

  test("the list is sorted by a button that says which way", async () => {
    await onPage(browser, site, "batches/index.html", {}, async (page) => {
      await page.getByRole("button", { name: "Bitterness" }).focus();
      await page.keyboard.press("Enter");
      expect(await page.locator("th", { hasText: "Bitterness" }).getAttribute("aria-sort")).toBe("ascending");
      const shown = await page.locator("tbody tr td:nth-of-type(5)").evaluateAll((cells) => cells.flatMap((cell) => (cell as HTMLElement).dataset["sort"] ?? []).map(Number));
      expect(shown).toEqual(shown.toSorted((one, other) => one - other));
    });
  });
});

describe("at 320 CSS px, which is 1280 px at 400 % (WCAG 2.2, 1.4.10), and at 640, which is 1280 px at 200 % (1.4.4)", () => {
  test.each(KINDS)("%s reflows into one column", async (address) => {
    await onPage(browser, site, address, { viewport: { width: 320, height: 640 } }, async (page) => expect(await overflowOf(page)).toBe(0));
    await onPage(browser, site, address, { viewport: { width: 640, height: 450 }, deviceScaleFactor: 2 }, async (page) => expect(await overflowOf(page)).toBe(0));
  });
});

/** How many elements of the page have something that moves by itself. */
function movingElements(): number {
  return [...document.querySelectorAll("*")].filter((element) => {
    const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
    return animationName !== "none" || transitionDuration.split(", ").some((time) => Number.parseFloat(time) > 0) || scrollBehavior === "smooth";
  }).length;
}

test("with reduced motion nothing moves, and without it nothing did", async () => {
  for (const address of KINDS) {
    await onPage(browser, site, address, {}, async (page) => {
      for (const reducedMotion of ["reduce", "no-preference"] as const) {
        await page.emulateMedia({ reducedMotion });
        expect(await page.evaluate(movingElements), `${address}, ${reducedMotion}`).toBe(0);
      }
    });
  }
});

test("each chart is one labelled picture whose description and numbers, also as CSV, stand beside it", async () => {
  for (const address of KINDS) {
    const wrong = await onPage(browser, site, address, { javaScriptEnabled: true }, (page) => page.evaluate(() => [...document.querySelectorAll(".chart-figure")].flatMap((figure) => {
      const shown = [...figure.querySelectorAll("svg")].filter((svg) => svg.getClientRects().length > 0);
      const [svg] = shown;
      const labels = (svg?.getAttribute("aria-labelledby") ?? "").split(" ").map((id) => document.getElementById(id)?.textContent.trim() ?? "");
      return [
        ...(shown.length === 1 ? [] : [`${figure.id}: ${shown.length} pictures`]),
        ...(svg?.getAttribute("role") === "img" && labels.every((label) => label !== "") ? [] : [`${figure.id}: no name`]),
        ...((svg?.querySelector("desc")?.textContent.length ?? 0) > 30 ? [] : [`${figure.id}: no description`]),
        ...(figure.querySelector("details table") === null ? [`${figure.id}: no numbers`] : []),
        ...(figure.querySelector("a[href$='.csv']") === null ? [`${figure.id}: no CSV`] : []),
      ];
    })));
    expect(wrong, address).toEqual([]);
  }
});

test.each(["light", "dark"] as const)("axe finds nothing on %s paper where scripts have drawn something: results, and batches side by side", async (colorScheme) => {
  for (const address of ["search.html#q=cascade&figure=abv", "compare.html#tp-02,tp-03,tp-04,tp-05", "batches/index.html", "batches/tp-03.html#share"]) {
    const violations = await onPage(browser, site, address, { colorScheme }, async (page) => {
      await page.waitForTimeout(200);
      await page.evaluate(() => { for (const folded of document.querySelectorAll(".share details")) folded.setAttribute("open", ""); });
      await page.evaluate(axeSource);
      const { violations: found } = await page.evaluate(() => axe.run({ resultTypes: ["violations"], preload: false }));
      return found.flatMap(({ id, nodes }) => nodes.slice(0, 2).map(({ html }) => `${id}: ${html.slice(0, 120)}`));
    });
    expect(violations, address).toEqual([]);
  }
});

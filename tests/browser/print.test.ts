/// <reference lib="dom" />
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";
import { onPage, printedPages } from "./open-page.js";
import { pagesOf } from "./site-files.js";

const site = inject("demoSite");
const pages = pagesOf(site);
const sheets = pages.filter((file) => /-(?:sheet|brew-day|entry)\.html$/u.test(file));
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

test("pages are counted as they are: two where there are two", async () => {
  const page = await browser.newPage();
  await page.setContent("<!doctype html><title>x</title><p>one</p><p style='break-before: page'>two</p>");
  expect(printedPages(await page.pdf())).toBe(2);
  await page.close();
});

/** Goes through pages one after the other and lists what is wrong with them in print. */
async function lookAt(files: readonly string[], look: (page: Page) => Promise<readonly string[]>): Promise<string[]> {
  const wrong: string[] = [];
  for (const file of files) {
    wrong.push(...await onPage(browser, site, file, { colorScheme: "dark" }, async (page) => {
      await page.emulateMedia({ media: "print", colorScheme: "dark" });
      return (await look(page)).map((what) => `${file}: ${what}`);
    }));
  }
  return wrong;
}

describe("sheets", () => {
  test("there are records and a brew day among them", () => {
    for (const kind of ["-sheet", "-brew-day"]) expect(sheets.some((file) => file.endsWith(`${kind}.html`)), kind).toBe(true);
  });

  test.each(["A4", "Letter"] as const)("print on one page of %s each", async (format) => {
    expect(await lookAt(sheets, async (page) => {
      const count = printedPages(await page.pdf({ format }));
      return count === 1 ? [] : [`${count} pages of ${format}`];
    })).toEqual([]);
  });

  test.each([["A4", 190], ["Letter", 195.9]] as const)("lose nothing at the edge of %s (%f mm between margins of 10 mm)", async (_format, widthMm) => {
    expect(await lookAt(sheets, async (page) => {
      await page.setViewportSize({ width: Math.floor((widthMm / 25.4) * 96), height: 1000 });
      return page.evaluate(() => [...document.querySelectorAll("main td, main th, main p, main h1, main svg")]
        .filter((element) => element.getClientRects().length > 0 && element.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
        .map((element) => `${element.tagName} “${(element.textContent ?? "").slice(0, 30)}” is cut off`));
    })).toEqual([]);
  });
});

/** One page of each kind that has charts, tables or pictures. */
const kinds = ["index.html", "batches/index.html", "batches/tp-03.html", "compare.html#tp-02,tp-03", ...["seasons/", "series/", "hops/", "competitions/"].flatMap((folder) => pages.find((file) => file.startsWith(folder)) ?? [])];

describe("every kind of page, printed from a dark screen", () => {
  test("has no dark background and no light letters", async () => {
    expect(await lookAt(kinds, (page) => page.evaluate(() => {
      const lightness = (color: string): number | undefined => {
        const [red, green, blue, alpha = 1] = [...color.matchAll(/[\d.]+/gu)].map(Number);
        return red === undefined || green === undefined || blue === undefined || alpha === 0 ? undefined : (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
      };
      const visible = [document.documentElement, document.body, ...document.body.querySelectorAll("*")].filter((element) => !(element instanceof SVGElement) && element.getClientRects().length > 0);
      return visible.flatMap((element) => {
        const { backgroundColor, color } = getComputedStyle(element);
        const dark = (lightness(backgroundColor) ?? 1) < 0.8;
        const pale = (lightness(color) ?? 0) > 0.6;
        return dark || pale ? [`${element.tagName}.${element.className}: ${color} on ${backgroundColor}`] : [];
      }).slice(0, 5);
    }))).toEqual([]);
  });

  test("keeps every chart whole on its page: none is taller than a page, and none may be broken over two", async () => {
    expect(await lookAt(kinds, async (page) => {
      await page.setViewportSize({ width: 688, height: 1000 });
      return page.evaluate(() => [...document.querySelectorAll<HTMLElement>(".chart-figure")].flatMap((figure) => {
        const tall = figure.getBoundingClientRect().height > ((279.4 - 28) / 25.4) * 96;
        const svg = [...figure.querySelectorAll("svg")].filter((drawing) => drawing.getClientRects().length > 0);
        return [
          ...(tall ? [`${figure.id} is taller than a page`] : []),
          ...(getComputedStyle(figure).breakInside === "avoid" ? [] : [`${figure.id} may be broken`]),
          ...(svg.length === 1 ? [] : [`${figure.id} prints ${svg.length} drawings`]),
          ...(svg.some((drawing) => drawing.getBoundingClientRect().right > document.documentElement.clientWidth + 1) ? [`${figure.id} is cut off`] : []),
        ];
      }));
    })).toEqual([]);
  });

  test("leaves out what only a screen can do: navigation, controls, buttons", async () => {
    expect(await lookAt(kinds, (page) => page.evaluate(() =>
      [...document.querySelectorAll("nav, input, select, button:not(thead .sort)")].filter((element) => element.getClientRects().length > 0).map((element) => element.outerHTML.slice(0, 80))))).toEqual([]);
  });

  test("a side-by-side table prints with what it was asked for", async () => {
    const count = await onPage(browser, site, "compare.html#tp-02,tp-03", {}, async (page) => {
      await page.locator("table").first().waitFor();
      return printedPages(await page.pdf({ format: "A4" }));
    });
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThanOrEqual(4);
  });
});

/// <reference lib="dom" />
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { openBrowser } from "./browser.js";
import { onPage } from "./open-page.js";

const site = inject("demoSite");
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

const found = (page: Page): Promise<string[]> => page.locator("#search-found .entry-title").allTextContents();
const search = <Result>(address: string, look: (page: Page) => Promise<Result>): Promise<Result> => onPage(browser, site, address, {}, look);

describe("search, opened from disk", () => {
  test("finds a batch by a word of its notes and quotes the place", async () => {
    await search("search.html#q=grapefruit", async (page) => {
      expect(await found(page)).toContain("TP-01 Tideline Pale, first go");
      expect(await page.locator("#search-found li", { hasText: "TP-01" }).first().locator(".reasons").textContent()).toMatch(/notes: .*grapefruit/u);
      expect(await page.locator("mark").first().textContent()).toMatch(/^grapefruit$/iu);
    });
  });

  test("finds by hop, style, brewer, season and figure together, and says which of them matched", async () => {
    await search("search.html", async (page) => {
      await page.getByLabel("Hop", { exact: true }).selectOption("Cascade");
      await page.getByLabel("Brewer", { exact: true }).selectOption("quayside");
      await page.getByLabel("With the figure").selectOption("abv");
      await page.getByLabel("from", { exact: true }).fill("5,2");
      await page.getByLabel("to", { exact: true }).fill("5.4");
      const reasons = await page.locator(".reasons").allTextContents();
      expect(reasons.length).toBeGreaterThan(0);
      for (const reason of reasons) {
        const [, value = "0"] = /Alcohol by volume: (\d\.\d+)/u.exec(reason) ?? [];
        // The printed value is rounded to what its uncertainty supports.
        expect(Number(value)).toBeGreaterThanOrEqual(5.195);
        expect(Number(value)).toBeLessThanOrEqual(5.405);
        expect(reason).toContain("hop: Cascade");
        expect(reason).toContain("brewer: quayside");
      }
      expect(new URL(page.url()).hash).toBe("#hop=Cascade&brewer=quayside&figure=abv&from=5.2&to=5.4");
    });
  });

  test("forgives a slip of one letter and a word only begun, and says so when nothing is found", async () => {
    await search("search.html#q=casade", async (page) => expect((await found(page)).length).toBeGreaterThan(3));
    await search("search.html#q=grapef", async (page) => expect((await found(page)).length).toBeGreaterThan(0));
    await search("search.html#q=zzzzqqq", async (page) => {
      expect(await page.locator("#search-count").textContent()).toBe("Found: no batch.");
      expect(await found(page)).toEqual([]);
    });
  });

  test("is used with the keyboard alone: words are typed at once, arrows walk what is found, Enter opens it", async () => {
    await search("search.html", async (page) => {
      await page.keyboard.type("tideline");
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press("ArrowUp");
      expect(await page.evaluate(() => document.activeElement?.closest("li") === document.querySelector("#search-found li"))).toBe(true);
      await page.keyboard.press("ArrowUp");
      expect(await page.evaluate(() => document.activeElement?.id)).toBe("search-words");
      await page.keyboard.press("ArrowDown");
      const first = await page.locator("#search-found li a").first().getAttribute("href") ?? "no link";
      await Promise.all([page.waitForURL((address) => address.pathname.endsWith(`/${first}`)), page.keyboard.press("Enter")]);
    });
  });

  test("finds methods and hops by their own pages", async () => {
    await search("search.html#q=isomerisation", async (page) => {
      expect(await page.locator("#search-found a[href^='methods/']").count()).toBeGreaterThan(0);
    });
  });

  test("without a script says what to do and shows no control that does nothing", async () => {
    await onPage(browser, site, "search.html", { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator(".without-script").isVisible()).toBe(true);
      expect(await page.locator("input, select").filter({ visible: true }).count()).toBe(0);
    });
  });
});

describe("side by side, opened from disk", () => {
  test("holds two batches against each other by address, differences first", async () => {
    await search("compare.html#tp-02,tp-03", async (page) => {
      await page.locator("table").first().waitFor();
      expect(await page.locator("caption").first().textContent()).toBe("What differs");
      const dose = await page.locator("tr", { hasText: "Dry-hop dose" }).first().locator("td").allTextContents();
      const own = await onPage(browser, site, "batches/tp-03.html", {}, (other) => other.locator("#dry-hop tr", { hasText: "Dry-hop dose" }).first().locator("td").first().locator(".number").textContent());
      expect(dose).toHaveLength(2);
      expect(dose[1]).toBe(`${own} computed`);
    });
  });

  test("takes up to four and no more, and names what isn't there", async () => {
    await search("compare.html#tp-01,tp-02,tp-03,tp-04,tp-05,qp-99", async (page) => {
      await page.locator("table").first().waitFor();
      expect(await page.locator("table").first().locator("thead th").allTextContents()).toEqual(["What", "TP-01", "TP-02", "TP-03", "TP-04"]);
      expect(await page.locator("#compare-says").textContent()).toContain("No batch here is called qp-99");
    });
  });

  test("agrees with the batch's own page on what changed since the one it repeats", async () => {
    const own = await onPage(browser, site, "batches/tp-03.html", {}, (page) => page.locator("#changes table").first().locator("tbody tr:not(:has(th[scope=rowgroup])) th").allTextContents());
    const [before = ""] = await onPage(browser, site, "batches/tp-03.html", {}, (page) => page.locator("#changes a").evaluateAll((links) => links.map((link) => link.getAttribute("href")?.replace(".html", "") ?? "")));
    expect(own.length).toBeGreaterThan(3);
    await search(`compare.html#${before},tp-03`, async (page) => {
      await page.locator("table").first().waitFor();
      expect(await page.locator("table").first().locator("tbody tr:not(:has(th[scope=rowgroup])) th").allTextContents()).toEqual(own);
    });
  });

  test("is reached from the list by choosing batches with the keyboard", async () => {
    await search("batches/index.html", async (page) => {
      const boxes = page.locator(".pick input");
      await boxes.nth(4).focus();
      await page.keyboard.press("Space");
      await boxes.nth(5).focus();
      await page.keyboard.press("Space");
      const link = page.getByRole("link", { name: "Set the chosen ones side by side" });
      await Promise.all([page.waitForURL(/compare\.html#[\w-]+,[\w-]+$/u), link.press("Enter")]);
      await page.locator("table").first().waitFor();
    });
  });

  test("lets the reader add one and leave one out, and keeps the address in step; the skip link changes nothing", async () => {
    await search("compare.html#tp-02,tp-03", async (page) => {
      await page.locator("table").first().waitFor();
      await page.getByLabel("Set another batch beside").selectOption("tp-04");
      await page.waitForURL(/#tp-02,tp-03,tp-04$/u);
      await page.getByRole("button", { name: "Leave out TP-02" }).click();
      await page.waitForURL(/#tp-03,tp-04$/u);
      await page.locator("thead th", { hasText: "TP-04" }).first().waitFor();
      await page.evaluate(() => { location.hash = "#text"; });
      expect(await page.locator("table").count()).toBeGreaterThan(1);
    });
  });

  test("without a script says where batches are held against each other", async () => {
    await onPage(browser, site, "compare.html#tp-02,tp-03", { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator(".without-script").isVisible()).toBe(true);
      expect(await page.locator("select").isVisible()).toBe(false);
    });
  });
});

describe("a summary to pass on", () => {
  test("is copied whole with one click", async () => {
    const context = await browser.newContext({ permissions: ["clipboard-read", "clipboard-write"] });
    const page = await context.newPage();
    await page.goto(`file://${site}/batches/tp-03.html`);
    await page.getByText("As Markdown").click();
    await page.getByRole("button", { name: "Copy the Markdown" }).click();
    await page.getByText("Copied.").waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await page.locator("[data-copy='the Markdown']").textContent());
    await context.close();
  });

  test("can be read where no script runs", async () => {
    await onPage(browser, site, "batches/tp-03.html", { javaScriptEnabled: false }, async (page) => {
      await page.getByText("As plain text").click();
      expect(await page.locator("[data-copy='the plain text']").isVisible()).toBe(true);
    });
  });
});

/// <reference lib="dom" />
import { existsSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { createStaticServer, fileAnswer, listen } from "../../src/cli/static-server.js";
import { openBrowser } from "./browser.js";
import { filesOf, pagesOf } from "./site-files.js";

const site = inject("demoSite");
const host = inject("demoHost");

interface Visit {
  /** Absolute addresses of everything the page links to or shows. */
  readonly links: readonly string[];
  readonly ids: readonly string[];
  /** What the browser asked for while the page opened. */
  readonly requests: readonly string[];
  readonly failures: readonly string[];
}

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** Opens every page with script off and notes what it asks for and where it leads. */
async function visitAll(addressOf: (file: string) => string): Promise<Map<string, Visit>> {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  const visits = new Map<string, Visit>();
  let requests: string[] = [];
  let failures: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("requestfailed", (request) => failures.push(request.url()));
  page.on("response", (response) => { if (response.status() >= 400) failures.push(`${response.status()} ${response.url()}`); });
  for (const file of pagesOf(site)) {
    [requests, failures] = [[], []];
    await page.goto(addressOf(file), { waitUntil: "load" });
    const found = await page.evaluate(() => {
      const absolute = (value: string): string => new URL(value, document.baseURI).href;
      const values = (attribute: string): string[] => [...document.querySelectorAll(`[${attribute}]`)].map((element) => element.getAttribute(attribute) ?? "");
      const sets = values("srcset").flatMap((set) => set.split(",").map((part) => part.trim().split(/\s+/)[0] ?? ""));
      return {
        links: [...values("href"), ...values("src"), ...values("data"), ...values("poster"), ...sets].map(absolute),
        ids: [...document.querySelectorAll("[id]")].map(({ id }) => id),
      };
    });
    visits.set(file, { ...found, requests, failures });
  }
  await context.close();
  return visits;
}

describe.each(["from disk", "from a sub-folder over http"])("every page of the demo, opened %s with script off", (way) => {
  let base = "";
  let visits = new Map<string, Visit>();
  let stopServing = (): void => undefined;

  beforeAll(async () => {
    base = pathToFileURL(`${site}${path.sep}`).href;
    if (way !== "from disk") {
      const server = createStaticServer((pathname) => fileAnswer(host, pathname));
      const port = await listen(server, 0);
      base = `http://127.0.0.1:${port}/${path.relative(host, site).replaceAll(path.sep, "/")}/`;
      stopServing = () => {
        server.close();
        server.closeAllConnections();
      };
    }
    visits = await visitAll((file) => base + file.split("/").map(encodeURIComponent).join("/"));
  });
  afterAll(() => stopServing());

  const inside = (address: string): string | undefined => {
    const [bare = ""] = address.split(/[?#]/);
    return bare.startsWith(base) ? decodeURIComponent(bare.slice(base.length)) : undefined;
  };

  test("there are pages to look at", () => {
    expect(visits.size).toBeGreaterThan(20);
    expect([...visits.keys()]).toContain("index.html");
  });

  test("asks for nothing outside the site's folder, and gets all it asks for", () => {
    for (const [file, { requests, failures }] of visits) {
      expect(failures, file).toEqual([]);
      expect(requests.filter((address) => inside(address) === undefined && !address.startsWith("data:")), file).toEqual([]);
    }
  });

  test("leads only to files that are there, named in full", () => {
    const files = new Set(filesOf(site));
    const broken = [...visits].flatMap(([file, { links }]) => links
      .filter((address) => /^(file|http):/.test(address) && address.startsWith(base.slice(0, way === "from disk" ? 7 : base.indexOf("/", 7))))
      .filter((address) => !files.has(inside(address) ?? ""))
      .map((address) => `${file} → ${address}`));
    expect(broken).toEqual([]);
  });

  test("leads only to places in a page that are there", () => {
    const broken = [...visits].flatMap(([file, { links }]) => links
      .filter((address) => address.includes("#") && inside(address)?.endsWith(".html") === true)
      .filter((address) => {
        const fragment = decodeURIComponent(address.slice(address.indexOf("#") + 1));
        return fragment !== "" && visits.get(inside(address) ?? "")?.ids.includes(fragment) !== true;
      })
      .map((address) => `${file} → ${address}`));
    expect(broken).toEqual([]);
  });

  test("uses no address but the site's own, https sources and mail", () => {
    const schemes = new Set([...visits.values()].flatMap(({ links }) => links).map((address) => new URL(address).protocol));
    for (const scheme of schemes) expect(["file:", "http:", "https:", "mailto:", "data:"]).toContain(scheme);
  });

  test("gives each place in a page an id of its own", () => {
    const twice = [...visits].flatMap(([file, { ids }]) => ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${file}#${id}`));
    expect(twice).toEqual([]);
  });
});

test("the demo site holds what a reader is promised", () => {
  for (const file of ["index.html", "batches/index.html", "methods/index.html", "help/record.html", "help/problems.html", "404.html"]) {
    expect(existsSync(path.join(site, file)), file).toBe(true);
  }
});

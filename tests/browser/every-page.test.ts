/// <reference lib="dom" />
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { createStaticServer, fileAnswer, listen } from "../../src/cli/static-server.js";
import { openBrowser } from "./browser.js";
import { choosePages } from "./page-choice.js";
import { filesOf, pagesOf } from "./site-files.js";
import { walk } from "./walk.js";

const site = inject("demoSite");
const host = inject("demoHost");

interface Visit {
  /** Absolute addresses of everything the page links to or shows. */
  readonly links: readonly string[];
  readonly ids: readonly string[];
  /** How far the page reaches beyond the right edge of the window, px. */
  readonly overflowPx: number;
  /** What the browser asked for while the page opened. */
  readonly requests: readonly string[];
  readonly failures: readonly string[];
}

type Visits = ReadonlyMap<string, Visit>;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** Opens pages on the smallest of phones with script off; notes what each asks for and where it leads. */
async function visitAll(base: string, files: readonly string[]): Promise<Visits> {
  const heard = new WeakMap<Page, { requests: string[]; failures: string[] }>();
  const listenTo = (page: Page): void => {
    const noted = { requests: [] as string[], failures: [] as string[] };
    heard.set(page, noted);
    page.on("request", (request) => noted.requests.push(request.url()));
    page.on("requestfailed", (request) => noted.failures.push(request.url()));
    page.on("response", (response) => { if (response.status() >= 400) noted.failures.push(`${response.status()} ${response.url()}`); });
  };
  const look = async (page: Page): Promise<Visit> => {
    const found = await page.evaluate(() => {
      const absolute = (value: string): string => new URL(value, document.baseURI).href;
      const values = (attribute: string): string[] => [...document.querySelectorAll(`[${attribute}]`)].map((element) => element.getAttribute(attribute) ?? "");
      const sets = values("srcset").flatMap((set) => set.split(",").map((part) => part.trim().split(/\s+/)[0] ?? ""));
      return {
        links: [...values("href"), ...values("src"), ...values("data"), ...values("poster"), ...sets].map(absolute),
        ids: [...document.querySelectorAll("[id]")].map(({ id }) => id),
        overflowPx: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      };
    });
    const { requests, failures } = heard.get(page)!;
    return { ...found, requests: requests.splice(0), failures: failures.splice(0) };
  };
  const addressOf = (file: string): string => base + file.split("/").map(encodeURIComponent).join("/");
  return walk({ browser, options: { javaScriptEnabled: false, viewport: { width: 320, height: 740 } }, files, addressOf }, look, listenTo);
}

/** Where an address leads within the site; nothing if it leads elsewhere. */
function insideOf(base: string, address: string): string | undefined {
  const [bare = ""] = address.split(/[?#]/);
  return bare.startsWith(base) ? decodeURIComponent(bare.slice(base.length)) : undefined;
}

function expectToStayInside(base: string, visits: Visits): void {
  for (const [file, { requests, failures }] of visits) {
    expect(failures, file).toEqual([]);
    expect(requests.filter((address) => insideOf(base, address) === undefined && !address.startsWith("data:")), file).toEqual([]);
  }
}

const diskBase = pathToFileURL(`${site}${path.sep}`).href;
let fromDisk: Visits = new Map();
beforeAll(async () => {
  fromDisk = await visitAll(diskBase, pagesOf(site));
});

describe("every page of the demo, opened from disk with script off", () => {
  test("there are pages to look at", () => {
    expect(fromDisk.size).toBeGreaterThan(20);
    for (const file of ["index.html", "batches/index.html", "methods/index.html", "help/record.html", "help/problems.html", "404.html"]) {
      expect([...fromDisk.keys()]).toContain(file);
    }
  });

  test("asks for nothing outside the site's folder, and gets all it asks for", () => {
    expectToStayInside(diskBase, fromDisk);
  });

  test("leads only to files that are there, named in full", () => {
    const files = new Set(filesOf(site));
    const broken = [...fromDisk].flatMap(([file, { links }]) => links
      .filter((address) => address.startsWith("file:") && !files.has(insideOf(diskBase, address) ?? ""))
      .map((address) => `${file} → ${address}`));
    expect(broken).toEqual([]);
  });

  test("leads only to places in a page that are there", () => {
    const broken = [...fromDisk].flatMap(([file, { links }]) => links
      .filter((address) => address.includes("#") && insideOf(diskBase, address)?.endsWith(".html") === true)
      .filter((address) => {
        const fragment = decodeURIComponent(address.slice(address.indexOf("#") + 1));
        // The side-by-side page reads its fragment itself: a list of batches.
        if (insideOf(diskBase, address) === "compare.html" && file !== "compare.html") return fragment !== "" && !fromDisk.has(`batches/${fragment}.html`);
        return fragment !== "" && fromDisk.get(insideOf(diskBase, address) ?? "")?.ids.includes(fragment) !== true;
      })
      .map((address) => `${file} → ${address}`));
    expect(broken).toEqual([]);
  });

  test("uses no address but the site's own, https sources and mail", () => {
    const schemes = new Set([...fromDisk.values()].flatMap(({ links }) => links).map((address) => new URL(address).protocol));
    for (const scheme of schemes) expect(["file:", "http:", "https:", "mailto:", "data:"]).toContain(scheme);
  });

  test("gives each place in a page an id of its own", () => {
    const twice = [...fromDisk].flatMap(([file, { ids }]) => ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${file}#${id}`));
    expect(twice).toEqual([]);
  });

  test("doesn't scroll sideways at 320 px", () => {
    const tooWide = [...fromDisk].filter(([, { overflowPx }]) => overflowPx > 0).map(([file, { overflowPx }]) => `${file}: ${overflowPx} px too wide`);
    expect(tooWide).toEqual([]);
  });
});

test("served from a sub-folder, pages of every kind get all they ask for there, and lead where they lead from disk", async () => {
  const server = createStaticServer((pathname) => fileAnswer(host, pathname));
  const port = await listen(server, 0);
  const base = `http://127.0.0.1:${port}/${path.relative(host, site).replaceAll(path.sep, "/")}/`;
  const visits = await visitAll(base, choosePages(site));
  server.close();
  server.closeAllConnections();
  expect(visits.size).toBeGreaterThan(15);
  expectToStayInside(base, visits);
  for (const [file, { links, requests }] of visits) {
    const leads = (from: string, addresses: readonly string[]): readonly string[] => addresses.map((address) => address.startsWith(from) ? address.slice(from.length) : address);
    expect(leads(base, links), file).toEqual(leads(diskBase, fromDisk.get(file)!.links));
    // Its style sheet at least; the page for a wrong address stands alone, since it doesn't know where it is shown.
    expect(requests.length, file).toBeGreaterThan(file === "404.html" ? 0 : 1);
  }
});

/// <reference lib="dom" />
import { mkdir, readdir, rename, writeFile } from "node:fs/promises";
import path from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { emptyFolder, runCommand } from "../cli/stand-in.js";
import { openBrowser } from "./browser.js";

const record = (title: string): string => `---\ntitle: ${title}\nbatch: P-1\nbrewed: 2026-03-01\n---\nNotes.\n`;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
  return () => browser.close();
});

/** A preview takes well under a second; a machine that runs other tests beside takes longer. */
const PATIENCE = { timeout: 60_000 };

interface Served { readonly log: string; readonly address: string; readonly printed: () => string }

/** A log of one record, served until the test ends. */
async function serveLog(text: string): Promise<Served> {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches"));
  await writeFile(path.join(log, "batches", "p-1.md"), text);
  const stop = new AbortController();
  let printed = "";
  const address = await new Promise<string>((resolve, reject) => {
    const done = runCommand(["serve", log, "--port", "0"], {
      stop: stop.signal,
      onPrint: (part) => {
        printed += part;
        const [found] = /http:\/\/\S+/.exec(part) ?? [];
        if (found !== undefined) resolve(found);
      },
    });
    done.then(({ err }) => reject(new Error(`serve ended: ${err}`)), reject);
    onTestFinished(async () => {
      stop.abort();
      expect((await done).exit).toBe(0);
    });
  });
  return { log, address, printed: () => printed };
}

describe("gylebook serve, in a browser", () => {
  test("a saved record shows on the open page by itself; a broken save keeps the last good page under its problems", async () => {
    const { log, address } = await serveLog(record("First title"));
    const file = path.join(log, "batches", "p-1.md");
    const page = await browser.newPage();
    await page.goto(`${address}batches/p-1.html`);
    expect(await page.title()).toContain("First title");

    await writeFile(file, record("Second title"));
    await page.waitForFunction(() => document.title.includes("Second title"), undefined, PATIENCE);

    await writeFile(file, record("Third title").replace("brewed: 2026-03-01", "brewed: 2026-02-30"));
    const banner = page.getByRole("alert");
    await banner.waitFor(PATIENCE);
    expect(await banner.textContent()).toContain("batches/p-1.md:4:9  brewed: expected");
    expect(await page.title()).toContain("Second title");

    await writeFile(file, record("Third title"));
    await page.waitForFunction(() => document.title.includes("Third title"), undefined, PATIENCE);
    expect(await banner.count()).toBe(0);
    await page.close();
  });

  test("a log that is broken from the start is said on every address, and shown once it is mended", async () => {
    const { log, address } = await serveLog(record("Title").replace("batch: P-1", "batch_number: P-1"));
    const page = await browser.newPage();
    await page.goto(`${address}batches/p-1.html`);
    expect(await page.getByRole("alert").textContent()).toContain("batch_number");
    await writeFile(path.join(log, "batches", "p-1.md"), record("Mended"));
    await page.waitForFunction(() => document.title.includes("Mended"), undefined, PATIENCE);
    await page.close();
  });

  test("pages can be read without script, and a removed record's page goes", async () => {
    const { log, address } = await serveLog(record("Title"));
    await writeFile(path.join(log, "batches", "p-2.md"), record("Other").replace("P-1", "P-2"));
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await expect.poll(async () => (await page.goto(`${address}batches/p-2.html`))?.status(), PATIENCE).toBe(200);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("Other");
    await rename(path.join(log, "batches", "p-2.md"), path.join(log, "batches", "_p-2.md"));
    await expect.poll(async () => (await page.goto(`${address}batches/p-2.html`))?.status(), PATIENCE).toBe(404);
    await context.close();
  });

  test("a hostile problem text is shown as text, and nothing is written into the log", async () => {
    const { log, address } = await serveLog(record("Title").replace("batch: P-1", "batch: P-1\n\"<img src=x onerror=alert(1)>\": 1"));
    const page = await browser.newPage();
    let dialogs = 0;
    page.on("dialog", (dialog) => { dialogs += 1; void dialog.dismiss(); });
    await page.goto(address);
    expect(await page.getByRole("alert").textContent()).toContain("<img src=x onerror=alert(1)>");
    expect(await page.locator("img").count()).toBe(0);
    expect(dialogs).toBe(0);
    expect(await readdir(log, { recursive: true })).toEqual(["batches", "batches/p-1.md"]);
    await page.close();
  });
});

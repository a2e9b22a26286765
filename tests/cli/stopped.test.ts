import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { emptyFolder } from "./stand-in.js";

const COMMAND = path.resolve(import.meta.dirname, "..", "..", "dist", "cli", "main.js");

interface Place { readonly log: string; readonly parent: string; readonly site: string; readonly start: () => ChildProcess }

/** A log of 200 records, so that a build takes long enough to be stopped. */
async function place(): Promise<Place> {
  const parent = await emptyFolder();
  const [log, site] = [path.join(parent, "log"), path.join(parent, "out", "site")];
  await mkdir(path.join(log, "batches"), { recursive: true });
  await writeRecords(log, "First");
  const start = (): ChildProcess => spawn(process.execPath, [COMMAND, "build", log, "--out", site], {
    env: { ...process.env, XDG_CACHE_HOME: path.join(parent, "cache") }, stdio: ["ignore", "pipe", "pipe"],
  });
  return { log, parent, site, start };
}

async function writeRecords(log: string, title: string): Promise<void> {
  for (let number = 1; number <= 200; number += 1) {
    await writeFile(path.join(log, "batches", `p-${number}.md`), `---\ntitle: ${title} ${number}\nbatch: P-${number}\nbrewed: 2026-03-01\n---\n`);
  }
}

async function ended(child: ChildProcess): Promise<{ readonly code: number | null; readonly err: string }> {
  let err = "";
  child.stderr?.setEncoding("utf8").on("data", (text: string) => { err += text; });
  const [code] = await once(child, "close") as [number | null];
  return { code, err };
}

/** Waits until the build writes beside its place. */
async function untilWriting({ site }: Place): Promise<void> {
  await expect.poll(async () => (await readdir(path.dirname(site))).some((name) => name.startsWith("site.new-")), { timeout: 30_000, interval: 5 }).toBe(true);
}

describe("a build that is stopped while it writes", () => {
  test("by a kill leaves the last good site, and the next build clears up after it", async () => {
    const it = await place();
    expect(await ended(it.start())).toEqual({ code: 0, err: "" });
    await writeRecords(it.log, "Second");
    const child = it.start();
    await untilWriting(it);
    child.kill("SIGKILL");
    await ended(child);
    expect(await readFile(path.join(it.site, "batches", "p-1.html"), "utf8")).toContain("First 1");
    expect((await readdir(path.dirname(it.site))).length).toBeGreaterThan(1);
    expect((await ended(it.start())).code).toBe(0);
    expect(await readFile(path.join(it.site, "batches", "p-1.html"), "utf8")).toContain("Second 1");
    expect(await readdir(path.dirname(it.site))).toEqual(["site"]);
  }, 120_000);

  test("by Ctrl-C says so, leaves the last good site and nothing beside it", async () => {
    const it = await place();
    expect((await ended(it.start())).code).toBe(0);
    await writeRecords(it.log, "Second");
    const child = it.start();
    const end = ended(child);
    await untilWriting(it);
    child.kill("SIGINT");
    expect(await end).toEqual({ code: 2, err: "Stopped.\n" });
    expect(await readFile(path.join(it.site, "batches", "p-1.html"), "utf8")).toContain("First 1");
    expect(await readdir(path.dirname(it.site))).toEqual(["site"]);
  }, 120_000);
});

test("a reader that goes away early gets no complaint", async () => {
  const { log } = await place();
  await writeRecords(log, "\"");
  const child = spawn(process.execPath, [COMMAND, "check", log], { stdio: ["ignore", "pipe", "pipe"] });
  child.stdout.destroy();
  const { err } = await ended(child);
  expect(err).toBe("");
}, 60_000);

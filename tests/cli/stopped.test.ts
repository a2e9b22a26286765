import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, readFile, readdir, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { emptyFolder } from "./stand-in.js";

const COMMAND = path.resolve(import.meta.dirname, "..", "..", "dist", "cli", "main.js");

interface Place { readonly log: string; readonly parent: string; readonly site: string; readonly start: () => ChildProcess }

/** So many records that a build takes long enough to be stopped. */
const MANY = 200;

async function place(): Promise<Place> {
  const parent = await emptyFolder();
  const [log, site] = [path.join(parent, "log"), path.join(parent, "out", "site")];
  const start = (): ChildProcess => spawn(process.execPath, [COMMAND, "build", log, "--out", site], {
    env: { ...process.env, XDG_CACHE_HOME: path.join(parent, "cache") }, stdio: ["ignore", "pipe", "pipe"],
  });
  return { log, parent, site, start };
}

/** Makes these the log's records, instead of those that were there. */
async function writeRecords(log: string, title: string, count: number): Promise<void> {
  await rm(path.join(log, "batches"), { recursive: true, force: true });
  await mkdir(path.join(log, "batches"), { recursive: true });
  for (let number = 1; number <= count; number += 1) {
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

test("a build that is stopped while it writes leaves the last good site; by Ctrl-C nothing else, by a kill what the next build clears up", async () => {
  const it = await place();
  const pageText = (): Promise<string> => readFile(path.join(it.site, "batches", "p-1.html"), "utf8");
  const besides = async (): Promise<readonly string[]> => (await readdir(path.dirname(it.site))).filter((name) => name !== "site");
  await writeRecords(it.log, "First", 1);
  expect(await ended(it.start())).toEqual({ code: 0, err: "" });

  await writeRecords(it.log, "Second", MANY);
  const interrupted = it.start();
  const interruption = ended(interrupted);
  await untilWriting(it);
  interrupted.kill("SIGINT");
  expect(await interruption).toEqual({ code: 2, err: "Stopped.\n" });
  expect(await pageText()).toContain("First 1");
  expect(await besides()).toEqual([]);

  const killed = it.start();
  await untilWriting(it);
  killed.kill("SIGKILL");
  await ended(killed);
  expect(await pageText()).toContain("First 1");
  expect(await besides()).not.toEqual([]);

  await writeRecords(it.log, "Third", 1);
  expect((await ended(it.start())).code).toBe(0);
  expect(await pageText()).toContain("Third 1");
  expect(await besides()).toEqual([]);
}, 120_000);

test("a reader that goes away early gets no complaint", async () => {
  const { log } = await place();
  await writeRecords(log, "\"", MANY);
  const child = spawn(process.execPath, [COMMAND, "check", log], { stdio: ["ignore", "pipe", "pipe"] });
  child.stdout.destroy();
  const { err } = await ended(child);
  expect(err).toBe("");
}, 60_000);

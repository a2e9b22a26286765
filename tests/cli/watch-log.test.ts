import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { watchLog } from "../../src/cli/watch-log.js";
import { emptyFolder } from "./stand-in.js";

interface Watched { readonly log: string; readonly next: () => Promise<boolean> }

async function watched(): Promise<Watched> {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches", "one"), { recursive: true });
  await writeFile(path.join(log, "batches", "one", "index.md"), "1");
  const stop = new AbortController();
  onTestFinished(() => stop.abort());
  let noticed = (): void => undefined;
  await watchLog(log, () => noticed(), stop.signal);
  /** Whether a change is noticed within a second from now. */
  const next = (): Promise<boolean> => new Promise((resolve) => {
    const timer = setTimeout(() => resolve(false), 1000);
    noticed = () => {
      clearTimeout(timer);
      resolve(true);
    };
  });
  return { log, next };
}

describe("a log being watched", () => {
  test("a saved record is noticed, however the editor saves it, again and again", async () => {
    const { log, next } = await watched();
    const record = path.join(log, "batches", "one", "index.md");
    for (const text of ["2", "3"]) {
      const inPlace = next();
      await writeFile(record, text);
      expect(await inPlace).toBe(true);
      const byRename = next();
      await writeFile(`${record}.tmp`, text);
      await rename(`${record}.tmp`, record);
      expect(await byRename).toBe(true);
    }
  });

  test("so is a record in a folder made after the start, one made again, and one removed", async () => {
    const { log, next } = await watched();
    const folder = path.join(log, "batches", "two");
    for (let round = 0; round < 2; round += 1) {
      const made = next();
      await mkdir(folder);
      expect(await made).toBe(true);
      const saved = next();
      await writeFile(path.join(folder, "index.md"), "1");
      expect(await saved).toBe(true);
      const removed = next();
      await rm(folder, { recursive: true });
      expect(await removed).toBe(true);
      await next();
    }
  });

  test("a site built into the log's folder isn't a change of the log", async () => {
    const { log, next } = await watched();
    const built = next();
    await mkdir(path.join(log, "_site.new-1"));
    await writeFile(path.join(log, "_site.new-1", "index.html"), "");
    await rename(path.join(log, "_site.new-1"), path.join(log, "_site"));
    expect(await built).toBe(false);
  });

  test("shared/ made later is followed too", async () => {
    const { log, next } = await watched();
    const made = next();
    await mkdir(path.join(log, "shared"));
    expect(await made).toBe(true);
    const saved = next();
    await writeFile(path.join(log, "shared", "club.yaml"), "name: x");
    expect(await saved).toBe(true);
  });
});

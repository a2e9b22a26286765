import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { watchLog } from "../../src/cli/watch-log.js";
import { emptyFolder } from "./stand-in.js";

interface Watched {
  readonly log: string;
  /** Resolves once a change is noticed; call it before the change. */
  readonly change: () => Promise<void>;
  /** Whether nothing is noticed for a second. */
  readonly quiet: () => Promise<boolean>;
}

async function watched(): Promise<Watched> {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches", "one"), { recursive: true });
  await writeFile(path.join(log, "batches", "one", "index.md"), "1");
  const stop = new AbortController();
  onTestFinished(() => stop.abort());
  let noticed = (): void => undefined;
  await watchLog(log, () => noticed(), stop.signal);
  const change = (): Promise<void> => new Promise((resolve) => { noticed = resolve; });
  const quiet = (): Promise<boolean> => new Promise((resolve) => {
    const timer = setTimeout(() => resolve(true), 1000);
    noticed = () => {
      clearTimeout(timer);
      resolve(false);
    };
  });
  return { log, change, quiet };
}

// A change that isn't noticed lets its test run out of time.
describe("a log being watched", () => {
  test("a saved record is noticed, however the editor saves it, again and again", async () => {
    const { log, change } = await watched();
    const record = path.join(log, "batches", "one", "index.md");
    for (const text of ["2", "3"]) {
      const inPlace = change();
      await writeFile(record, text);
      await inPlace;
      const byRename = change();
      await writeFile(`${record}.tmp`, text);
      await rename(`${record}.tmp`, record);
      await byRename;
    }
  });

  test("so is a record in a folder made after the start, one made again, and one removed", async () => {
    const { log, change, quiet } = await watched();
    const folder = path.join(log, "batches", "two");
    for (let round = 0; round < 2; round += 1) {
      const made = change();
      await mkdir(folder);
      await made;
      const saved = change();
      await writeFile(path.join(folder, "index.md"), "1");
      await saved;
      const removed = change();
      await rm(folder, { recursive: true });
      await removed;
      await quiet();
    }
  });

  test("a site built into the log's folder isn't a change of the log", async () => {
    const { log, quiet } = await watched();
    const built = quiet();
    await mkdir(path.join(log, "_site.new-1"));
    await writeFile(path.join(log, "_site.new-1", "index.html"), "");
    await rename(path.join(log, "_site.new-1"), path.join(log, "_site"));
    expect(await built).toBe(true);
  });

  test("shared/ made later is followed too", async () => {
    const { log, change } = await watched();
    const made = change();
    await mkdir(path.join(log, "shared"));
    await made;
    const saved = change();
    await writeFile(path.join(log, "shared", "club.yaml"), "name: x");
    await saved;
  });
});

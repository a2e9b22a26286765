import { mkdir, readFile, readdir, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { MARKER, isInside, refuseUnsafeOutput, replaceFolder } from "../../src/cli/output-folder.js";
import { emptyFolder } from "./stand-in.js";

const write = (name: string) => (folder: string): Promise<void> => writeFile(path.join(folder, name), name);

describe("replaceFolder", () => {
  test("makes the folder, and replaces all that was in it the next time", async () => {
    const out = path.join(await emptyFolder(), "deep", "site");
    await replaceFolder(out, write("old.html"));
    await replaceFolder(out, write("new.html"));
    expect((await readdir(out)).sort()).toEqual([MARKER, "new.html"]);
    expect(await readdir(path.dirname(out))).toEqual(["site"]);
  });

  test("leaves the last good site as it was when filling fails, and nothing beside it", async () => {
    const out = path.join(await emptyFolder(), "site");
    await replaceFolder(out, write("good.html"));
    await expect(replaceFolder(out, async (folder) => {
      await write("half.html")(folder);
      throw new Error("the disk is full");
    })).rejects.toThrow("the disk is full");
    expect((await readdir(out)).sort()).toEqual(["good.html", MARKER].sort());
    expect(await readdir(path.dirname(out))).toEqual(["site"]);
  });

  test("puts the last good site back after a build that was ended in the middle of the swap", async () => {
    const parent = await emptyFolder();
    const out = path.join(parent, "site");
    // No process can have this number: Linux allows at most 4,194,304 (proc(5), pid_max).
    await mkdir(path.join(parent, "site.old-99999999"));
    await write("good.html")(path.join(parent, "site.old-99999999"));
    await mkdir(path.join(parent, "site.new-99999998"));
    await expect(replaceFolder(out, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(await readFile(path.join(out, "good.html"), "utf8")).toBe("good.html");
    expect(await readdir(parent)).toEqual(["site"]);
  });

  test("keeps its hands off folders whose names only look similar", async () => {
    const parent = await emptyFolder();
    for (const name of ["site.new-", "site.new-1a", "site.older-99999999", "my-site.old-99999999"]) await mkdir(path.join(parent, name));
    await replaceFolder(path.join(parent, "site"), write("a.html"));
    expect((await readdir(parent)).sort()).toEqual(["my-site.old-99999999", "site", "site.new-", "site.new-1a", "site.older-99999999"]);
  });
});

describe("refuseUnsafeOutput", () => {
  const logWithBatch = async (): Promise<string> => {
    const log = await emptyFolder();
    await mkdir(path.join(log, "batches", "one"), { recursive: true });
    return log;
  };

  test.each(["", "..", "batches", "batches/site", "shared/site", "batches/one"])("refuses %j of the log", async (place) => {
    const log = await logWithBatch();
    await expect(refuseUnsafeOutput(path.join(log, place), log)).rejects.toThrow(/log/);
  });

  test("follows links before it judges", async () => {
    const log = await logWithBatch();
    const link = path.join(await emptyFolder(), "link");
    await symlink(path.join(log, "batches"), link);
    await expect(refuseUnsafeOutput(path.join(link, "site"), log)).rejects.toThrow(/batches/);
  });

  test("refuses a folder with files it didn't write, and a file", async () => {
    const log = await logWithBatch();
    const out = await emptyFolder();
    await write("thesis.txt")(out);
    await expect(refuseUnsafeOutput(out, log)).rejects.toThrow(/gylebook didn't write/);
    await expect(refuseUnsafeOutput(path.join(out, "thesis.txt"), log)).rejects.toThrow(/is a file/);
  });

  test("allows a new folder, an empty one, and one of its own", async () => {
    const log = await logWithBatch();
    const own = path.join(log, "_site");
    await expect(refuseUnsafeOutput(own, log)).resolves.toBeUndefined();
    await replaceFolder(own, write("index.html"));
    await expect(refuseUnsafeOutput(own, log)).resolves.toBeUndefined();
    await expect(refuseUnsafeOutput(await emptyFolder(), log)).resolves.toBeUndefined();
  });
});

describe("isInside", () => {
  test.each([["/a/b", "/a", true], ["/a", "/a", true], ["/ab", "/a", false], ["/a/..b", "/a", true], ["/", "/a", false]])("%s in %s: %s", (inner, outer, is) => {
    expect(isInside(inner, outer)).toBe(is);
  });
});

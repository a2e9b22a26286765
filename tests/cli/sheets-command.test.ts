import { mkdir, readFile, readdir, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { emptyFolder, runCommand } from "./stand-in.js";

const record = (batch: string, more = ""): string => `---\ntitle: Pale\nbatch: ${batch}\nbrewed: 2026-03-01\n${more}---\n`;
const competition = "---\nname: Tideline Cup\ndate: 2026-09-12\nseed: harbour\n---\n";

/** A log with a batch, one that is kept private, a broken one and a competition, in the folder it is run from. */
async function logFolder(): Promise<string> {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches"));
  await mkdir(path.join(log, "shared", "competitions", "2026-tideline-cup"), { recursive: true });
  await writeFile(path.join(log, "batches", "one.md"), record("TP-01", "aim: {raise: [orange peel], primary: orange peel}\n"));
  await writeFile(path.join(log, "batches", "two.md"), record("TP 2/b", "publish: false\n"));
  await writeFile(path.join(log, "batches", "three.md"), record("TP-03", "fermenter: {volume: 20}\n"));
  await writeFile(path.join(log, "shared", "competitions", "2026-tideline-cup", "index.md"), competition);
  await writeFile(path.join(log, "shared", "competitions", "2026-tideline-cup", "entries.csv"), "entry,style,brewer\nE1,American Pale Ale,quayside\n");
  return log;
}

const everything = async (folder: string): Promise<string[]> => (await readdir(folder, { recursive: true })).sort();

describe("gylebook sheets", () => {
  test("writes into a folder of the batch's name, says where, and leaves the log as it was", async () => {
    const log = await logFolder();
    const before = await everything(log);
    const { exit, out, err } = await runCommand(["sheets", "TP-01"], { in: log });
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toMatch(/^Wrote \d+ files to _private\/tp-01\./);
    expect(await readdir(path.join(log, "_private", "tp-01"))).toContain("index.html");
    expect((await everything(log)).filter((file) => !file.startsWith("_private"))).toEqual(before);
  });

  test.each(["TP-01", "tp-01", "batches/one.md", "TP 2/b", "tp-2-b"])("knows a batch as %s, published or not", async (name) => {
    const { exit, err } = await runCommand(["sheets", name], { in: await logFolder() });
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
  });

  test.each(["2026-tideline-cup", "shared/competitions/2026-tideline-cup/", "competitions/2026-tideline-cup"])("knows a competition as %s", async (name) => {
    const log = await logFolder();
    const { exit, err } = await runCommand(["sheets", name, log, "--out", path.join(log, "_paper")], { in: await emptyFolder() });
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(await readdir(path.join(log, "_paper"))).toEqual(["2026-tideline-cup"]);
  });

  test("suggests the nearest name for one it doesn't know, and lists names where none is near", async () => {
    const log = await logFolder();
    expect(await runCommand(["sheets", "TP-0l"], { in: log })).toMatchObject({ exit: 2, err: expect.stringContaining("did you mean TP-01?") as string });
    expect(await runCommand(["sheets", "2026-tidelin-cup"], { in: log })).toMatchObject({ exit: 2, err: expect.stringContaining("did you mean 2026-tideline-cup?") as string });
    expect(await runCommand(["sheets", "quartermaster"], { in: log })).toMatchObject({ exit: 2, err: expect.stringContaining("there are TP 2/b, TP-01, TP-03, 2026-tideline-cup") as string });
    expect(await everything(log)).not.toContain("_private");
  });

  test("asks which is meant where a batch and a competition have one name", async () => {
    const log = await logFolder();
    await writeFile(path.join(log, "batches", "cup.md"), record("2026-tideline-cup"));
    const { exit, err } = await runCommand(["sheets", "2026-tideline-cup"], { in: log });
    expect({ exit, err }).toEqual({ exit: 2, err: expect.stringContaining("batches/cup.md, shared/competitions/2026-tideline-cup/index.md") as string });
    expect((await runCommand(["sheets", "batches/cup.md"], { in: log })).exit).toBe(0);
  });

  test("a record with errors gives its problems, exit 1 and no files; errors elsewhere don't matter", async () => {
    const log = await logFolder();
    const { exit, out, err } = await runCommand(["sheets", "TP-03"], { in: log });
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toContain("batches/three.md:5:21");
    expect(err).toContain("No sheets were written.");
    expect(await everything(log)).not.toContain("_private");
  });

  test("an error in a file that all records share is everybody's", async () => {
    const log = await logFolder();
    await writeFile(path.join(log, "shared", "club.yaml"), "zone: Nowhere/Atall\n");
    expect(await runCommand(["sheets", "TP-01"], { in: log })).toMatchObject({ exit: 1, err: expect.stringContaining("shared/club.yaml") as string });
  });

  test.each(["_site", "_site/private", "_site/deep/er"])("refuses %s, since a built site is published", async (place) => {
    const log = await logFolder();
    await mkdir(path.join(log, "_site"));
    await writeFile(path.join(log, "_site", "gylebook.txt"), "");
    const { exit, err } = await runCommand(["sheets", "TP-01", "--out", place], { in: log });
    expect({ exit, err }).toEqual({ exit: 2, err: expect.stringContaining("must not be published") as string });
    expect(await everything(path.join(log, "_site"))).toEqual(["gylebook.txt"]);
  });

  test("follows a link into a built site before it judges", async () => {
    const log = await logFolder();
    await mkdir(path.join(log, "_site"));
    await writeFile(path.join(log, "_site", "gylebook.txt"), "");
    await symlink(path.join(log, "_site"), path.join(log, "_elsewhere"));
    expect((await runCommand(["sheets", "TP-01", "--out", "_elsewhere/x"], { in: log })).exit).toBe(2);
  });

  test.each(["batches", "shared", "shared/competitions"])("refuses %s of the log, which is read", async (place) => {
    const log = await logFolder();
    const before = await everything(log);
    expect(await runCommand(["sheets", "TP-01", "--out", place], { in: log })).toMatchObject({ exit: 2, err: expect.stringContaining("never writes into the log") as string });
    expect(await everything(log)).toEqual(before);
  });

  test("refuses a folder with files it didn't write, and replaces its own whole", async () => {
    const log = await logFolder();
    await mkdir(path.join(log, "_private", "tp-01"), { recursive: true });
    await writeFile(path.join(log, "_private", "tp-01", "mine.txt"), "");
    expect((await runCommand(["sheets", "TP-01"], { in: log })).exit).toBe(2);
    expect((await runCommand(["sheets", "TP-01", "--out", "_other"], { in: log })).exit).toBe(0);
    await writeFile(path.join(log, "_other", "tp-01", "old.html"), "");
    expect((await runCommand(["sheets", "TP-01", "--out", "_other"], { in: log })).exit).toBe(0);
    expect(await readdir(path.join(log, "_other", "tp-01"))).not.toContain("old.html");
  });

  test("every file is whole in itself: no link leaves the folder, no other host, no script", async () => {
    const log = await logFolder();
    await runCommand(["sheets", "TP-01"], { in: log });
    const folder = path.join(log, "_private", "tp-01");
    const pages = (await readdir(folder)).filter((file) => file.endsWith(".html"));
    for (const page of pages) {
      const html = await readFile(path.join(folder, page), "utf8");
      const targets = [...html.matchAll(/(?:href|src)="([^"]*)"/gu)].map(([, target]) => target);
      expect(targets.filter((target) => !pages.includes(target ?? ""))).toEqual([]);
      expect(html).not.toMatch(/<script|https?:\/\/|<link/u);
      expect(html).toContain("<style>");
    }
  });

  test("the same record gives the same bytes", async () => {
    const log = await logFolder();
    const read = async (): Promise<string[]> => Promise.all((await readdir(path.join(log, "_private", "tp-01"))).sort().map((file) => readFile(path.join(log, "_private", "tp-01", file), "utf8")));
    await runCommand(["sheets", "TP-01"], { in: log, now: "2026-06-20T11:00:00Z" });
    const first = await read();
    await runCommand(["sheets", "TP-01"], { in: log, now: "2027-01-02T03:00:00Z" });
    expect(await read()).toEqual(first);
  });
});

import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { emptyFolder, runCommand } from "./stand-in.js";

/** Takes the comment marks off the examples: lines that begin with "# " and hold a field, a list item or a deeper one. */
const uncommented = (text: string): string => text.replaceAll(/^( *)# (?=( *)(- |[a-z_]+:( |$)))/gm, "$1");

describe("gylebook new", () => {
  test("log makes a log that builds as it is", async () => {
    const folder = await emptyFolder();
    const made = await runCommand(["new", "log", "my-log"], { in: folder });
    expect(made.exit).toBe(0);
    expect(made.out).toBe("Wrote my-log/batches/first/index.md\nWrote my-log/shared/club.yaml\nWrote my-log/shared/equipment.yaml\nWrote my-log/.gitignore\n");
    expect(await runCommand(["check", "my-log"], { in: folder })).toEqual({ exit: 0, out: "No problems.\n", err: "" });
    expect((await runCommand(["build", "my-log"], { in: folder })).exit).toBe(0);
    expect(await readdir(path.join(folder, "_site"))).toContain("index.html");
  });

  test("log keeps sheets and site out of a repository", async () => {
    const folder = await emptyFolder();
    await runCommand(["new", "log", "my-log"], { in: folder });
    const log = path.join(folder, "my-log");
    expect((await runCommand(["sheets", "first"], { in: log })).exit).toBe(0);
    expect((await runCommand(["build"], { in: log })).exit).toBe(0);
    const ignored = (await readFile(path.join(log, ".gitignore"), "utf8")).split("\n").filter((line) => line !== "" && !line.startsWith("#"));
    // What the commands wrote beside the records, and nothing of the records.
    const written = (await readdir(log)).filter((name) => !["batches", "shared", ".gitignore"].includes(name));
    expect(ignored.toSorted()).toEqual(written.map((name) => `${name}/`).toSorted());
  });

  test("every example in it is right: with all comment marks taken off, it still checks without an error", async () => {
    const folder = await emptyFolder();
    await runCommand(["new", "log", "my-log"], { in: folder });
    for (const file of ["batches/first/index.md", "shared/club.yaml", "shared/equipment.yaml"]) {
      const place = path.join(folder, "my-log", file);
      const before = await readFile(place, "utf8");
      const after = uncommented(before);
      expect(after, file).not.toBe(before);
      await writeFile(place, after);
    }
    const { out, exit } = await runCommand(["check", "my-log"], { in: folder });
    expect(out.split("\n").filter((line) => /^\S+:\d+:\d+ {2}(?!warning)/.test(line))).toEqual([]);
    expect(exit).toBe(0);
  });

  test("batch and competition go into the log one is in", async () => {
    const folder = await emptyFolder();
    await mkdir(path.join(folder, "batches"));
    for (const name of ["tideline-4", "2026-10-01", "true", "Ärger"]) expect(await runCommand(["new", "batch", name], { in: folder })).toMatchObject({ exit: 0, out: `Wrote batches/${name}/index.md\n` });
    expect((await runCommand(["new", "competition", "cup-2026"], { in: folder })).exit).toBe(0);
    expect(await runCommand(["check"], { in: folder })).toMatchObject({ exit: 0, err: "" });
    expect(await readFile(path.join(folder, "batches", "tideline-4", "index.md"), "utf8")).toMatch(/^---\ntitle: tideline-4\nbatch: tideline-4 .*\nbrewed: 2026-06-20\n/);
  });

  test("never overwrites", async () => {
    const folder = await emptyFolder();
    await mkdir(path.join(folder, "batches", "mine"), { recursive: true });
    await writeFile(path.join(folder, "batches", "mine", "index.md"), "mine");
    const again = await runCommand(["new", "batch", "mine"], { in: folder });
    expect(again).toMatchObject({ exit: 2, err: "batches/mine is there already, and nothing is ever overwritten.\n  give another name\n" });
    expect(await readFile(path.join(folder, "batches", "mine", "index.md"), "utf8")).toBe("mine");
  });

  test.each(["../up", "a/b", ".hidden", "_private", "", "a b", "-x:"])("refuses the name %j and writes nothing", async (name) => {
    const folder = await emptyFolder();
    const refused = await runCommand(["new", "log", "--", name], { in: folder });
    expect(refused.exit).toBe(2);
    expect(refused.err).toContain("A name is made of letters, digits and hyphens");
    expect(await readdir(folder)).toEqual([]);
  });

  test("batch outside a log says so", async () => {
    const refused = await runCommand(["new", "batch", "x"]);
    expect(refused.exit).toBe(2);
    expect(refused.err).toContain("isn't a log: it has no folder batches/");
  });
});

import { chmod, mkdir, readFile, readdir, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { type Outcome, emptyFolder, runCommand } from "./stand-in.js";

type Files = Readonly<Record<string, string | Uint8Array>>;

async function logWith(files: Files): Promise<string> {
  const log = await emptyFolder();
  for (const [file, content] of Object.entries(files)) {
    await mkdir(path.dirname(path.join(log, file)), { recursive: true });
    await writeFile(path.join(log, file), content);
  }
  return log;
}

const required = (number: number, more = ""): string => `---\ntitle: Pale ${number}\nbatch: P-${number}\nbrewed: 2026-03-${String(number).padStart(2, "0")}\n${more}---\nNotes.\n`;

/** Twenty records, of which the seventh has a mass without its unit. */
const oneBroken: Files = Object.fromEntries(Array.from({ length: 20 }, (_, index) => [
  `batches/p-${index + 1}.md`,
  required(index + 1, index === 6 ? "dry_hops:\n  - {hop: Cascade, amount: 70}\n" : ""),
]));

interface Built extends Outcome { readonly site: string }

async function build(log: string, ...words: readonly string[]): Promise<Built> {
  const site = path.join(await emptyFolder(), "site");
  return { ...await runCommand(["build", log, "--out", site, "--as-of", "2026-06-20T12:00", ...words]), site };
}

function expectNoStack({ err, out }: Outcome): void {
  expect(err + out).not.toMatch(/\n\s+at .*[:(]\d+/);
  expect(err + out).not.toContain("bug in gylebook");
}

describe("bad input gets a clear message or a sensible page, never a stack", () => {
  test.each([
    ["an empty folder", {}, "log/empty"],
    ["a folder without batches/", { "readme.txt": "hello" }, "log/no-batches"],
    ["a batches/ folder without a record", { "batches/krausen.jpg": "x" }, "log/no-records"],
  ])("%s", async (_what, files: Files, code) => {
    const log = await logWith(files);
    const checked = await runCommand(["check", log]);
    expect(checked.exit).toBe(1);
    expect(checked.out).toContain(`[${code}]`);
    expectNoStack(checked);
    for (const words of [[], ["--keep-going"]]) {
      const built = await build(log, ...words);
      expect(built.exit).toBe(1);
      expect(built.err).toContain(`[${code}]`);
      expectNoStack(built);
      await expect(readdir(built.site)).rejects.toThrow("ENOENT");
    }
  });

  test("one broken record among twenty stops the build and is named with its place", async () => {
    const log = await logWith(oneBroken);
    const built = await build(log);
    expect(built.exit).toBe(1);
    expect(built.err).toContain("batches/p-7.md:6:28  dry_hops[0].amount: expected a mass");
    expect(built.err).toContain("1 error in 1 file.");
    expect(built.err).toContain("Nothing was built");
    expectNoStack(built);
    await expect(readdir(built.site)).rejects.toThrow("ENOENT");
  });

  test("--keep-going builds the other nineteen, says what was left out, and still exits 1", async () => {
    const built = await build(await logWith(oneBroken), "--keep-going");
    expect(built.exit).toBe(1);
    expect(built.err).toMatch(/Left out of the site:\n {2}batches\/p-7\.md/);
    expectNoStack(built);
    const pages = await readdir(path.join(built.site, "batches"));
    expect(pages.filter((name) => /^p-\d+\.html$/.test(name))).toHaveLength(19);
    expect(pages).not.toContain("p-7.html");
  });

  test("errors leave the last good site as it was", async () => {
    const log = await logWith({ "batches/p-1.md": required(1) });
    const { site } = await build(log);
    const before = await readFile(path.join(site, "batches", "p-1.html"));
    await writeFile(path.join(log, "batches", "p-1.md"), required(1, "colour: 12 EBC\n"));
    const again = await runCommand(["build", log, "--out", site]);
    expect(again.exit).toBe(1);
    expect(await readFile(path.join(site, "batches", "p-1.html"))).toEqual(before);
  });

  test("a record with only its required fields builds a page, and names what is missing", async () => {
    const built = await build(await logWith({ "batches/p-1.md": required(1) }));
    expect(built).toMatchObject({ exit: 0, out: "", err: "" });
    const report = JSON.parse(await readFile(path.join(built.site, "batches", "p-1.json"), "utf8")) as { figures: object; missing: Record<string, string> };
    expect(report.figures).toEqual({});
    expect(report.missing["original-gravity"]).toMatch(/fermenter\.gravity/);
    expect(await readFile(path.join(built.site, "batches", "p-1.html"), "utf8")).not.toMatch(/NaN|undefined|\[object/);
  });

  test("a log of 100,000 rows gives a page of a reasonable size in reasonable time", async () => {
    const start = Date.parse("2026-03-01T16:00Z");
    const rows = Array.from({ length: 100_000 }, (_, row) => {
      const time = new Date(start + row * 20_000).toISOString().slice(0, 19).replace("T", " ");
      return `${time.slice(0, 16)},${(19 + Math.sin(row / 900)).toFixed(2)},${(1.01 + 0.04 / (1 + Math.exp((row - 12_000) / 2500))).toFixed(4)}`;
    });
    const log = await logWith({
      "batches/p-1/index.md": required(1, "fermenter: {volume: 20 L, gravity: 1.050}\nyeast: {pitched: 2026-03-01 16:00}\nfermentation: {log: fermentation.csv}\n"),
      "batches/p-1/fermentation.csv": `time,temperature [C],gravity [SG]\n${rows.join("\n")}\n`,
    });
    const built = await build(log);
    expect(built.err).toBe("");
    expect(built.exit).toBe(0);
    expect(gzipSync(await readFile(path.join(built.site, "batches", "p-1.html"))).length).toBeLessThan(60 * 1024);
  });

  test("bytes that aren't text, and links that lead nowhere or out of the log, are problems of those files", async () => {
    const outside = path.join(await emptyFolder(), "secret.md");
    await writeFile(outside, required(9));
    const log = await logWith({ "batches/p-1.md": required(1), "batches/p-2.md": new Uint8Array([0x2d, 0x2d, 0x2d, 0x0a, 0xff, 0xfe, 0x00]) });
    await symlink(outside, path.join(log, "batches", "p-3.md"));
    await symlink(path.join(log, "nowhere.md"), path.join(log, "batches", "p-4.md"));
    const checked = await runCommand(["check", log, "--format", "json"]);
    expect(checked.exit).toBe(1);
    const found = (JSON.parse(checked.out) as { code: string; file: string }[]).map(({ code, file }) => `${file} ${code}`);
    expect(found).toContain("batches/p-2.md log/encoding");
    expect(found).toContain("batches/p-3.md log/link-outside");
    expect(found.some((line) => line.startsWith("batches/p-4.md log/"))).toBe(true);
    expectNoStack(checked);
  });

  // Root reads everything, whatever a file's permissions say.
  test.skipIf(process.getuid?.() === 0)("a file without permission to read it is a problem of that file", async () => {
    const log = await logWith({ "batches/p-1.md": required(1), "batches/p-2.md": required(2) });
    await chmod(path.join(log, "batches", "p-2.md"), 0);
    const checked = await runCommand(["check", log]);
    expect(checked.exit).toBe(1);
    expect(checked.out).toContain("[log/file-unreadable]");
  });

  test("a photo that isn't one is left out of its page and said", async () => {
    const log = await logWith({
      "batches/p-1/index.md": `${required(1)}\n![krausen](krausen.jpg)\n`,
      "batches/p-1/krausen.jpg": "<svg onload=alert(1)>",
    });
    const built = await build(log);
    expect(built.exit).toBe(0);
    expect(built.err).toContain("batches/p-1/krausen.jpg: not a picture that can be shown");
    expect(await readFile(path.join(built.site, "batches", "p-1.html"), "utf8")).not.toContain("<img");
  });

  test("an output folder in the log, or with files of somebody else's, is refused before anything is read", async () => {
    const log = await logWith({ "batches/p-1.md": required(1), "thesis/one.txt": "mine" });
    for (const out of ["batches", "batches/site", "shared/site", ".", "thesis"]) {
      const refused = await runCommand(["build", log, "--out", path.join(log, out)]);
      expect(refused.exit, out).toBe(2);
      expectNoStack(refused);
    }
    expect(await readFile(path.join(log, "thesis", "one.txt"), "utf8")).toBe("mine");
    expect((await readdir(log)).sort()).toEqual(["batches", "thesis"]);
  });
});

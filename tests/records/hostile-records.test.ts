import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { formatProblems, type Problem } from "../../src/problems/index.js";
import { logFilesOf, parseLog, readLogFolder, type LogFiles } from "../../src/records/index.js";

const RECORD = "---\ntitle: Tideline Pale\nbatch: TP-03\nbrewed: 2026-03-07\n---\n";
const codes = (problems: readonly Problem[]): string[] => problems.map(({ code }) => code);
const problemsOf = (files: Record<string, string | Uint8Array>): readonly Problem[] => parseLog(logFilesOf(files)).problems;
const withFields = (fields: string): Record<string, string> => ({ "batches/a.md": RECORD.replace("\n---\n", `\n${fields}---\n`) });

describe("YAML that is made to stop the program", () => {
  test.each([
    ["lists in brackets", `aim: ${"[".repeat(3000)}${"]".repeat(3000)}\n`],
    ["fields in braces", `aim: ${"{a: ".repeat(3000)}1${"}".repeat(3000)}\n`],
    ["brackets and braces by turns", `aim: ${"[{a: ".repeat(3000)}1${"}]".repeat(3000)}\n`],
    ["brackets that don't match", `aim: ${"[ } { ] [ ".repeat(3000)}\n`],
    ["lists on one line", `${"- ".repeat(3000)}a\n`],
    ["asked keys on one line", `${"? ".repeat(3000)}a\n`],
    // By indent a level costs its depth in spaces: 600 levels are what the limit of 256 KB lets through.
    ["fields by indent", Array.from({ length: 600 }, (_, depth) => `${" ".repeat(depth)}a:\n`).join("")],
    ["lists by indent", Array.from({ length: 600 }, (_, depth) => `${" ".repeat(depth)}-\n`).join("")],
    ["block text at every level", Array.from({ length: 350 }, (_, depth) => `${" ".repeat(depth)}x: |\n${" ".repeat(depth + 1)}t\n${" ".repeat(depth)}y:\n`).join("")],
    ["comments between", Array.from({ length: 600 }, (_, depth) => `${" ".repeat(depth)}a:\n# not indented\n`).join("")],
    ["quoted brackets that close nothing", `aim: ${'[ "]", '.repeat(3000)}\n`],
  ])("nested far too deep, %s, is a problem with a place", (_, fields) => {
    const problems = problemsOf(withFields(fields));
    expect(codes(problems)).toEqual(["yaml/too-deep"]);
    expect(problems[0]?.line).toBeGreaterThan(4);
  });

  test("that repeats itself through aliases isn't expanded", () => {
    const levels = ["a: &a [x, x, x, x, x, x, x, x, x]", ...["b", "c", "d", "e", "f"].map((name, index) => `${name}: &${name} [${Array(9).fill(`*${"abcde"[index] ?? "a"}`).join(", ")}]`)];
    expect(new Set(codes(problemsOf(withFields(`${levels.join("\n")}\n`))))).toEqual(new Set(["yaml/anchor", "record/field-unknown"]));
  });

  test.each([["a NUL", "aim: {words: a\u0000b}\n"], ["a merge key", "aim: {<<: {words: a}}\n"], ["a prototype", "__proto__: {publish: false}\naim: {__proto__: {words: a}}\n"]])("with %s is a problem", (_, fields) => {
    expect(codes(problemsOf(withFields(fields))).length).toBeGreaterThan(0);
    expect(({} as Record<string, unknown>)["words"]).toBeUndefined();
    expect(({} as Record<string, unknown>)["publish"]).toBeUndefined();
  });

  test("with more than 256 KB of fields isn't parsed", () => {
    expect(codes(problemsOf(withFields(`aim: {words: ${"a".repeat(256 * 1024)}}\n`)))).toEqual(["log/too-large"]);
  });

  test("with ten thousand mistakes still ends, each of them told", () => {
    const problems = problemsOf(withFields(Array.from({ length: 10_000 }, (_, index) => `field${index}: 1\n`).join("")));
    expect(problems).toHaveLength(10_000);
  });
});

describe("front matter", () => {
  test("in a language that could run is never run", () => {
    const files = { "batches/a.md": "---js\n{ brewed: (globalThis.ran = true) }\n---\n", "batches/b.md": "---JavaScript\nglobalThis.ran = true\n---\n", "batches/c.md": "---coffee\nran = true\n---\n" };
    expect(codes(problemsOf(files))).toEqual(Array(3).fill("record/front-matter-language"));
    expect(globalThis).not.toHaveProperty("ran");
  });

  test("gives the same problems the second time", () => {
    const files = withFields("aim: [\n");
    expect(problemsOf(files)).toEqual(problemsOf(files));
    expect(problemsOf(files).length).toBeGreaterThan(0);
  });
});

describe("sizes", () => {
  test("notes of 20,000 words are read", () => {
    expect(problemsOf({ "batches/a.md": RECORD + "word ".repeat(20_000) })).toEqual([]);
  });

  test("notes beyond 2 MB aren't", () => {
    expect(codes(problemsOf({ "batches/a.md": RECORD + "word ".repeat(500_000) }))).toEqual(["log/too-large"]);
  });

  test("a log of 100,000 rows is read, every row", () => {
    const rows = Array.from({ length: 100_000 }, (_, row) => `${new Date(Date.UTC(2026, 2, 7) + row * 60_000).toISOString().slice(0, 16).replace("T", " ")},${(18 + (row % 7) / 10).toFixed(1)},1.0${10 + (row % 40)}`);
    const files = { ...withFields("fermentation: {log: probe.csv}\n"), "batches/probe.csv": `time,temperature [C],gravity [SG]\n${rows.join("\n")}\n` };
    const { log, problems } = parseLog(logFilesOf(files));
    expect(problems).toEqual([]);
    expect(log.batches[0]?.logs[0]?.timesMs).toHaveLength(100_000);
    expect(log.batches[0]?.logs[0]?.timesMs.at(-1)).toBe(Date.UTC(2026, 2, 7) + 99_999 * 60_000);
  });

  test("a log whose every row is wrong lists some and counts the rest", () => {
    const files = { ...withFields("fermentation: {log: probe.csv}\n"), "batches/probe.csv": `time,temperature [C]\n${"soon,warm\n".repeat(5000)}` };
    const problems = problemsOf(files);
    expect(problems).toHaveLength(201);
    expect(problems.at(-1)).toMatchObject({ code: "csv/more", found: "9,800 more in this file" });
    expect(formatProblems(problems, "text")).toContain("batches/probe.csv: and 181 more\n");
  });

  test("a header of a million columns isn't taken apart", () => {
    const files = { ...withFields("fermentation: {log: probe.csv}\n"), "batches/probe.csv": `${"time,".repeat(1_000_000)}\n` };
    expect(problemsOf(files)).toMatchObject([{ code: "log/too-large", expected: "no more than 500 columns", found: "1000001 columns" }]);
  });

  test("a panel of more than 2 MB isn't read", () => {
    const files = { ...withFields("tastings: [{scores: s.csv}]\n"), "batches/s.csv": `taster,sample,attribute,score\n${"T,x,pine,1\n".repeat(200_000)}` };
    expect(codes(problemsOf(files))).toEqual(["log/too-large"]);
  });

  test("a thousand pictures in one record are too many", () => {
    const problems = problemsOf({ "batches/a.md": `${RECORD}${"![a](a.jpg)\n".repeat(1000)}`, "batches/a.jpg": "" });
    expect(problems.map(({ code, line }) => [code, line])).toEqual([["photo/too-many", 506]]);
  });
});

describe("a folder on disk", () => {
  const made: string[] = [];
  afterEach(() => { for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true }); });

  function folderOf(files: Record<string, string>): string {
    const folder = realpathSync(mkdtempSync(join(tmpdir(), "log-")));
    made.push(folder);
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return folder;
  }
  const check = (folder: string): string => formatProblems(parseLog(readLogFolder(folder)).problems, "text");

  test("that isn't there is said to be", () => {
    expect(check(join(tmpdir(), "no-such-log"))).toBe([
      ".:1:1  expected a folder that holds a log, found \"nothing at that path\"",
      "    Give the path of a folder that holds batches/, or make one: gylebook new log NAME",
      "    [log/not-found]", "", "1 error in 1 file."].join("\n"));
  });

  test("that is a file is said to be", () => {
    expect(check(join(folderOf({ "a.txt": "" }), "a.txt"))).toContain("found \"a file, not a folder\"");
  });

  test("that is empty is said to be", () => {
    expect(check(folderOf({}))).toBe([
      ".:1:1  expected a log: a folder batches/ with at least one record in it, found \"an empty folder\"",
      "    Start one: gylebook new log NAME",
      "    [log/empty]", "", "1 error in 1 file."].join("\n"));
  });

  test("with an empty batches/ is said to hold no record", () => {
    const folder = folderOf({});
    mkdirSync(join(folder, "batches"));
    expect(check(folder)).toContain("[log/no-records]");
  });

  test("is read only within itself: links that leave it are problems, links inside it are files", () => {
    const outside = folderOf({ "secret.md": RECORD, "secret.jpg": "", "more/index.md": RECORD });
    const folder = folderOf({ "batches/a/index.md": `${RECORD}![Glass](glass.jpg) ![Same](same.jpg)\n`, "batches/a/photo.jpg": "" });
    symlinkSync(join(outside, "secret.md"), join(folder, "batches/b.md"));
    symlinkSync(join(outside, "secret.jpg"), join(folder, "batches/a/glass.jpg"));
    symlinkSync(join(outside, "more"), join(folder, "batches/c"));
    symlinkSync("photo.jpg", join(folder, "batches/a/same.jpg"));
    symlinkSync("..", join(folder, "batches/a/round"));
    const { log, problems } = parseLog(readLogFolder(folder));
    expect(problems.map(({ code, file }) => [code, file])).toEqual([
      ["log/link-outside", "batches/a/glass.jpg"], ["photo/missing", "batches/a/index.md"], ["log/link-outside", "batches/b.md"], ["log/link-outside", "batches/c"],
    ]);
    expect(log.batches).toEqual([]);
    expect(readLogFolder(folder).list()).toContain("batches/a/same.jpg");
  });

  test("is read only within itself also when a link is put there later", () => {
    const outside = folderOf({ "secret.md": RECORD });
    const folder = folderOf({ "batches/a.md": RECORD });
    const files = readLogFolder(folder);
    expect(files.list()).toContain("batches/a.md");
    rmSync(join(folder, "batches/a.md"));
    symlinkSync(join(outside, "secret.md"), join(folder, "batches/a.md"));
    expect(() => files.read("batches/a.md")).toThrow("a link to a place outside the log");
  });

  test("never opens a pipe", () => {
    const folder = folderOf({ "batches/a.md": RECORD });
    execFileSync("mkfifo", [join(folder, "batches/b.md")]);
    expect(check(folder)).toBe("No problems.");
  });

  test("whose file can't be read says which and why", () => {
    const files: LogFiles = { ...logFilesOf({ "batches/a.md": RECORD, "batches/b.md": "" }), read: (path) => {
      if (path.endsWith("b.md")) throw Object.assign(new Error("EACCES: permission denied, open '/home/x'"), { code: "EACCES" });
      return RECORD;
    } };
    const { log, problems } = parseLog(files);
    expect(formatProblems(problems, "text")).toBe([
      "batches/b.md:1:1  expected a file that can be read, found \"permission denied\"",
      "    Check the file's permissions, or begin its name with _ to have it left out",
      "    [log/file-unreadable]", "", "1 error in 1 file."].join("\n"));
    expect(log.batches).toHaveLength(1);
  });
});

describe("whatever a log holds", () => {
  const fields = fc.constantFrom("title", "batch", "brewed", "plan", "grist", "hops", "dry_hops", "transfer", "package", "tastings", "fermentation", "publish", "aim", "enter", "yeast", "samples", "crash");
  const leaves = fc.oneof(fc.constantFrom("70 g", "3 L", "1.048", "1,5 kg", "12 C to 14 C", "2026-03-29 01:30", "true", "~", "[]", "{}", "- a", "'", "\"", "&a", "*a", "!x", "{a: [", "Cascade", "fermentation.csv", "keg"), fc.string());
  const yaml = fc.array(fc.tuple(fields, fc.array(fc.tuple(fc.constantFrom("amount", "at", "volume", "gravity", "log", "samples", "pair", "scores", "added", "into"), leaves), { maxLength: 4 }), leaves))
    .map((entries) => entries.map(([name, inner, leaf]) => (inner.length > 0 ? `${name}: {${inner.map(([key, value]) => `${key}: ${value}`).join(", ")}}` : `${name}: ${leaf}`)).join("\n"));
  const notes = fc.array(fc.oneof(fc.constantFrom("![a](", "![", "](", ")", "`", "```\n", "~~~\n", "[a]: b.jpg\n", "\n", "\\", "<", ">"), fc.string())).map((parts) => parts.join(""));
  const csv = fc.array(fc.oneof(fc.constantFrom("time,temperature [C]", "taster,sample,attribute,score", "2026-03-29 01:30", "18,5", "\"", ";", ",", "\n"), fc.string())).map((parts) => parts.join(""));

  test("parsing it never throws, and every problem has a place and words", () => {
    fc.assert(fc.property(fc.oneof(yaml, fc.string()), notes, csv, fc.oneof(fc.string(), yaml), (front, body, table, shared) => {
      const { problems } = parseLog(logFilesOf({
        "batches/a/index.md": `---\n${front}\n---\n${body}`, "batches/a/fermentation.csv": table, "batches/b.md": body,
        "batches/c.md": withFields("fermentation: {log: c.csv}\ntastings: [{samples: {a: keg, b: keg}, scores: c.csv, ranking: c.csv}]\n")["batches/a.md"] ?? "", "batches/c.csv": table,
        "shared/club.yaml": shared, "shared/equipment.yaml": shared, "shared/styles.yaml": front,
        "shared/competitions/x/index.md": `---\n${shared}\n---\n`, "shared/competitions/x/entries.csv": table, "shared/competitions/x/scores.csv": table,
      }));
      for (const { line, column, expected, fix, file } of problems) {
        expect(line).toBeGreaterThan(0);
        expect(column).toBeGreaterThan(0);
        expect([expected, fix, file].every((text) => text !== "" && !text.includes("undefined"))).toBe(true);
      }
      expect(formatProblems(problems, "text")).toMatch(/(?:No problems\.|files?\.)$/u);
    }), { numRuns: 200, seed: 20260307 });
  });

  test("a mapping with any pattern and any column names never throws", () => {
    const text = fc.oneof(fc.constantFrom("M/d/yyyy", "yyyy-MM-dd'T'HH:mm", "[", "(", "\\", "-", "'", "d.M.y {2}", "time"), fc.string());
    fc.assert(fc.property(text, text, csv, (pattern, column, table) => {
      const mapping = JSON.stringify({ file: "c.csv", time: column, temperature: column, dates: pattern, units: { temperature: "C" }, separator: ";", decimal: "," });
      parseLog(logFilesOf({ "batches/c.md": withFields(`fermentation: {log: ${mapping}}\n`)["batches/a.md"] ?? "", "batches/c.csv": table }));
    }), { numRuns: 300, seed: 20260309 });
  });

  test("bytes of any kind never throw", () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      parseLog(logFilesOf({ "batches/a.md": bytes, "shared/club.yaml": bytes, "batches/b.md": withFields("fermentation: {log: b.csv}\n")["batches/a.md"] ?? "", "batches/b.csv": bytes }));
    }), { numRuns: 200, seed: 20260308 });
  });
});

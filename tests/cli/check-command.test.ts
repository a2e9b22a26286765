import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { emptyFolder, runCommand } from "./stand-in.js";

const broken = "---\ntitle: Pale\nbatch: P-1\nbrewed: 2026-03-01\nfermenter: {volume: 20}\n---\n";

async function brokenLog(): Promise<{ readonly parent: string; readonly log: string }> {
  const parent = await emptyFolder();
  const log = path.join(parent, "my log");
  await mkdir(path.join(log, "batches"), { recursive: true });
  await writeFile(path.join(log, "batches", "p-1.md"), broken);
  return { parent, log };
}

describe("gylebook check", () => {
  test("prints each problem with its place, what was expected, what to write instead, and its code", async () => {
    const { log } = await brokenLog();
    const { exit, out, err } = await runCommand(["check"], { in: log });
    expect(exit).toBe(1);
    expect(err).toBe("");
    expect(out).toMatch(/^batches\/p-1\.md:5:21 {2}fermenter\.volume: expected .*, found "20"\n {4}Write the unit: .*\n {4}\[record\/unit-missing\]\n/);
    expect(out).toMatch(/\n1 error in 1 file\.\n$/);
  });

  test("--format json is a list with the documented keys", async () => {
    const { log } = await brokenLog();
    const { exit, out } = await runCommand(["check", log, "--format", "json"]);
    expect(exit).toBe(1);
    const [problem] = JSON.parse(out) as Record<string, unknown>[];
    expect(Object.keys(problem ?? {}).sort()).toEqual(["code", "column", "expected", "field", "file", "fix", "found", "line", "severity"]);
    expect(problem).toMatchObject({ code: "record/unit-missing", severity: "error", file: "batches/p-1.md", line: 5, column: 21, field: "fermenter.volume", found: "20" });
  });

  test("--format json of a log without problems is an empty list", async () => {
    const { log } = await brokenLog();
    await writeFile(path.join(log, "batches", "p-1.md"), broken.replace("20}", "20 L}"));
    expect(await runCommand(["check", log, "--format", "json"])).toEqual({ exit: 0, out: "[]\n", err: "" });
    expect(await runCommand(["check", log])).toEqual({ exit: 0, out: "No problems.\n", err: "" });
  });

  // GitHub documentation, "Workflow commands": ::error file=…,line=…,col=…,title=…::message, with % , : and line breaks escaped.
  test("--format github annotates the file as the workflow sees it", async () => {
    const { parent } = await brokenLog();
    const { out } = await runCommand(["check", "my log", "--format", "github"], { in: parent });
    expect(out).toMatch(/^::error file=my log\/batches\/p-1\.md,line=5,col=21,title=record\/unit-missing::fermenter\.volume: expected .*%0A.*\n$/);
  });
});

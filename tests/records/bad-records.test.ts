import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { formatProblems, problemKinds } from "../../src/problems/index.js";
import { parseLog, readLogFolder } from "../../src/records/index.js";

// A case is a folder: a log, and beside it the full text that checking it must print. The texts are written
// by hand from the record format; nothing writes them, so that a changed message is a changed file in review.
const bad = join(import.meta.dirname, "bad");
const cases = readdirSync(bad).filter((name) => existsSync(join(bad, name, "expected.txt")));

describe("a log with mistakes prints every one of them", () => {
  test.each(cases)("%s", (name) => {
    const { log, problems } = parseLog(readLogFolder(join(bad, name, "log")));
    expect(`${formatProblems(problems, "text")}\n`).toBe(readFileSync(join(bad, name, "expected.txt"), "utf8"));
    const wrong = new Set(problems.filter(({ severity }) => severity === "error").map(({ file }) => file));
    expect(log.batches.filter(({ file }) => wrong.has(file))).toEqual([]);
  });

  test("each kind of problem is pinned by a case here, or by a test that needs more than files", () => {
    const texts = cases.map((name) => readFileSync(join(bad, name, "expected.txt"), "utf8")).join("\n");
    const elsewhere = ["log/not-found", "log/empty", "log/file-unreadable", "log/link-outside", "log/too-large", "csv/more", "photo/too-many",
      // These depend on the day, or on what is drawn: tests/report/competition-day.test.ts and competition-release.test.ts.
      "competition/released-incomplete", "competition/no-entries", "competition/seed-missing", "competition/codes-run-out", "competition/entry-without-flight", "competition/assignment-impossible"];
    const unpinned = problemKinds().map(({ code }) => code).filter((code) => !texts.includes(`[${code}]`) && !elsewhere.includes(code));
    expect(unpinned).toEqual([]);
  });

  test("no message speaks the language of programs", () => {
    const texts = cases.map((name) => readFileSync(join(bad, name, "expected.txt"), "utf8")).join("\n");
    expect(texts).not.toMatch(/\b(?:union|object|undefined|required|string|array|invalid|null|NaN)\b/iu);
  });
});

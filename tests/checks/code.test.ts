import { execFile } from "node:child_process";
import path from "node:path";
import { expect, test } from "vitest";

const ROOT = path.resolve(import.meta.dirname, "..", "..");

/** Runs a program at the project's root; gives its exit code and all it printed. */
function run(file: string, words: readonly string[]): Promise<{ readonly exit: number; readonly printed: string }> {
  return new Promise((resolve, reject) => {
    const child = execFile(file, words, { cwd: ROOT, maxBuffer: 64 << 20 }, (error, out, err) => {
      const exit = child.exitCode;
      if (exit === null) reject(error ?? new Error(`${file} was killed`));
      else resolve({ exit, printed: `${out}${err}`.trim() });
    });
  });
}

test("types and lint find nothing, in the program or its tests", async () => {
  const { exit, printed } = await run(process.execPath, ["scripts/check-code.mjs"]);
  expect(exit, printed).toBe(0);
});

test("nobody imports what they may not", async () => {
  const { exit, printed } = await run("npm", ["run", "--silent", "imports"]);
  expect(exit, printed).toBe(0);
});

import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { expect, inject, test } from "vitest";
import { emptyFolder } from "../cli/stand-in.js";
import { buildDemo, placeVariables, ROOT } from "./build-demo.js";
import { filesOf } from "./site-files.js";

const run = promisify(execFile);

/** Path → hash of every file below a folder. */
const hashesOf = (folder: string): Record<string, string> =>
  Object.fromEntries(filesOf(folder).map((file) => [file, createHash("sha256").update(readFileSync(path.join(folder, file))).digest("hex")]));

test("the demo comes out byte for byte the same in two zones and two locales, cold and warm, and through plain Eleventy", async () => {
  const folder = await emptyFolder();
  const here = inject("demoPlace");
  const there = { zone: "America/Los_Angeles", locale: "tr_TR.UTF-8", cache: path.join(folder, "cache") };
  const report = "const o = Intl.DateTimeFormat().resolvedOptions(); console.log(o.timeZone, o.locale)";
  const settings = await Promise.all([here, there].map(async (place) => (await run(process.execPath, ["-e", report], { env: placeVariables(place) })).stdout.trim()));
  expect(settings).toEqual(["Pacific/Auckland de-DE", "America/Los_Angeles tr-TR"]);

  const cold = hashesOf(inject("demoSite"));
  expect(Object.keys(cold).length).toBeGreaterThan(50);
  const [elsewhere, warm, plain] = ["elsewhere", "warm", "plain"].map((name) => path.join(folder, name)) as [string, string, string];
  await buildDemo(there, elsewhere);
  expect(hashesOf(elsewhere)).toEqual(cold);
  await buildDemo(here, warm);
  expect(hashesOf(warm)).toEqual(cold);
  const eleventy = path.join(ROOT, "node_modules", "@11ty", "eleventy", "cmd.cjs");
  await run(process.execPath, [eleventy, `--output=${plain}`], { cwd: ROOT, env: placeVariables(there) });
  expect(hashesOf(plain)).toEqual(cold);
});

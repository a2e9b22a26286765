import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { expect, test } from "vitest";
import { emptyFolder } from "./stand-in.js";

const ROOT = path.resolve(import.meta.dirname, "..", "..");
const run = promisify(execFile);

interface Place { readonly zone: string; readonly locale: string; readonly cache: string }

const environment = ({ zone, locale, cache }: Place): NodeJS.ProcessEnv => ({ ...process.env, TZ: zone, LANG: locale, LC_ALL: locale, XDG_CACHE_HOME: cache });

/** Path → hash of every file below a folder. */
function hashesOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(files.map((entry) => {
    const file = path.join(entry.parentPath, entry.name);
    return [path.relative(folder, file), createHash("sha256").update(readFileSync(file)).digest("hex")] as const;
  }).sort(([a], [b]) => (a < b ? -1 : 1)));
}

async function buildDemo(place: Place, out: string): Promise<Record<string, string>> {
  await run(process.execPath, [path.join(ROOT, "dist", "cli", "main.js"), "build", ROOT, "--out", out], { env: environment(place) });
  return hashesOf(out);
}

test("the demo comes out byte for byte the same in two zones and two locales, cold and warm, and through plain Eleventy", async () => {
  const folder = await emptyFolder();
  const [here, there] = [
    { zone: "Pacific/Auckland", locale: "de_DE.UTF-8", cache: path.join(folder, "cache-1") },
    { zone: "America/Los_Angeles", locale: "tr_TR.UTF-8", cache: path.join(folder, "cache-2") },
  ];
  const report = "const o = Intl.DateTimeFormat().resolvedOptions(); console.log(o.timeZone, o.locale)";
  const settings = await Promise.all([here, there].map(async (place) => (await run(process.execPath, ["-e", report], { env: environment(place) })).stdout.trim()));
  expect(settings).toEqual(["Pacific/Auckland de-DE", "America/Los_Angeles tr-TR"]);

  const [cold, elsewhere] = await Promise.all([buildDemo(here, path.join(folder, "a")), buildDemo(there, path.join(folder, "b"))]);
  expect(Object.keys(cold).length).toBeGreaterThan(50);
  expect(elsewhere).toEqual(cold);

  const plain = path.join(folder, "c");
  const eleventy = path.join(ROOT, "node_modules", "@11ty", "eleventy", "cmd.cjs");
  const [warm] = await Promise.all([
    buildDemo(here, path.join(folder, "a")),
    run(process.execPath, [eleventy, `--output=${plain}`], { cwd: ROOT, env: environment(there) }),
  ]);
  expect(warm).toEqual(cold);
  expect(hashesOf(plain)).toEqual(cold);
}, 240_000);

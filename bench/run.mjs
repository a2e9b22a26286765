// npm run bench: how long a log of 300 batches takes, beside an Eleventy run that only writes the same files,
// and what a page weighs, beside the budgets. All in one run, so that the ratios hold on any machine.
import { execFile, spawn } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { makeLog } from "./make-log.mjs";

const BATCHES = Number(process.argv[2] ?? 300);
const ROOT = path.resolve(import.meta.dirname, "..");
const COMMAND = path.join(ROOT, "dist", "cli", "main.js");
const PEAK = path.join(ROOT, "bench", "peak-memory.mjs");
const KB = 1024;

const run = promisify(execFile);
const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

/** Runs a node program and measures it from outside. */
async function measure(folder, words, cache) {
  const peakFile = path.join(folder, "peak");
  const began = performance.now();
  const { stdout, stderr } = await run(process.execPath, ["--import", PEAK, ...words], {
    cwd: ROOT, maxBuffer: 1e8, env: { ...process.env, XDG_CACHE_HOME: cache, GYLEBOOK_BENCH_PEAK: peakFile },
  });
  return { ms: performance.now() - began, peakMb: Number(await readFile(peakFile, "utf8")), stdout, stderr };
}

const stageMs = (stderr, stage) => Number(new RegExp(`^${stage}: (\\d+) ms$`, "m").exec(stderr)?.[1] ?? Number.NaN);

/** Changes one record. */
async function saveOne(log) {
  const record = path.join(log, "batches", readdirSync(path.join(log, "batches"))[0], "index.md");
  await writeFile(record, (await readFile(record, "utf8")).replace("An invented batch.", "An invented batch, corrected."));
}

/** Starts serve and gives its address. */
function startServing(log, cache) {
  const child = spawn(process.execPath, [COMMAND, "serve", log, "--port", "0"], { env: { ...process.env, XDG_CACHE_HOME: cache }, stdio: ["ignore", "pipe", "inherit"] });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => reject(new Error(`serve ended with ${code}`)));
    child.stdout.on("data", (text) => {
      const [address] = /http:\/\/\S+/.exec(String(text)) ?? [];
      if (address !== undefined) resolve({ child, address });
    });
  });
}

/** Saves one record and waits until its own page shows it, in milliseconds. */
async function saveAndWait(record, page, round) {
  const mark = `saved-${round}`;
  const text = await readFile(record, "utf8");
  const began = performance.now();
  await writeFile(record, text.replace(/^title: .*$/m, `title: Bench pale ${mark}`));
  for (;;) {
    const html = await (await fetch(page)).text();
    if (html.includes(mark)) return performance.now() - began;
    if (performance.now() - began > 60_000) throw new Error("the page never changed");
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

async function measureSaves(log, cache) {
  const { child, address } = await startServing(log, cache);
  try {
    const [folder] = readdirSync(path.join(log, "batches")).slice(-5);
    const number = /-bench-(\d+)$/.exec(folder)[1];
    const saves = [];
    for (let round = 0; round < 5; round += 1) {
      saves.push(await saveAndWait(path.join(log, "batches", folder, "index.md"), `${address}batches/bp-${number.padStart(3, "0")}.html`, round));
      await new Promise((resolve) => setTimeout(resolve, 1500));
    }
    return saves;
  } finally {
    child.removeAllListeners("exit");
    child.kill("SIGTERM");
  }
}

/** Gzipped sizes in KB of what a reader downloads. */
function weigh(site) {
  const files = readdirSync(site, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  const gzipped = (file) => gzipSync(readFileSync(file), { level: 9 }).length / KB;
  const sum = (pattern) => files.filter((file) => pattern.test(file)).reduce((total, file) => total + gzipped(file), 0);
  // The fonts come as one style sheet of their own, cached once for the whole site.
  const batchPages = files.filter((file) => /batches\/bp-\d+\.html$/.test(file)).map(gzipped);
  return { heaviest: Math.max(...batchPages) + sum(/assets\/(?!fonts)[^/]*\.(css|js)$/), fonts: sum(/\.woff2$|assets\/fonts\.css$/) };
}

const line = (what, value, budget, holds) => console.log(`${what.padEnd(62)}${value.padStart(12)}${budget.padStart(12)}  ${holds === undefined ? "" : holds ? "holds" : "BROKEN"}`);

const folder = await mkdtemp(path.join(tmpdir(), "gylebook-bench-"));
try {
  const [log, site, cache] = ["log", "site", "cache"].map((name) => path.join(folder, name));
  await makeLog(log, BATCHES);
  const build = [COMMAND, "build", log, "--out", site, "--debug"];
  const cold = await measure(folder, build, cache);
  const [writes, warms] = [[], []];
  for (let round = 0; round < 3; round += 1) {
    const yardstick = await measure(folder, [path.join(ROOT, "bench", "write-only.mjs"), site, path.join(folder, `copy-${round}`)], cache);
    writes.push(JSON.parse(yardstick.stdout));
    warms.push(await measure(folder, build, cache));
  }
  const writeMs = median(writes.map(({ ms }) => ms));
  const warmMs = median(warms.map(({ ms }) => ms));
  const chartMs = stageMs(cold.stderr, "Drawing charts, all threads together");
  await saveOne(log);
  const partly = await measure(folder, build, cache);
  const saves = await measureSaves(log, cache);
  const { heaviest, fonts } = weigh(site);
  const longs = [];
  for (let round = 0; round < 3; round += 1) longs.push(JSON.parse((await run(process.execPath, [path.join(ROOT, "bench", "long-log.mjs")])).stdout));
  const long = (part) => median(longs.map((one) => one[part])) / 1000;

  const exactTests = [];
  for (let round = 0; round < 3; round += 1) exactTests.push(JSON.parse((await run(process.execPath, [path.join(ROOT, "bench", "exact-tests.mjs")])).stdout));
  // Each test by the median of its three first calls; of those the slowest counts.
  const slowest = exactTests[0].map(({ name }, test) => ({ name, ms: median(exactTests.map((one) => one[test].firstMs)), warmMs: median(exactTests.map((one) => one[test].warmMs)) })).sort((a, b) => b.ms - a.ms)[0];

  console.log(`${BATCHES} batches, ${writes[0].files} files of text\n`);
  console.log(`${"".padEnd(62)}${"measured".padStart(12)}${"budget".padStart(12)}`);
  line("Eleventy writing the same files", `${(writeMs / 1000).toFixed(2)} s`, "");
  line("cold build", `${(cold.ms / 1000).toFixed(2)} s`, "");
  line("  drawing charts, all threads together", `${(chartMs / 1000).toFixed(2)} s`, "");
  line("cold build ÷ Eleventy", (cold.ms / writeMs).toFixed(2), "5", cold.ms <= 5 * writeMs);
  line("warm build, nothing changed", `${(warmMs / 1000).toFixed(2)} s`, "");
  line("warm build ÷ Eleventy", (warmMs / writeMs).toFixed(2), "1.5", warmMs <= 1.5 * writeMs);
  line("build after one record was saved", `${(partly.ms / 1000).toFixed(2)} s`, "");
  line("serve: one record saved until its page is new, median of 5", `${(median(saves) / 1000).toFixed(2)} s`, "1 s", median(saves) <= 1000);
  line("  slowest", `${(Math.max(...saves) / 1000).toFixed(2)} s`, "");
  line(`a log of ${longs[0].rows} rows, temperature and gravity: csv-parse alone, CPU`, `${long("csvMs").toFixed(2)} s`, "");
  line("  read and checked ÷ csv-parse alone", `${(long("readMs") / long("csvMs")).toFixed(2)} (${long("readMs").toFixed(2)} s)`, "");
  line("  its report ÷ csv-parse alone", `${(long("reportMs") / long("csvMs")).toFixed(2)} (${long("reportMs").toFixed(2)} s)`, "0.3 s", long("reportMs") <= 0.3);
  line(`slowest exact test of 20 tasters, first call (${slowest.name})`, `${slowest.ms.toFixed(1)} ms`, "50 ms", slowest.ms <= 50);
  line("  once compiled ÷ first call", (slowest.warmMs / slowest.ms).toFixed(2), "");
  line("peak memory, cold build", `${cold.peakMb.toFixed(0)} MB`, "");
  line("peak memory, warm build", `${Math.max(...warms.map(({ peakMb }) => peakMb)).toFixed(0)} MB`, "");
  line("heaviest batch page with styles and scripts, gzip", `${heaviest.toFixed(1)} KB`, "60 KB", heaviest <= 60);
  line("fonts, whole site", `${fonts.toFixed(1)} KB`, "70 KB", fonts <= 70);
  console.log(`\ncold build, stage by stage:\n${cold.stderr.trim()}`);
  console.log(`\nbuild after one record was saved, stage by stage:\n${partly.stderr.trim()}`);
} finally {
  await rm(folder, { recursive: true, force: true });
}

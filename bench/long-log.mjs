// One batch with a log of 40,000 rows: what csv-parse alone, reading the log and the report take, in milliseconds of CPU.
import { readFileSync } from "node:fs";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { parseLog, readLogFolder } from "../dist/records/index.js";
import { buildLogReport } from "../dist/report/index.js";

const ROWS = Number(process.argv[2] ?? 40_000);
const MINUTE_MS = 60_000;

/** Every minute for four weeks: a ferment that warms and cools, and falls from 1.060 to 1.012. */
function rows() {
  const start = Date.UTC(2026, 2, 18, 19);
  const lines = Array.from({ length: ROWS }, (_, row) => {
    const at = new Date(start + row * MINUTE_MS).toISOString().slice(0, 16).replace("T", " ");
    const temperatureC = 19 + 2 * Math.sin(row / 4000) + 0.1 * Math.sin(row);
    const gravity = 1.012 + 0.048 * Math.exp(-row / 3000) + 0.0004 * Math.sin(row * 7);
    return `${at},${temperatureC.toFixed(2)},${gravity.toFixed(4)}`;
  });
  return `time,temperature [C],gravity [SG]\n${lines.join("\n")}\n`;
}

const RECORD = `---
title: Bench, logged every minute
batch: BL-1
brewed: 2026-03-18
grist: [{malt: pale malt, amount: 5 kg}]
yeast: {strain: bench ale, pitched: 2026-03-18 19:00}
fermenter: {volume: 21 L, gravity: 1.060}
fermentation:
  log: log.csv
  readings:
    - {at: 2026-03-26 19:00, gravity: 1.013}
    - {at: 2026-03-28 19:00, gravity: 1.012}
dry_hops:
  - {hop: Citra, amount: 100 g, added: 2026-03-29 19:00, removed: 2026-04-02 19:00}
crash: {from: 2026-04-02 19:00, set: 2 C}
transfer: {at: 2026-04-06 19:00, volume: 19 L}
package: {into: keg, volume: 18.5 L, date: 2026-04-06}
---
`;

function timed(work) {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  return { result, ms: (user + system) / 1000 };
}

const folder = await mkdtemp(path.join(tmpdir(), "gylebook-bench-"));
try {
  const batch = path.join(folder, "batches", "long");
  await mkdir(batch, { recursive: true });
  await writeFile(path.join(batch, "index.md"), RECORD);
  await writeFile(path.join(batch, "log.csv"), rows());
  const csv = timed(() => parse(readFileSync(path.join(batch, "log.csv"), "utf8")));
  const read = timed(() => parseLog(readLogFolder(folder)));
  const { log, problems } = read.result;
  if (log.batches[0]?.logs[0]?.timesMs.length !== ROWS) throw new Error(`the log wasn't read: ${JSON.stringify(problems.slice(0, 3))}`);
  const report = timed(() => buildLogReport(log, { asOf: { text: "2026-06-01", date: "2026-06-01" } }));
  console.log(JSON.stringify({ rows: ROWS, csvMs: csv.ms, readMs: read.ms, reportMs: report.ms }));
} finally {
  await rm(folder, { recursive: true, force: true });
}

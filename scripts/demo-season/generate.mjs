/**
 * Writes the demo log's tables and pictures: fermentation logs, tasting scores, competition sheets, drawings.
 *
 *     node scripts/demo-season/generate.mjs
 *
 * ALL OF IT IS INVENTED. No yeast, taster or judge stands behind any of these numbers; the shapes are
 * those of ordinary home brewing. Running it again gives the same bytes. The records (index.md) are
 * written by hand and left alone.
 *
 * What is true in this invented season, for anyone who wants to hold its pages against it:
 * - aroma lift 4 · (1 − e^(−dose / 5 g/L)) points, cones 0.85 and concentrate 1.6 of pellets, scatter
 *   from batch to batch 0.2 points, of one score 0.9; contact time and temperature change nothing;
 * - bitterness tastes 0.04 points higher per g/L;
 * - hops hold beer: loose pellets 7.5 L/kg, in a bag 5.5, loose cones 11, in a bag 6, concentrate 3.8, on top
 *   of 1.15 to 1.35 L of yeast and dregs, with a scatter of 0.12 L (the ledgers in the records follow this);
 * - pH rises by 0.036 per g/L.
 */

import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildLog, formatLog } from "./fermentation-log.mjs";
import { drawPictures } from "./pictures.mjs";
import { buildScores, formatRanks, formatScores } from "./tasting-scores.mjs";
import { buildCompetition } from "./season-competition.mjs";
import { SEASON_LOGS } from "./season-logs.mjs";
import { DOSE_RANKING, SEASON_TASTINGS } from "./season-tastings.mjs";

const LOG_ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** @param {string} path from the log's root @param {string | Buffer} content */
async function write(path, content) {
  const target = join(LOG_ROOT, path);
  await mkdir(dirname(target), { recursive: true });
  await writeFile(target, content);
}

async function writeLogs() {
  for (const [path, plan] of Object.entries(SEASON_LOGS)) {
    await write(path, formatLog(buildLog(path, plan), plan));
  }
}

async function writeTastings() {
  for (const plan of SEASON_TASTINGS) {
    await write(plan.file, formatScores(buildScores(plan), plan));
  }
  await write(DOSE_RANKING.file, formatRanks(DOSE_RANKING.file, buildScores(DOSE_RANKING), "hop aroma"));
}

async function writeCompetition() {
  for (const [path, table] of Object.entries(buildCompetition())) {
    await write(path, table);
  }
}

async function writePictures() {
  for (const [path, jpeg] of await drawPictures()) {
    await write(path, jpeg);
  }
}

await writeLogs();
await writeTastings();
await writeCompetition();
await writePictures();

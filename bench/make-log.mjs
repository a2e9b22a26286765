// Writes a log of many batches with hourly fermentation logs. The beers are invented and all much alike:
// only how long a build takes is asked of them.
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";

const HOURS = 24 * 21;
const HOPS = ["Cascade", "Chinook", "Centennial", "Simcoe", "Citra"];

/** Numbers from 0 to 1, the same every time (mulberry32, Tommy Ettinger 2017, public domain). */
function randomNumbers(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const dayAfter = (date, days) => new Date(Date.parse(`${date}T00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** Cooled wort ferments down along an S, is dry hopped on day 11, crashed on day 15. */
function fermentationCsv(start, random) {
  const rows = ["time,temperature [C],gravity [SG]"];
  for (let hour = 0; hour < HOURS; hour += 1) {
    const time = new Date(Date.parse(`${start}T16:00Z`) + hour * 3_600_000).toISOString().slice(0, 16).replace("T", " ");
    const temperature = hour < 24 * 15 ? 19 + random() * 0.4 : Math.max(2, 19 - (hour - 24 * 15) * 0.7) + random() * 0.2;
    const gravity = 1.010 + 0.040 / (1 + Math.exp((hour - 60) / 14)) + random() * 0.0004;
    rows.push(`${time},${temperature.toFixed(1)},${gravity.toFixed(4)}`);
  }
  return `${rows.join("\n")}\n`;
}

function record(number, start, random) {
  const on = (days, time) => `${dayAfter(start, days)} ${time}`;
  const dose = (40 + random() * 160).toFixed(0);
  return `---
title: Bench pale ${number}
batch: BP-${String(number).padStart(3, "0")}
brewed: ${start}
status: packaged
brewer: handle-${number % 3}
season: bench-${start.slice(0, 4)}
series: bench-${number % 12}
style: American Pale Ale
plan: {original_gravity: 1.050, final_gravity: 1.010, dry_hop_for: 4 d, crash: 2 C, crash_for: 2 d, carbonation: 2.4 vol}
grist:
  - {malt: Pale malt, amount: ${(4.4 + random() * 0.4).toFixed(2)} kg, extract: 80.5 %, color: 5 EBC}
  - {malt: Medium crystal malt, amount: 0.30 kg, extract: 74 %, color: 130 EBC}
boil: {for: 60 min, before: {volume: 27.5 L at 70 C, gravity: 1.042}, after: {volume: 24.0 L at 98 C, gravity: 1.0495}}
hops:
  - {hop: Chinook, amount: 18 g, alpha: 12.4 %, boil: 60 min}
yeast: {strain: English ale, form: dry, amount: 11 g, pitched: ${start} 16:00}
fermenter: {volume: 22.4 L, gravity: 1.0500, temperature: 19 C}
fermentation:
  log: fermentation.csv
  readings:
    - {at: ${on(9, "08:00")}, gravity: 1.011, temperature: 19 C}
    - {at: ${on(11, "08:00")}, gravity: 1.010, temperature: 19 C, diacetyl: clear}
samples: [{at: ${on(11, "08:10")}, volume: 0.3 L}]
dry_hops:
  - {hop: ${HOPS[number % HOPS.length]}, form: pellet, amount: ${dose} g, oil: 1.3 mL/100g, added: ${on(11, "19:00")}, held: loose, into: fermenter, purged: true}
crash: {set: 2 C, from: ${on(15, "16:00")}, vent: gas}
dumps: [{at: ${on(17, "18:00")}, volume: 0.5 L}]
transfer: {at: ${on(18, "19:00")}, volume: 19.6 L at 2 C, left: 1.2 L, closed: true, sanitised: true}
package: {date: ${dayAfter(start, 18)}, into: keg, volume: 19.2 L, vessel: {volume: 19.5 L, limit: 400 kPa}, purge: {by: liquid, left: 0.02 L}, carbonation: 2.4 vol, temperature: 4 C}
tastings: []
---
An invented batch.
`;
}

/** Writes a log of `count` batches into `folder`. */
export async function makeLog(folder, count) {
  const random = randomNumbers(20260620);
  await mkdir(path.join(folder, "shared"), { recursive: true });
  await writeFile(path.join(folder, "shared", "club.yaml"), "name: Bench\nzone: UTC\nas_of: 2026-12-31 12:00\n");
  for (let number = 1; number <= count; number += 1) {
    const start = dayAfter("2021-01-01", number * 7);
    const place = path.join(folder, "batches", `${start}-bench-${number}`);
    await mkdir(place, { recursive: true });
    await writeFile(path.join(place, "index.md"), record(number, start, random));
    await writeFile(path.join(place, "fermentation.csv"), fermentationCsv(start, random));
  }
}

import { kegPressureOf, packageOxygenOf } from "../figures/package.js";
import { isMissing } from "../known.js";
import type { PackageEntry } from "../batch-parts.js";
import type { Scene } from "../scene.js";
import { found, inWords, known, plain, unknown, type CheckDefinition, type Finding } from "./definition.js";

const OXYGEN_PASS_MG_L = 0.2;
const PRESSURE_PASS_SHARE = 0.8;
const BOTTLE_PASS_VOL = 3;
const BOTTLE_WATCH_VOL = 3.5;

/** Oxygen, pressure and glass. */
export const packageChecks: readonly CheckDefinition[] = [
  {
    id: "package-purge",
    title: "Package purged",
    says: "All the oxygen that the purge left, over the beer, at most 0.2 mg/L: a figure the trade quotes for packaged beer.",
    find: packagePurge,
  },
  {
    id: "package-pressure",
    title: "Pressure within the vessel's limit",
    says: "The highest pressure used or needed, purging included, at most 80 % of the limit on the vessel; to the limit is to watch, above it fails.",
    find: packagePressure,
  },
  {
    id: "bottle-carbonation",
    title: "Bottles and carbonation",
    says: "At most 3.0 volumes for bottles whose rating isn't known, to 3.5 to watch; above it, or with gravity that isn't terminal, fails: common practice.",
    find: bottleCarbonation,
  },
];

function packagePurge(scene: Scene): Finding | undefined {
  if (scene.packages.length === 0) return undefined;
  const purged = scene.packages.find(({ entry }) => entry.purge !== undefined);
  if (purged === undefined) return unknown("common practice", "package.purge isn't recorded");
  const oxygen = packageOxygenOf(scene, purged.entry, purged.field);
  if (isMissing(oxygen)) return unknown("common practice", oxygen.missing);
  return found(oxygen.value <= OXYGEN_PASS_MG_L ? "pass" : "watch", "common practice", ["package-oxygen"],
    `At most ${inWords(oxygen)} of oxygen from what the purge left; the trade quotes ${plain(OXYGEN_PASS_MG_L, "mg/L")} for packaged beer.`,
    "Carbon dioxide gathers low in closed rooms and can't be seen or smelt: purge with air moving through the room.");
}

const STAMP = "The limit stamped on the vessel, its valve and regulator rules, whatever is computed here; have pressure gear checked by those licensed to.";

function packagePressure(scene: Scene): Finding | undefined {
  const pressed = scene.packages.filter(({ entry }) => entry.into !== "bottles");
  if (pressed.length === 0) return undefined;
  const judged = pressed.map(({ entry, field }) => judgePressure(scene, entry, field));
  const order = ["fail", "watch", "unknown", "pass"];
  return judged.sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))[0];
}

function judgePressure(scene: Scene, entry: PackageEntry, field: string): Finding {
  const limit = entry.vessel?.limit;
  const needed = known(kegPressureOf(scene, entry, field))?.value;
  const highest = Math.max(needed ?? Number.NEGATIVE_INFINITY, entry.purge?.pressure?.value ?? Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(highest)) return unknown("record", `neither ${field}.carbonation with its temperature nor a purge pressure is recorded`, STAMP);
  if (limit === undefined) return unknown("record", `${field}.vessel.limit isn't recorded, and up to ${plain(highest, "kPa")} is used`, STAMP);
  const verdict = highest <= PRESSURE_PASS_SHARE * limit.value ? "pass" : highest <= limit.value ? "watch" : "fail";
  return found(verdict, "record", [`${field}.vessel.limit`, "keg-pressure"],
    `Up to ${plain(highest, "kPa")} (gauge) in a vessel limited to ${limit.text}.`, STAMP);
}

const GLASS = "Bottles can burst: use ones made for pressure, without chips, keep them cool, cover them, and open a test bottle early.";

function bottleCarbonation(scene: Scene): Finding | undefined {
  const bottles = scene.packages.find(({ entry }) => entry.into === "bottles");
  if (bottles === undefined) return undefined;
  const asked = bottles.entry.carbonation ?? bottles.entry.measured;
  if (asked === undefined) return unknown("common practice", `${bottles.field}.carbonation isn't recorded`, GLASS);
  const primed = bottles.entry.priming !== undefined;
  const sugar = scene.figure("priming-sugar");
  if (primed && isMissing(sugar)) {
    const open = sugar.missing.includes("terminal") || sugar.missing.includes("creep");
    if (open) return found("fail", "common practice", ["final-gravity"], `Primed for ${asked.text}, but ${sugar.missing}.`, GLASS);
  }
  const verdict = asked.value <= BOTTLE_PASS_VOL ? "pass" : asked.value <= BOTTLE_WATCH_VOL ? "watch" : "fail";
  const rating = bottles.entry.vessel?.limit === undefined ? "bottles of unknown rating" : `bottles limited to ${bottles.entry.vessel.limit.text}`;
  return found(verdict, "common practice", [`${bottles.field}.carbonation`], `${asked.text} in ${rating}; common practice stops at ${plain(BOTTLE_PASS_VOL, "vol")}.`, GLASS);
}

import { CAUTION } from "../cautions.js";
import { gravityStanding, kegPressureOf, packageOxygenOf } from "../figures/package.js";
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
    says: "At most 3.0 volumes for bottles whose rating isn't known, to 3.5 to watch; above it, or with gravity that still falls, fails: common practice. Without readings that show gravity standing still it can't be told.",
    find: bottleCarbonation,
  },
];

/** Of several packages the worst is told: a pass must hold for each of them. */
function worstOf(findings: readonly Finding[]): Finding | undefined {
  const order = ["fail", "watch", "unknown", "pass"];
  return findings.toSorted((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))[0];
}

/** Kegs and casks are purged; bottles are judged where the record says that they were. */
function packagePurge(scene: Scene): Finding | undefined {
  const asked = scene.packages.filter(({ entry }) => entry.purge !== undefined || entry.into !== "bottles");
  const judged = asked.length > 0 ? asked : scene.packages;
  return worstOf(judged.map(({ entry, field }) => judgePurge(scene, entry, field)));
}

function judgePurge(scene: Scene, entry: PackageEntry, field: string): Finding {
  if (entry.purge === undefined) return unknown("common practice", `${field}.purge isn't recorded`);
  const oxygen = packageOxygenOf(scene, entry, field);
  if (isMissing(oxygen)) return unknown("common practice", oxygen.missing);
  return found(oxygen.value <= OXYGEN_PASS_MG_L ? "pass" : "watch", "common practice", ["package-oxygen"],
    `At most ${inWords(oxygen)} of oxygen from what the purge left; the trade quotes ${plain(OXYGEN_PASS_MG_L, "mg/L")} for packaged beer.`,
    CAUTION.gas);
}

function packagePressure(scene: Scene): Finding | undefined {
  const pressed = scene.packages.filter(({ entry }) => entry.into !== "bottles");
  return worstOf(pressed.map(({ entry, field }) => judgePressure(scene, entry, field)));
}

/** Room for the rounding of pressures written in psi. */
const ROUNDING = 1e-9;

function judgePressure(scene: Scene, entry: PackageEntry, field: string): Finding {
  const limit = entry.vessel?.limit;
  const needed = kegPressureOf(scene, entry, field);
  const purged = entry.purge?.pressure?.value ?? Number.NEGATIVE_INFINITY;
  const highest = Math.max(known(needed)?.value ?? Number.NEGATIVE_INFINITY, purged);
  if (!Number.isFinite(highest)) return unknown("record", `neither ${field}.carbonation with its temperature nor a purge pressure is recorded`, CAUTION.pressure);
  if (limit === undefined) return unknown("record", `${field}.vessel.limit isn't recorded, and up to ${plain(highest, "kPa")} is used`, CAUTION.pressure);
  const share = highest / limit.value - ROUNDING;
  const verdict = share <= PRESSURE_PASS_SHARE ? "pass" : share <= 1 ? "watch" : "fail";
  // A purge within the limit says nothing of the carbonation asked for at a temperature that isn't known.
  if (verdict === "pass" && entry.carbonation !== undefined && isMissing(needed)) return unknown("record", needed.missing, CAUTION.pressure);
  return found(verdict, "record", [`${field}.vessel.limit`, "keg-pressure"],
    `Up to ${plain(highest, "kPa")} (gauge) in a vessel limited to ${limit.text}.`, CAUTION.pressure);
}

function bottleCarbonation(scene: Scene): Finding | undefined {
  const bottles = scene.packages.filter(({ entry }) => entry.into === "bottles");
  return worstOf(bottles.map(({ entry, field }) => judgeBottles(scene, entry, field)));
}

function judgeBottles(scene: Scene, entry: PackageEntry, field: string): Finding {
  const { asked, from } = highestCarbonation(entry, field);
  const verdict = asked === undefined ? "unknown" : asked.value <= BOTTLE_PASS_VOL ? "pass" : asked.value <= BOTTLE_WATCH_VOL ? "watch" : "fail";
  const standing = gravityStanding(scene);
  if (standing.state === "falling" && verdict !== "fail") {
    return found("fail", "common practice", ["final-gravity"], `${asked === undefined ? "Bottled" : `Bottled for ${asked.text}`}, but ${standing.why}.`, CAUTION.bottles);
  }
  if (asked === undefined) return unknown("common practice", `${field}.carbonation isn't recorded`, CAUTION.bottles);
  if (standing.state === "unknown" && verdict !== "fail") return unknown("common practice", standing.why, CAUTION.bottles);
  const rating = entry.vessel?.limit === undefined ? "bottles of unknown rating" : `bottles limited to ${entry.vessel.limit.text}`;
  return found(verdict, "common practice", [from], `${asked.text} in ${rating}; common practice stops at ${plain(BOTTLE_PASS_VOL, "vol")}.`, CAUTION.bottles);
}

/** What was asked for or what was found: the glass has to stand the higher. */
function highestCarbonation({ carbonation, measured }: PackageEntry, field: string): { readonly asked: PackageEntry["carbonation"]; readonly from: string } {
  const isMeasured = measured !== undefined && measured.value > (carbonation?.value ?? 0);
  return isMeasured ? { asked: measured, from: `${field}.measured` } : { asked: carbonation, from: `${field}.carbonation` };
}

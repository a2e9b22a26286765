import {
  kegPressure, packageOxygen, primingSugar, primingSugars, purgeCycles, purgeLiquid, residualCo2, warmestHour, type TimeWindow,
} from "../../science/index.js";
import type { PackageEntry } from "../batch-parts.js";
import { apply, assumed, isMissing, missing, readingOf, withNote, type Result } from "../known.js";
import { headPressureAt } from "../crash-conditions.js";
import { totalOf } from "../known-lists.js";
import { latestHour } from "../moments.js";
import type { Scene } from "../scene.js";
import { terminalRunOf } from "./fermentation.js";
import { figure } from "./definition.js";

/** What to set, weigh and expect when the beer is packaged. */
export const packageFigures = [
  figure("residual-co2", "vol", "Carbon dioxide left after fermentation", "Dissolved at the warmest hour after fermentation ended, at the head pressure held",
    (scene) => apply(residualCo2, warmestAfterEnd(scene), headPressureAt(scene, packagingHour(scene)), scene.atmosphericPressure)),
  figure("keg-pressure", "kPa", "Keg pressure", "Gauge pressure at equilibrium for the carbonation and temperature asked",
    (scene) => firstOf(scene, isForced, "a package carbonated under pressure isn't recorded", kegPressureOf)),
  figure("priming-sugar", "g", "Priming sugar", "Sugar for the carbonation asked, all packages", primingSugarTotal),
  figure("package-oxygen", "mg/L", "Oxygen from the package", "Upper bound: all oxygen in the gas the purge left, over the beer",
    (scene) => firstOf(scene, (entry) => entry.purge !== undefined, "package.purge isn't recorded", packageOxygenOf)),
];

/** Gauge pressure for one package's carbonation and temperature, kPa. */
export function kegPressureOf(scene: Scene, entry: PackageEntry, field: string): Result {
  if (entry.carbonation === undefined) return missing(`${field}.carbonation isn't recorded`);
  if (entry.temperature === undefined) return missing(`${field}.temperature isn't recorded`);
  return apply(kegPressure,
    readingOf(`${field}.carbonation`, entry.carbonation.value, "vol", undefined, entry.carbonation.text),
    scene.temperature(`${field}.temperature`, entry.temperature),
    scene.atmosphericPressure);
}

/** Sugar for one primed package, g; missing, with the reason, while more carbonation may come from the beer itself. */
export function primingSugarOf(scene: Scene, entry: PackageEntry, field: string): Result {
  if (entry.priming === undefined) return missing(`${field}.priming isn't recorded`);
  if (entry.carbonation === undefined) return missing(`${field}.carbonation isn't recorded`);
  const unsafe = whyNotPrime(scene);
  if (unsafe !== undefined) return missing(unsafe);
  if (entry.priming.sugar === undefined) return missing(`${field}.priming.sugar isn't recorded`);
  const gramsPerLitreVolume = primingSugars[entry.priming.sugar];
  return apply(primingSugar,
    scene.packageVolume(entry, field),
    readingOf(`${field}.carbonation`, entry.carbonation.value, "vol", undefined, entry.carbonation.text),
    scene.figure("residual-co2"),
    assumed(`${entry.priming.sugar} per volume`, gramsPerLitreVolume, "g/(L·vol)", "From the sugar's formula weight and full fermentation."));
}

/** Oxygen in the gas the purge left in one package, over its beer, mg/L. */
export function packageOxygenOf(scene: Scene, entry: PackageEntry, field: string): Result {
  const { purge } = entry;
  if (purge === undefined) return missing(`${field}.purge isn't recorded`);
  if (entry.vessel?.volume === undefined) return missing(`${field}.vessel.volume isn't recorded`);
  const vessel = readingOf(`${field}.vessel.volume`, entry.vessel.volume.value, "L", entry.vessel.volume.limit, entry.vessel.volume.text);
  const fraction = purge.by === "liquid"
    ? apply(purgeLiquid, scene.stated(`${field}.purge.left`, purge.left, "L"), vessel)
    : apply(purgeCycles, cyclesOf(field, purge.cycles), scene.stated(`${field}.purge.pressure`, purge.pressure, "kPa"), scene.atmosphericPressure);
  const temperature = entry.temperature === undefined
    ? assumed("gas temperature", ROOM_C, "C", "Room temperature at filling: the package's isn't recorded.")
    : scene.temperature(`${field}.temperature`, entry.temperature);
  return withNote(apply(packageOxygen, fraction, vessel, scene.packageVolume(entry, field), temperature, scene.atmosphericPressure),
    "An upper bound for the purge alone: it takes all the oxygen left in the vessel's gas as dissolved, and the purging gas as pure.");
}

const ROOM_C = 20;

function cyclesOf(field: string, cycles: number | undefined): Result {
  return cycles === undefined ? missing(`${field}.purge.cycles isn't recorded`) : readingOf(`${field}.purge.cycles`, cycles, "", undefined, String(cycles));
}

/** Carbonated under pressure rather than by sugar. */
export function isForced(entry: PackageEntry): boolean {
  return entry.into === "keg" && entry.priming === undefined;
}

function firstOf(
  scene: Scene, wanted: (entry: PackageEntry) => boolean, none: string,
  compute: (scene: Scene, entry: PackageEntry, field: string) => Result,
): Result {
  const found = scene.packages.find(({ entry }) => wanted(entry));
  return found === undefined ? missing(scene.packages.length === 0 ? "package isn't recorded" : none) : compute(scene, found.entry, found.field);
}

function primingSugarTotal(scene: Scene): Result {
  const primed = scene.packages.filter(({ entry }) => entry.priming !== undefined);
  if (primed.length === 0) return missing("no package is primed");
  return totalOf(primed.map(({ entry, field }) => primingSugarOf(scene, entry, field)), "g", primingSugar.about);
}

/** What stays dissolved is set by the warmest the beer was once it had stopped making gas. */
function warmestAfterEnd(scene: Scene): Result {
  const ended = scene.figure("fermentation-time");
  if (isMissing(ended)) return ended;
  const window = { fromHours: ended.value, toHours: packagingHour(scene) };
  const logged = scene.overLog(warmestHour, window, (answer) => answer.mean);
  return isMissing(logged) ? warmestHandReading(scene, window, logged) : logged;
}

function packagingHour(scene: Scene): number {
  return (scene.packagedMoment ?? scene.transferMoment)?.hour ?? scene.lastLogHour ?? scene.asOfHour;
}

function warmestHandReading(scene: Scene, window: TimeWindow, otherwise: Result): Result {
  const within = scene.handTemperatures
    .filter(({ hour }) => hour >= window.fromHours && hour <= window.toHours)
    .flatMap(({ temperature }) => isMissing(temperature) ? [] : [temperature])
    .sort((a, b) => b.value - a.value)[0];
  return within === undefined ? otherwise : withNote(within, "From hand readings: no log covers the time after fermentation.");
}

/** A day between readings that agree is the least that common practice takes as the end. */
const LEAST_TERMINAL_H = 24;

/** Whether gravity is known to stand still at packaging, known not to, or not known. */
interface GravityStanding {
  readonly state: "still" | "falling" | "unknown";
  readonly why: string;
}

/** What the readings up to packaging say of more carbonation to come from the beer itself. */
export function gravityStanding(scene: Scene): GravityStanding {
  const run = terminalRunOf(scene.gravityPoints.filter((point) => point.hour > 0 && point.hour <= packagingEnd(scene)));
  const stoodFor = run === undefined ? 0 : run.to.hour - run.from.hour;
  if (run !== undefined && run.of > 1 && run.count < 2) {
    return { state: "falling", why: "gravity isn't terminal: the two latest readings differ by more than 0.001" };
  }
  const isOver = run !== undefined && run.from.hour > (scene.firstDryHop?.hour ?? 0) && stoodFor >= CREEP_OVER_H;
  if (isCreeping(scene) && !isOver) {
    return { state: "falling", why: "gravity fell after the dry hop (hop creep is suspected): carbonation may go on in the package" };
  }
  return stoodFor < LEAST_TERMINAL_H
    ? { state: "unknown", why: "gravity isn't shown to be terminal: fermentation.readings holds no two gravities a day or more apart, within 0.001, up to packaging" }
    : { state: "still", why: "" };
}

/** Why sugar must not be weighed out yet, or undefined when gravity is known to stand still. */
function whyNotPrime(scene: Scene): string | undefined {
  const { state, why } = gravityStanding(scene);
  return state === "still" ? undefined : `no sugar is computed, or bottles can burst: ${why}`;
}

/** A packaging date without a time reaches to the end of that day. */
function packagingEnd(scene: Scene): number {
  const packaged = scene.packagedMoment ?? scene.transferMoment;
  return packaged === undefined ? packagingHour(scene) : latestHour(packaged);
}

function isCreeping(scene: Scene): boolean {
  const drop = scene.figure("dry-hop-gravity-drop");
  return !isMissing(drop) && drop.value > CREEP_SG + ROUNDING_SG && scene.batch.plan?.dryHopWhen !== "fermenting";
}

/** Two days of readings that agree after the hops went in show that the fall has ended: the trade's rule for terminal. */
const CREEP_OVER_H = 48;
/** A fall that common practice lets pass. */
const CREEP_SG = 0.001;
const ROUNDING_SG = 1e-9;

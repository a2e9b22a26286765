import { difference, dryHopDose, dryHopOil, elapsedTime, timeWeightedMean, type TimeWindow } from "../../science/index.js";
import { apply, isMissing, missing, readingOf, scaled, withNote, type Result } from "../known.js";
import { totalOf, weightedMeanOf } from "../known-lists.js";
import { dryHopsOf, type DryHopAddition } from "../dry-hops.js";
import { momentReading } from "../moments.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";
import type { GravityPoint } from "../gravity-points.js";
import { fallBetween, finalPoint } from "./gravity.js";

/** Dose, oil, contact and temperature of the dry hop, and what the gravity did after it. */
export const dryHopFigures = [
  figure("dry-hop-mass", "g", "Dry hops", "Mass of all dry-hop additions",
    (scene) => overAdditions(scene, (additions) => totalOf(additions.map((addition) => addition.mass), "g"))),
  figure("dry-hop-dose", "g/L", "Dry-hop dose", "Hops over the beer in the vessel at each addition, summed",
    (scene) => overAdditions(scene, (additions) => totalOf(additions.map(doseOf), "g/L", dryHopDose.about))),
  figure("dry-hop-oil", "mL/hL", "Hop oil added", "Essential oil in the hops over the beer, from the oil content stated for them",
    (scene) => overAdditions(scene, (additions) => totalOf(additions.map(oilOf), "mL/hL", dryHopOil.about))),
  figure("dry-hop-contact", "d", "Dry-hop contact", "Time in contact, weighted by mass over the additions",
    (scene) => overHops(scene, (additions) => weightedMeanOf(additions.map((addition) => contactOf(scene, addition)), masses(additions), "d"))),
  figure("dry-hop-temperature", "C", "Temperature in contact", "Time-weighted mean over the contact, weighted by mass over the additions",
    (scene) => overHops(scene, (additions) => weightedMeanOf(additions.map((addition) => contactTemperature(scene, addition)), masses(additions), "C"))),
  figure("dry-hop-ph-rise", "pH", "Rise in pH after the dry hop", "Last pH read after the first addition less the last one read before it", phRise),
  figure("dry-hop-gravity-drop", "SG", "Fall in gravity after the dry hop", "Last reading before the first addition less the final gravity", gravityDropAfter),
];

/** Hops over the beer at one addition, g/L. */
export function doseOf(addition: DryHopAddition): Result {
  return apply(dryHopDose, addition.mass, addition.beer);
}

function oilOf(addition: DryHopAddition): Result {
  return apply(dryHopOil, addition.mass, addition.oil, addition.beer);
}

/** Days from the addition until the hops were out or the beer moved off them. */
export function contactOf(scene: Scene, addition: DryHopAddition): Result {
  if (addition.added === undefined) return missing(`${addition.field}.added isn't recorded`);
  if (addition.out === undefined) return missing(outMissing(scene, addition));
  if (addition.out.hour < addition.added.hour) return missing(`${addition.out.field} has no time, and ${addition.field}.added is later that day`);
  const hours = apply(elapsedTime, momentReading(addition.added), momentReading(addition.out));
  return isMissing(hours) ? hours : scaled(hours, 1 / 24, "d");
}

/** The part of the contact before the crash: what a plan's time and band speak of, the cold being a step of its own. */
export function windowBeforeCrash(scene: Scene, addition: DryHopAddition): TimeWindow | undefined {
  const { added, into } = addition;
  // Hops still in the beer are told of as far as the log has come.
  const end = addition.out?.hour ?? (scene.isOpen && into === "fermenter" && scene.lastLogHour !== undefined ? Math.min(scene.lastLogHour, scene.asOfHour) : undefined);
  if (added === undefined || end === undefined || end <= added.hour && addition.out === undefined) return undefined;
  const crash = scene.crashStart?.hour ?? end;
  return { fromHours: added.hour, toHours: crash > added.hour ? Math.min(crash, end) : end };
}

function outMissing(scene: Scene, addition: DryHopAddition): string {
  if (addition.into === "keg") return `${addition.field}.removed isn't recorded: hops in a keg have no transfer to end their contact`;
  return scene.isOpen ? "the hops are still in contact: the transfer isn't recorded yet" : "transfer.at isn't recorded";
}

/** Time-weighted mean of the log while these hops were in, °C. */
export function contactTemperature(scene: Scene, addition: DryHopAddition): Result {
  if (addition.into === "keg") return missing(`${addition.field} went into the keg, which no log covers`);
  if (addition.added === undefined) return missing(`${addition.field}.added isn't recorded`);
  if (addition.out === undefined) return missing(outMissing(scene, addition));
  const window = { fromHours: addition.added.hour, toHours: addition.out.hour };
  return scene.overLog(timeWeightedMean, window, (answer) => answer.mean);
}

function gravityDropAfter(scene: Scene): Result {
  return fallAfterHops(scene, finalPoint(scene), scene.figure("final-gravity"));
}

/** The same fall as far as it has come, in beer that isn't packaged yet. */
export function gravityDropSoFar(scene: Scene): Result {
  const latest = scene.lastGravityBefore(Number.POSITIVE_INFINITY);
  return fallAfterHops(scene, latest, scene.figure("latest-gravity"));
}

function fallAfterHops(scene: Scene, last: GravityPoint | undefined, gravity: Result): Result {
  const first = scene.firstDryHop;
  if (first === undefined) return missing(scene.batch.dryHops?.length === 0 ? "there was no dry hop" : "dry_hops isn't recorded, or none of them says when it was added");
  const before = scene.lastGravityBefore(first.hour);
  if (before === undefined) return missing(`fermentation.readings holds no gravity between pitching and ${first.at}`);
  if (last !== undefined && last.hour <= first.hour) return missing(`fermentation.readings holds no gravity after the dry hop of ${first.at}`);
  return withNote(fallBetween(before.gravity, gravity), before.dateOnly ? "The reading before has a date but no time." : undefined);
}

/** The hops' own leaf raises pH: the two hand readings either side of the first addition. */
function phRise(scene: Scene): Result {
  const first = scene.firstDryHop;
  if (first === undefined) return missing(scene.batch.dryHops?.length === 0 ? "there was no dry hop" : "dry_hops isn't recorded");
  const readings = (scene.batch.fermentation?.readings ?? []).flatMap((reading, index) => {
    const field = `fermentation.readings[${index}]`;
    const moment = scene.moment(`${field}.at`, reading.at);
    return moment === undefined || reading.ph === undefined ? []
      : [{ hour: moment.hour, ph: readingOf(`${field}.ph`, reading.ph, "pH", scene.instruments.ph, String(reading.ph)) }];
  });
  readings.sort((a, b) => a.hour - b.hour);
  const before = readings.filter(({ hour }) => hour <= first.hour).at(-1);
  const after = readings.filter(({ hour }) => hour > first.hour).at(-1);
  if (before === undefined || after === undefined) return missing("fermentation.readings holds no ph on one side of the dry hop");
  return apply(difference, after.ph, before.ph);
}

/** For figures that are 0 when a record says there were no dry hops. */
function overAdditions(scene: Scene, sum: (additions: readonly DryHopAddition[]) => Result): Result {
  return scene.batch.dryHops === undefined ? missing("dry_hops isn't recorded (write `dry_hops: []` if there were none)") : sum(dryHopsOf(scene));
}

/** For figures that have no meaning without dry hops. */
function overHops(scene: Scene, mean: (additions: readonly DryHopAddition[]) => Result): Result {
  return overAdditions(scene, (additions) => additions.length === 0 ? missing("there was no dry hop") : mean(additions));
}

function masses(additions: readonly DryHopAddition[]): Result[] {
  return additions.map((addition) => addition.mass);
}

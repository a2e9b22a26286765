import { CAUTION } from "../cautions.js";
import { carbonationFromGravityFall, type HoursWithin } from "../../science/index.js";
import type { Quantity } from "../../units/index.js";
import { dryHopsOf, type DryHopAddition } from "../dry-hops.js";
import { contactOf, gravityDropSoFar, windowBeforeCrash } from "../figures/dry-hop.js";
import { apply, isMissing, missing, missingForAll, plusMinusOf, type Known, type Missing, type Result } from "../known.js";
import type { Scene } from "../scene.js";
import { found, inWords, known, plain, unknown, workedBy, type CheckDefinition, type Finding } from "./definition.js";

/** A band a reading is held against, and whose band it is. */
interface Band {
  readonly low: number;
  readonly high: number;
  readonly against: "plan" | "common practice";
}

const SINGLE_TEMPERATURE_C = 1;
const SINGLE_CONTACT_H = 12;
const CREEP_PASS_SG = 0.001;
const CREEP_WATCH_SG = 0.002;
const WATCH_OUTSIDE_H = 6;

/** Contact, temperature and what the hops did to the gravity. */
export const dryHopChecks: readonly CheckDefinition[] = [
  {
    id: "contact-time",
    title: "Contact time",
    says: "Time before the crash, held against the plan (one value means ± 12 h); without a plan, the whole contact against common practice: 1 to 7 days pass, up to 14 days or from 12 h to a day watch.",
    find: contactTime,
  },
  {
    id: "contact-temperature",
    title: "Temperature in contact",
    says: "Hours before the crash that the beer was outside the planned band (one value means ± 1 °C); without a plan, outside 4 to 22 °C, which is common practice. Up to 6 h outside is to watch.",
    find: contactTemperatureCheck,
  },
  {
    id: "hop-creep",
    title: "Hop creep",
    says: "Enzymes in hops free sugar that yeast ferments on: gravity that falls after the dry hop brings carbonation and diacetyl with it. A fall of 0.001 inside its uncertainty passes, to 0.002 is to watch: common practice.",
    find: hopCreep,
  },
];

/** The plan's band, or common practice where there is none. */
export function temperatureBand(scene: Scene): Band {
  const planned = scene.batch.plan?.dryHopTemperature;
  if (planned === undefined) return { low: 4, high: 22, against: "common practice" };
  const room = planned.single ? SINGLE_TEMPERATURE_C : 0;
  return { low: planned.low.value - room, high: planned.high.value + room, against: "plan" };
}

/** Hours one addition spent outside the band before the crash; missing without a log over its contact. */
export function hoursOutside(scene: Scene, addition: DryHopAddition, band: Band): Result {
  return inContact(scene, addition, band, ({ belowHours, aboveHours }) => belowHours + aboveHours);
}

function inContact(scene: Scene, addition: DryHopAddition, band: Band, pick: (hours: HoursWithin) => number): Result {
  if (addition.into === "keg") return missing(`${addition.field} went into the keg, which no log covers`);
  const contact = contactOf(scene, addition);
  const window = windowBeforeCrash(scene, addition);
  if (isMissing(contact) && window === undefined) return contact;
  return window === undefined ? missing(`${addition.field}.added isn't recorded`) : scene.hoursInBand(window, band, pick);
}

function contactTime(scene: Scene): Finding | undefined {
  const additions = dryHopsOf(scene);
  if (additions.length === 0) return undefined;
  const planned = scene.batch.plan?.dryHopFor;
  const soFar = contactSoFar(scene, additions);
  if (soFar !== undefined) return soFar;
  const findings = additions.map((addition) => contactOf(scene, addition));
  const firstMissing = findings.find(isMissing);
  if (firstMissing !== undefined) return unknown(planned === undefined ? "common practice" : "plan", firstMissing.missing);
  const whole = findings.flatMap((result) => (isMissing(result) ? [] : [result.value]));
  if (planned === undefined) return contactByPractice(Math.min(...whole), Math.max(...whole));
  const warm = additions.flatMap((addition) => {
    const window = windowBeforeCrash(scene, addition);
    return window === undefined ? [] : [(window.toHours - window.fromHours) / 24];
  });
  return contactByPlan(planned, warm, whole);
}

/** Hops still in the beer: how long they have been, and whether that is longer than they should be. */
function contactSoFar(scene: Scene, additions: readonly DryHopAddition[]): Finding | undefined {
  const planned = scene.batch.plan?.dryHopFor;
  const until = Math.min(scene.crashStart?.hour ?? Number.POSITIVE_INFINITY, scene.asOfHour);
  const inBeer = additions.filter(({ into, out }) => into === "fermenter" && out === undefined);
  const days = inBeer.flatMap(({ added }) => (added === undefined || added.hour > until ? [] : [(until - added.hour) / 24]));
  if (!scene.isOpen || days.length === 0 || days.length < inBeer.length) return undefined;
  const most = planned === undefined ? 7 : (planned.high.value + (planned.single ? SINGLE_CONTACT_H : 0)) / 24;
  const asked = planned === undefined ? "common practice is 1 to 7 days" : `the plan says ${planned.text}`;
  const [verdict, against] = [Math.max(...days) > most ? "watch" : "unknown", planned === undefined ? "common practice" : "plan"] as const;
  const cold = scene.crashStart === undefined || scene.crashStart.hour > scene.asOfHour ? "so far" : "before the crash";
  return found(verdict, against, additions.map(({ field }) => `${field}.added`), `In contact for ${spanOf(days)} ${cold}; ${asked}.`);
}

/** One value, or the span of several where they differ in print. */
function spanOf(days: readonly number[]): string {
  const [shortest, longest] = [plain(Math.min(...days), "d"), plain(Math.max(...days), "d")];
  return shortest === longest ? shortest : `${shortest} to ${longest}`;
}

interface PlannedTime {
  readonly low: Quantity;
  readonly high: Quantity;
  readonly single: boolean;
  readonly text: string;
}

function contactByPlan(planned: PlannedTime, warm: readonly number[], whole: readonly number[]): Finding {
  const room = planned.single ? SINGLE_CONTACT_H : 0;
  const [low, high] = [(planned.low.value - room) / 24, (planned.high.value + room) / 24];
  const inside = warm.every((days) => days >= low && days <= high);
  const cold = spanOf(warm) === spanOf(whole) ? "" : ` before the crash (${spanOf(whole)} in all)`;
  return found(inside ? "pass" : "watch", "plan", ["dry-hop-contact"],
    `In contact for ${spanOf(warm)}${cold}; the plan says ${planned.text}${planned.single ? ", give or take 12 h" : ""}.`);
}

function contactByPractice(shortest: number, longest: number): Finding {
  const verdict = shortest < 0.5 || longest > 14 ? "fail" : shortest < 1 || longest > 7 ? "watch" : "pass";
  return found(verdict, "common practice", ["dry-hop-contact"], `In contact for ${spanOf([shortest, longest])}; common practice is 1 to 7 days.`);
}

function contactTemperatureCheck(scene: Scene): Finding | undefined {
  const additions = dryHopsOf(scene);
  if (additions.length === 0) return undefined;
  const band = temperatureBand(scene);
  // What hangs in the keg has no log; it doesn't hide what the fermenter's shows.
  const inFermenter = additions.filter(({ into }) => into === "fermenter");
  const logged = inFermenter.length === 0 ? additions : inFermenter;
  const outside = everyValue(logged.map((addition) => hoursOutside(scene, addition, band)));
  if ("missing" in outside) return unknown(band.against, outside.missing);
  const most = Math.max(...outside.values);
  const unread = Math.max(...logged.map((addition) => known(inContact(scene, addition, band, ({ gapHours }) => gapHours))?.value ?? 0));
  if (most <= WATCH_OUTSIDE_H && unread > WATCH_OUTSIDE_H) {
    return unknown(band.against, `fermentation.log has no readings for ${plain(unread, "h")} of the contact before the crash${most < LEAST_OUTSIDE_H ? "" : `; in the rest the beer was outside ${bandName(band)} for ${plain(most, "h")}`}`);
  }
  const verdict = most < LEAST_OUTSIDE_H ? "pass" : most <= WATCH_OUTSIDE_H + ROUNDING ? "watch" : "fail";
  const isOver = logged.every(({ out }) => out !== undefined);
  return found(verdict, band.against, ["dry-hop-temperature"], `${saysOutside(band, most, unread, isOver)}${logged.length < additions.length ? " No log covers the hops in the keg." : ""}`);
}

/** Three minutes: less is a probe's own flicker. */
const LEAST_OUTSIDE_H = 0.05;

function saysOutside(band: Band, most: number, unread: number, isOver: boolean): string {
  const when = isOver ? "before the crash" : "so far";
  const silent = unread < 1 ? "" : ` The log has no readings for ${plain(unread, "h")} of it.`;
  return most < LEAST_OUTSIDE_H
    ? `Within ${bandName(band)} ${when}.${silent}`
    : `Outside ${bandName(band)} for ${plain(most, "h")} of the contact ${when}.${silent}`;
}

function bandName({ low, high, against }: Band): string {
  return `${against === "plan" ? "the planned" : "the usual"} ${plain(low, "C")} to ${plain(high, "C")}`;
}

/** All values, or every reason why one is missing. */
function everyValue(results: readonly Result[]): { readonly values: readonly number[] } | Missing {
  const reasons = results.flatMap((result) => (isMissing(result) ? [result.missing] : []));
  return reasons.length > 0 ? missingForAll(reasons) : { values: results.flatMap((result) => (isMissing(result) ? [] : [result.value])) };
}

function hopCreep(scene: Scene): Finding | undefined {
  if (dryHopsOf(scene).length === 0) return undefined;
  const soFar = scene.isOpen && isMissing(scene.figure("final-gravity"));
  const drop = soFar ? gravityDropSoFar(scene) : scene.figure("dry-hop-gravity-drop");
  if (isMissing(drop)) return unknown("common practice", drop.missing);
  if (scene.batch.plan?.dryHopWhen === "fermenting") {
    return found("unknown", "plan", ["dry-hop-gravity-drop"], "The hops went into fermenting beer as planned: a fall of gravity can't be told from fermentation.");
  }
  const within = Math.max(plusMinusOf(drop) ?? 0, LEAST_FALL_SG);
  const verdict = drop.value > CREEP_WATCH_SG + ROUNDING ? "fail" : drop.value <= CREEP_PASS_SG + ROUNDING && drop.value <= within + ROUNDING ? "pass" : "watch";
  const finding = found(verdict, "common practice", [soFar ? "latest-gravity" : "dry-hop-gravity-drop"], creepSentence(scene, drop, within), verdict === "pass" ? undefined : CAUTION.creep);
  return drop.value > within + ROUNDING ? workedBy(finding, carbonationFromGravityFall) : finding;
}

const ROUNDING = 1e-9;
/** Half a point of gravity: a smaller fall isn't read on any home instrument, however its errors cancel. */
const LEAST_FALL_SG = 0.0005;
function creepSentence(scene: Scene, drop: Known, within: number): string {
  const words = fallWords(drop);
  if (drop.value <= within + ROUNDING) return `${words}: no more than the readings can be off by.`;
  const gas = known(apply(carbonationFromGravityFall, scene.figure("original-gravity"), scene.lastGravityBefore(scene.firstDryHop?.hour ?? 0)?.gravity ?? missing("a gravity before"), drop));
  return `${words}, more than the readings can be off by: ${fallName(scene)}${gas === undefined ? "" : `, worth about ${inWords(gas)} of carbonation had it happened in a closed vessel`}.`;
}

function fallWords(drop: Known): string {
  if (drop.value === 0) return "Gravity read the same before and after the dry hop";
  return drop.value < 0
    ? `Gravity read ${inWords({ ...drop, value: -drop.value })} higher after the dry hop`
    : `Gravity fell by ${inWords(drop)} after the dry hop`;
}

/** A fall is the hops' own doing only where gravity had stood still before them. */
function fallName(scene: Scene): string {
  const before = known(scene.figure("terminal-hours"));
  return before === undefined || before.value === 0 ? "hop creep, or fermentation that hadn't ended" : "hop creep";
}

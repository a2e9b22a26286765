import { instantMs, type CivilTime } from "../records/index.js";
import { ofOneInstrument, TERMINAL_WITHIN_SG, terminalRunOf } from "./figures/fermentation.js";
import { isMissing } from "./known.js";
import { latestHour, type Moment } from "./moments.js";
import type { Scene } from "./scene.js";
import type { NextStep } from "./types.js";

interface PlannedStep {
  readonly id: "dry-hop" | "dump" | "crash" | "transfer" | "package" | "tasting";
  readonly title: string;
  readonly when: CivilTime | undefined;
  readonly done: boolean;
}

/** A step planned for within this many hours is due. */
const DUE_WITHIN_H = 36;
const RECENT_H = 48;

/**
 * What a batch needs next, in the order of a brewer's calendar. A packaged batch
 * can only be waiting for its tasting; a dumped one needs nothing.
 */
export function nextSteps(scene: Scene): NextStep[] {
  const hold = whyHoldHops(scene);
  if (scene.status === "dumped") return [];
  const open = plannedSteps(scene).filter(({ done, id }) => !done && (scene.isOpen || id === "tasting"));
  return inOrder(scene, open).flatMap(({ step, moment }) => {
    if (step.when === undefined) return [];
    const until = moment.hour - scene.asOfHour;
    const isPast = latestHour(moment) < scene.asOfHour;
    if (!scene.isOpen && isPast) return [];
    const blocked = step.id === "dry-hop" && until <= DUE_WITHIN_H ? hold : undefined;
    return [{
      id: step.id, step: step.title, when: step.when.text,
      ...(step.when.time === undefined ? {} : { instant: new Date(instantMs(step.when, scene.log.club.zone)).toISOString() }),
      state: blocked === undefined ? stateOf(until, isPast) : "blocked", says: blocked ?? sayWhen(until, isPast),
    }];
  });
}

/** By the hour they are planned for; of two for the same hour the one that comes first in a cellar. */
function inOrder(scene: Scene, steps: readonly PlannedStep[]): { readonly step: PlannedStep; readonly moment: Moment }[] {
  const dated = steps.flatMap((step) => {
    const moment = scene.moment(`plan.dates.${step.id}`, step.when);
    return moment === undefined ? [] : [{ step, moment }];
  });
  return dated.sort((one, other) => one.moment.hour - other.moment.hour);
}

function plannedSteps(scene: Scene): PlannedStep[] {
  const { batch } = scene;
  const dates = batch.plan?.dates;
  const happened = (hour: number | undefined): boolean => hour !== undefined && hour <= scene.asOfHour;
  return [
    { id: "dry-hop", title: "Dry hop", when: dates?.dryHop, done: happened(scene.firstDryHop?.hour) },
    { id: "dump", title: "Dump", when: dates?.dump, done: (batch.dumps ?? []).length > 0 },
    { id: "crash", title: "Crash", when: dates?.crash, done: happened(scene.crashStart?.hour) },
    { id: "transfer", title: "Transfer", when: dates?.transfer, done: happened(scene.transferMoment?.hour) },
    { id: "package", title: "Package", when: dates?.package, done: scene.packages.length > 0 },
    { id: "tasting", title: "Tasting", when: dates?.tasting, done: (batch.tastings ?? []).length > 0 },
  ];
}

/** @param isPast a step planned for a day is past when the day is */
function stateOf(until: number, isPast: boolean): NextStep["state"] {
  if (isPast) return "overdue";
  return until <= DUE_WITHIN_H ? "due" : "later";
}

function sayWhen(until: number, isPast: boolean): string {
  const days = Math.round(Math.abs(until) / 24);
  const away = days === 0 ? `${Math.max(1, Math.round(Math.abs(until)))} h` : days === 1 ? "1 day" : `${days} days`;
  if (isPast) return `Planned for ${away} ago and not recorded.`;
  return until < 0 ? "Today." : `In ${away}.`;
}

/** Why the hops should wait, or undefined when gravity stands still or the plan wants them early. */
function whyHoldHops(scene: Scene): string | undefined {
  if (scene.batch.plan?.dryHopWhen === "fermenting") return undefined;
  const points = ofOneInstrument(scene.gravityPoints.filter((point) => point.hour > 0 && point.hour <= scene.asOfHour && !isMissing(point.gravity)));
  const latest = points.at(-1);
  if (latest === undefined) return "No gravity reading since pitching: not known to be terminal, hold the dry hop.";
  const earlier = points.filter((point) => point.hour <= latest.hour - RECENT_H / 2 && point.hour >= latest.hour - 2 * RECENT_H).at(-1);
  if (earlier !== undefined && !isMissing(earlier.gravity) && !isMissing(latest.gravity)) {
    const fall = earlier.gravity.value - latest.gravity.value;
    if (fall > TERMINAL_WITHIN_SG + 1e-9) {
      return `Gravity fell ${fall.toFixed(3)} in the ${Math.round(latest.hour - earlier.hour)} h to ${latest.at}: not terminal, hold the dry hop.`;
    }
  }
  const run = terminalRunOf(points);
  return run === undefined || run.count < 2 || run.to.hour - run.from.hour < RECENT_H / 2
    ? `Gravity isn't shown to be terminal: one more reading, a day or more after ${latest.at}, is needed before the dry hop.`
    : undefined;
}

import type { CivilTime } from "../records/index.js";
import { TERMINAL_WITHIN_SG, terminalRunOf } from "./figures/fermentation.js";
import { isMissing } from "./known.js";
import type { Scene } from "./scene.js";
import type { NextStep } from "./types.js";

type StepName = "dry_hop" | "dump" | "crash" | "transfer" | "package" | "tasting";

interface PlannedStep {
  readonly step: StepName;
  readonly title: string;
  readonly when: CivilTime | undefined;
  readonly done: boolean;
}

/** A step planned for within this many hours is due. */
const DUE_WITHIN_H = 36;
const RECENT_H = 48;

/** What an open batch needs next, in the order of a brewer's calendar; nothing for a finished one. */
export function nextSteps(scene: Scene): NextStep[] {
  if (!scene.isOpen) return [];
  const blocked = whyHoldHops(scene);
  return plannedSteps(scene).filter((step) => !step.done).flatMap((step) => {
    const moment = scene.moment(`plan.dates.${step.step}`, step.when);
    if (step.when === undefined || moment === undefined) return [];
    const until = moment.hour - scene.asOfHour;
    if (step.step === "dry_hop" && blocked !== undefined && until <= DUE_WITHIN_H) {
      return [{ step: step.title, state: "blocked" as const, when: step.when.text, says: blocked }];
    }
    return [{ step: step.title, state: stateOf(until), when: step.when.text, says: sayWhen(until) }];
  });
}

function plannedSteps(scene: Scene): PlannedStep[] {
  const { batch } = scene;
  const dates = batch.plan?.dates;
  const happened = (hour: number | undefined): boolean => hour !== undefined && hour <= scene.asOfHour;
  return [
    { step: "dry_hop", title: "Dry hop", when: dates?.dryHop, done: happened(scene.firstDryHop?.hour) },
    { step: "dump", title: "Dump", when: dates?.dump, done: (batch.dumps ?? []).length > 0 },
    { step: "crash", title: "Crash", when: dates?.crash, done: happened(scene.crashStart?.hour) },
    { step: "transfer", title: "Transfer", when: dates?.transfer, done: happened(scene.transferMoment?.hour) },
    { step: "package", title: "Package", when: dates?.package, done: scene.packages.length > 0 },
    { step: "tasting", title: "Tasting", when: dates?.tasting, done: (batch.tastings ?? []).length > 0 },
  ];
}

function stateOf(until: number): NextStep["state"] {
  if (until < 0) return "overdue";
  return until <= DUE_WITHIN_H ? "due" : "later";
}

function sayWhen(until: number): string {
  const days = Math.round(Math.abs(until) / 24);
  const away = days === 0 ? `${Math.max(1, Math.round(Math.abs(until)))} h` : days === 1 ? "1 day" : `${days} days`;
  return until < 0 ? `Planned for ${away} ago and not recorded.` : `In ${away}.`;
}

/** Why the hops should wait, or undefined when gravity stands still or the plan wants them early. */
function whyHoldHops(scene: Scene): string | undefined {
  if (scene.batch.plan?.dryHopWhen === "fermenting") return undefined;
  const points = scene.gravityPoints.filter((point) => point.hour > 0 && point.hour <= scene.asOfHour && !isMissing(point.gravity));
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

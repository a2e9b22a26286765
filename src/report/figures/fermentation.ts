import { elapsedTime, seriesExtremes, terminalRun, timeWeightedMean } from "../../science/index.js";
import { momentReading } from "../moments.js";
import { apply, isMissing, missing, withNote, type Result } from "../known.js";
import type { GravityPoint } from "../gravity-points.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** Readings within this of the latest one count as unchanged (common practice: 0.001 over two to three days). */
export const TERMINAL_WITHIN_SG = 0.001;
/** Room for the rounding of decimal gravities, far below what a hydrometer shows. */
const ROUNDING_SG = 1e-9;

/** Time, temperature and end of fermentation. */
export const fermentationFigures = [
  figure("fermentation-time", "h", "Fermentation time", "From pitching to the first of the readings that stay terminal", fermentationTime),
  figure("fermentation-temperature", "C", "Fermentation temperature", "Time-weighted mean from pitching to the dry hop or crash",
    (scene) => scene.overLog(timeWeightedMean, scene.fermentationWindow, (answer) => answer.mean)),
  figure("fermentation-peak", "C", "Warmest in fermentation", "Highest temperature from pitching to the dry hop or crash",
    (scene) => scene.overLog(seriesExtremes, scene.fermentationWindow, (answer) => answer.highest)),
  figure("terminal-hours", "h", "Terminal before the dry hop", "How long the gravity had been unchanged within 0.001 when the first dry hop (or else the crash) began", terminalHours),
];

/** The readings at the end that agree with the latest; `of` counts all that could be read. */
interface TerminalPoints {
  readonly from: GravityPoint;
  readonly to: GravityPoint;
  readonly count: number;
  readonly of: number;
}

/** Hand readings this close to the latest reading of all speak for the beer now. */
const RECENT_H = 96;
/** A probe whose last reading is older than this has been taken out. */
const PROBE_ENDED_H = 24;

/**
 * Readings that can be held against each other to 0.001: a hydrometer's and a
 * floating probe's differ by more than that. The probe's own are closer together,
 * unless it ended early or two recent hand readings show a change that it missed.
 */
export function ofOneInstrument(points: readonly GravityPoint[]): readonly GravityPoint[] {
  const hand = points.filter(({ source }) => source === "hand");
  const probe = points.filter(({ source }) => source === "log");
  const last = probe.at(-1);
  if (hand.length === 0 || last === undefined) return points;
  const latest = points.at(-1)?.hour ?? 0;
  const [before, after] = hand.filter(({ hour }) => hour >= latest - RECENT_H).slice(-2).map(({ gravity }) => gravity);
  const changed = before !== undefined && after !== undefined && !isMissing(before) && !isMissing(after)
    && Math.abs(before.value - after.value) > TERMINAL_WITHIN_SG + ROUNDING_SG;
  const ended = latest - last.hour > PROBE_ENDED_H && hand.length > 1;
  return changed || ended ? hand : probe;
}

/**
 * The unbroken run of one instrument's readings at the end of `points` that are within 0.001 of the latest.
 * Readings of one moment count as one, their mean: they show no course of time.
 */
export function terminalRunOf(points: readonly GravityPoint[]): TerminalPoints | undefined {
  const moments = new Map<number, { readonly point: GravityPoint; readonly values: number[] }>();
  for (const point of ofOneInstrument(points)) {
    if (isMissing(point.gravity)) continue;
    const held = moments.get(point.hour);
    if (held === undefined) moments.set(point.hour, { point, values: [point.gravity.value] });
    else held.values.push(point.gravity.value);
  }
  const rising = [...moments.values()];
  const series = rising.map(({ point, values }) => ({ hours: point.hour, value: values.reduce((sum, value) => sum + value, 0) / values.length }));
  const to = rising.at(-1)?.point;
  if (to === undefined) return undefined;
  const run = terminalRun(series, TERMINAL_WITHIN_SG + ROUNDING_SG);
  return { from: moments.get(run.fromHours)?.point ?? to, to, count: run.count, of: rising.length };
}

/** The last hour at which readings speak of fermentation alone: hops and cold change them after. */
function fermentationEnd(scene: Scene): number {
  return (scene.firstDryHop ?? scene.crashStart ?? scene.transferMoment ?? scene.packagedMoment)?.hour ?? Number.POSITIVE_INFINITY;
}

function fermentationTime(scene: Scene): Result {
  const points = scene.gravityPoints.filter((point) => point.hour > 0 && point.hour <= fermentationEnd(scene));
  const run = terminalRunOf(points);
  if (run === undefined || run.count < 2) {
    return missing("fermentation.readings holds no two gravities, before the dry hop or crash, that stay within 0.001 of each other");
  }
  const duration = apply(elapsedTime, scene.startHour, momentReading(run.from));
  return withNote(duration, `First of ${run.count} readings within 0.001 of each other: it may have ended any time after the reading before it.`);
}

function terminalHours(scene: Scene): Result {
  const began = scene.firstDryHop ?? scene.crashStart;
  if (began === undefined) return missing("dry_hops[0].added or crash.from isn't recorded");
  const points = scene.gravityPoints.filter((point) => point.hour > 0 && point.hour <= began.hour);
  const run = terminalRunOf(points);
  if (run === undefined || run.of < 2) return missing(`fermentation.readings holds fewer than two gravities before ${began.at}: two, a day or more apart, would show it`);
  // One reading alone shows no run, however long before the hops it was taken.
  const until = run.count > 1 ? began : run.from;
  return apply(elapsedTime,
    momentReading(run.from),
    momentReading(until));
}

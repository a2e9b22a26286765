import { individualsChart, mean, type ChartSignal } from "../statistics/index.js";
import { printedUnit } from "../units/index.js";
import { aloneIn, sharedIn } from "./season-differences.js";
import { quantityText, rateText, withUnit } from "./season-quantities.js";
import { capitalised, counted, listed } from "./season-words.js";
import type { BatchReport, ControlReport, SeasonPoint, SignalReport } from "./types.js";

const RUN = 8;
/** Fewer steps each side of the middle say nothing of steadiness. */
const LEAST_STEPS = 4;

/**
 * Whether a figure holds from batch to batch: limits from the moving range, and what lies beyond them with
 * what sets those batches apart.
 *
 * @param points in brew order
 * @param batches the season's, in brew order
 * @returns undefined under two points
 */
export function controlReport(points: readonly SeasonPoint[], unit: string, batches: readonly BatchReport[]): ControlReport | undefined {
  if (points.length < 2) return undefined;
  const { standing, center, lower, upper, movingRanges, meanMovingRange, movingRangeUpper, signals } = individualsChart(points.map(({ value }) => value));
  const having = points.flatMap(({ slug }) => batches.find((batch) => batch.slug === slug) ?? []);
  const told = { standing, center, lower, upper, movingRanges, meanMovingRange, movingRangeUpper, signals: withoutRepeats(signals).map((signal) => signalReport(signal, points, having)) };
  return { ...told, says: controlSays(told, unit, points) };
}

/** A run that goes on is told once, at its eighth batch. */
function withoutRepeats(signals: readonly ChartSignal[]): ChartSignal[] {
  return signals.filter(({ index, rule }) => rule !== "run-of-eight" || !signals.some((other) => other.rule === rule && other.index === index - 1));
}

function signalReport({ index, rule, side }: ChartSignal, points: readonly SeasonPoint[], having: readonly BatchReport[]): SignalReport {
  const from = rule === "run-of-eight" ? index + 1 - RUN : index;
  const run = having.slice(from, index + 1);
  const others = having.filter((batch) => !run.includes(batch));
  const [first, last] = [points[from], points[index]];
  const different = rule === "run-of-eight" ? sharedIn(run, others) : run.flatMap((batch) => aloneIn(batch, others));
  const what = rule === "run-of-eight"
    ? `eight in a row ${side} the centre line, ${first?.batch ?? ""} to ${last?.batch ?? ""}`
    : `${last?.batch ?? ""} ${side} the ${side === "above" ? "upper" : "lower"} limit`;
  return {
    batch: last?.batch ?? "", slug: last?.slug ?? "", rule, side,
    ...(rule === "run-of-eight" && first !== undefined ? { since: first.batch } : {}),
    different, says: `${capitalised(what)}. ${different.length === 0 ? "Nothing on record sets it apart." : `What was different: ${listed(different)}.`}`,
  };
}

function controlSays(control: Omit<ControlReport, "says">, unit: string, points: readonly SeasonPoint[]): string {
  const { standing, center, lower, upper, movingRanges, meanMovingRange, signals } = control;
  const n = points.length;
  const step = `from one batch to the next it moved by ${withUnit(rateText(meanMovingRange, meanMovingRange / 4), printedUnit(unit))} on average${steadiness(movingRanges)}`;
  if (standing === "none") return `${counted(n, "batch is", "batches are")} too few for limits (8 are needed); ${step}.`;
  const limits = `${standing === "provisional" ? `Provisional limits, since ${n} batches are fewer than 15: ` : "Limits "}${limitText(lower, unit)} to ${limitText(upper, unit)} around ${quantityText(center, unit)}`;
  const held = signals.length === 0 ? "no batch is beyond them and no eight in a row lie on one side" : `${counted(signals.length, "signal", "signals")}: ${listed(signals.map(shortSignal))}`;
  return `${limits}; ${held}. ${capitalised(step)}${jumps(control, points)}.`;
}

/** Told beside the average: neighbouring ranges share a batch, so a jump is no signal of its own. */
function jumps({ movingRanges, movingRangeUpper }: Omit<ControlReport, "says">, points: readonly SeasonPoint[]): string {
  const far = movingRanges.flatMap((range, index) => range > movingRangeUpper ? [points[index + 1]?.batch ?? ""] : []);
  return far.length === 0 ? "" : `; the step to ${listed(far)} is longer than steps here usually are`;
}

function limitText(value: number, unit: string): string {
  return quantityText(value, unit);
}

function shortSignal({ rule, batch, since, side }: SignalReport): string {
  return rule === "beyond-limit" ? `${batch} ${side} the limit` : `${since ?? ""} to ${batch} all ${side} the centre`;
}

/** Told, not tested: neighbouring ranges share a batch, so they are no independent proof of anything. */
function steadiness(ranges: readonly number[]): string {
  const half = Math.floor(ranges.length / 2);
  if (half < LEAST_STEPS) return "";
  const [early, late] = [mean(ranges.slice(0, half)), mean(ranges.slice(-half))];
  const text = (value: number): string => rateText(value, (early + late) / 8);
  return ` (${text(early)} in the first half of the season, ${text(late)} in the second)`;
}

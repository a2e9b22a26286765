import { formatNumber, type Quantity } from "../units/index.js";
import { figureEntry } from "./figure-table.js";
import { figureReport, isMissing, type Known } from "./known.js";
import type { Scene } from "./scene.js";
import type { PlannedReport, StyleRow, Verdict } from "./types.js";

type Planned = Readonly<Record<string, PlannedReport>>;

/**
 * Each of the style's targets with the batch's figure and how it stands; where
 * nothing is read yet, with what is planned.
 *
 * @param name another style than the record's own, where the batch is entered as one
 */
export function styleRows(scene: Scene, planned: Planned = {}, name = scene.batch.style): StyleRow[] {
  const style = name === undefined ? undefined : scene.log.styles.get(name);
  if (style === undefined) return [];
  const targets: readonly (readonly [string, string, { readonly low: Quantity | number; readonly high: Quantity | number } | undefined])[] = [
    ["original-gravity", "SG", style.originalGravity],
    ["final-gravity", "SG", style.finalGravity],
    ["abv", "%", style.abv],
    ["bitterness", "IBU", style.bitterness],
    ["color", "EBC", style.color],
  ];
  return targets.flatMap(([figure, unit, range]) => range === undefined ? [] : [rowOf(scene, planned[figure], { figure, unit, low: numberOf(range.low), high: numberOf(range.high) })]);
}

function numberOf(end: Quantity | number): number {
  return typeof end === "number" ? end : end.value;
}

type Target = Pick<StyleRow, "figure" | "unit" | "low" | "high">;

function rowOf(scene: Scene, planned: PlannedReport | undefined, target: Target): StyleRow {
  const { figure, low, high } = target;
  const result = scene.figure(figure);
  if (!isMissing(result)) {
    const plusMinus = wholeUncertainty(result);
    return { ...target, value: result.value, ...(plusMinus > 0 ? { plusMinus } : {}), basis: figureReport(result).basis, verdict: verdictOf(result.value, plusMinus, low, high), says: sayRow(result.value, plusMinus, target) };
  }
  if (planned === undefined) return { ...target, verdict: "unknown", says: result.missing };
  return { ...target, value: planned.value, planned: true, verdict: verdictOf(planned.value, 0, low, high), says: `Planned: ${sayRow(planned.value, 0, target)}` };
}

/** Readings' and relation's half-widths together: a figure held against a style carries both. */
function wholeUncertainty(known: Known): number {
  const { plusMinus = 0, model = 0 } = figureReport(known);
  return Math.hypot(plusMinus, model);
}

/** Inside or outside with the whole interval, or on the line. */
function verdictOf(value: number, plusMinus: number, low: number, high: number): Verdict {
  if (value - plusMinus >= low && value + plusMinus <= high) return "pass";
  return value + plusMinus < low || value - plusMinus > high ? "fail" : "watch";
}

function sayRow(value: number, plusMinus: number, { figure, low, high, unit }: Target): string {
  const text = (number: number, halfWidth?: number): string => {
    const formatted = formatNumber(number, unit, halfWidth);
    return `${formatted.value}${formatted.plusMinus === undefined ? "" : ` ± ${formatted.plusMinus}`} ${formatted.unit}`.trim();
  };
  const found = `${figureEntry(figure).title.toLowerCase()} ${text(value, plusMinus)}`;
  if (value < low) return `${found}, below ${text(low)}`;
  return value > high ? `${found}, above ${text(high)}` : `${found}, inside ${formatNumber(low, unit).value} to ${text(high)}`;
}

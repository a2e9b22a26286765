import { formatNumber, type Quantity } from "../units/index.js";
import { figureEntry } from "./figure-table.js";
import { figureReport, isMissing, type Known } from "./known.js";
import type { Scene } from "./scene.js";
import type { StyleRow, Verdict } from "./types.js";

/** Each of the style's targets with the batch's figure and how it stands. */
export function styleRows(scene: Scene): StyleRow[] {
  const style = scene.batch.style === undefined ? undefined : scene.log.styles.get(scene.batch.style);
  if (style === undefined) return [];
  const targets: readonly (readonly [string, string, { readonly low: Quantity | number; readonly high: Quantity | number } | undefined])[] = [
    ["original-gravity", "SG", style.originalGravity],
    ["final-gravity", "SG", style.finalGravity],
    ["abv", "%", style.abv],
    ["bitterness", "IBU", style.bitterness],
    ["color", "EBC", style.color],
  ];
  return targets.flatMap(([figure, unit, range]) => range === undefined ? [] : [rowOf(scene, figure, unit, numberOf(range.low), numberOf(range.high))]);
}

function numberOf(end: Quantity | number): number {
  return typeof end === "number" ? end : end.value;
}

function rowOf(scene: Scene, figure: string, unit: string, low: number, high: number): StyleRow {
  const result = scene.figure(figure);
  if (isMissing(result)) return { figure, low, high, unit, verdict: "unknown", says: result.missing };
  const plusMinus = wholeUncertainty(result);
  const verdict = verdictOf(result.value, plusMinus, low, high);
  return { figure, low, high, unit, value: result.value, ...(plusMinus > 0 ? { plusMinus } : {}), verdict, says: sayRow(figure, result.value, plusMinus, { low, high, unit }) };
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

function sayRow(figure: string, value: number, plusMinus: number, range: { readonly low: number; readonly high: number; readonly unit: string }): string {
  const { low, high, unit } = range;
  const text = (number: number, halfWidth?: number): string => {
    const formatted = formatNumber(number, unit, halfWidth);
    return `${formatted.value}${formatted.plusMinus === undefined ? "" : ` ± ${formatted.plusMinus}`} ${formatted.unit}`.trim();
  };
  const found = `${figureEntry(figure).title.toLowerCase()} ${text(value, plusMinus)}`;
  if (value < low) return `${found}, below ${text(low)}`;
  return value > high ? `${found}, above ${text(high)}` : `${found}, inside ${text(low)} to ${text(high)}`;
}

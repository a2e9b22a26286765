import { figureEntry } from "./figure-table.js";
import { quantityText } from "./season-quantities.js";
import type { BatchReport, ChangeRow, FigureReport } from "./types.js";

/** What was done, in the order it is done. */
export const PROCESS: readonly string[] = [
  "fermentation-temperature", "fermentation-peak", "fermentation-time", "terminal-hours",
  "dry-hop-mass", "dry-hop-dose", "dry-hop-oil", "dry-hop-contact", "dry-hop-temperature",
  "crash-temperature", "crash-hours", "crash-rate",
];

/** What came of it. */
export const RESULT: readonly string[] = [
  "original-gravity", "final-gravity", "abv", "apparent-attenuation", "bitterness", "color",
  "mash-efficiency", "brewhouse-efficiency", "boil-off", "dry-hop-gravity-drop",
  "transfer-efficiency", "loss-samples", "loss-dumps", "loss-left", "loss-unaccounted", "loss-total", "package-yield", "package-oxygen",
];

/** Figures that are held against another batch's, by part, in the order they are told. */
export const COMPARED_FIGURES = { process: PROCESS, result: RESULT } as const;

/** The figures of one part side by side; those that neither batch has are left out. */
export function figureRows(before: BatchReport, after: BatchReport, part: "process" | "result"): ChangeRow[] {
  return COMPARED_FIGURES[part].flatMap((id) => {
    const [one, other] = [before.figures[id], after.figures[id]];
    return one === undefined && other === undefined ? []
      : [{ part, what: figureEntry(id).title, before: figureText(one), after: figureText(other), change: changeOf(one, other) }];
  });
}

export function figureText(figure: FigureReport | undefined): string {
  return figure === undefined ? "not measured" : quantityText(figure.value, figure.unit, figure.plusMinus);
}

/**
 * What the relation itself is worth is left out: the same relation errs alike in both. A figure
 * without a half-width rests on readings without a limit (clock times, say) and counts as exact to
 * its printed digits.
 */
export function changeOf(before: FigureReport | undefined, after: FigureReport | undefined): ChangeRow["change"] {
  if (before === undefined || after === undefined) return "unknown";
  if (before.value === after.value) return "same";
  const combined = Math.hypot(before.plusMinus ?? 0, after.plusMinus ?? 0);
  if (combined > 0) return Math.abs(after.value - before.value) > combined ? "changed" : "within";
  return figureText(before) === figureText(after) ? "same" : "changed";
}

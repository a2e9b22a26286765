import { COMPARED_FIGURES, figureEntry, recipeColumn, type AttributeReport, type BatchReport, type FigureBasis, type TastingReport } from "../../report/index.js";
import type { UnitSystem } from "../../units/index.js";
import { compareData } from "../page-paths.js";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { wordsFor } from "../page/use-words.js";
import { reportKey } from "../report-key.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";
import { printedProbability, printedQuantity } from "../text/printed-quantity.js";

/**
 * One cell of a batch's column. Cells with a `key` are the same where the keys are; those with a
 * `value` differ where they lie further apart than both half-widths together; others are only shown.
 */
interface ComparedCell {
  readonly part: "recipe" | "process" | "result" | "tasters";
  readonly what: string;
  readonly text: string;
  readonly key?: string;
  readonly value?: number;
  readonly plusMinus?: number;
  /** How a figure came about. */
  readonly basis?: FigureBasis;
}

/** What the side-by-side page reads of each batch: a small classic script, loaded when the batch is asked for. */
export function compareDataFiles(site: Site): SiteFile[] {
  const { batches, club } = site.inputs.log;
  return batches.map((report) => textFile(site, compareData(report.slug), [reportKey(report), club.units], () => {
    const { slug, batch, title, style, brewer, status, brewed, swatch } = report;
    const data = {
      slug, batch, title, about: [style, `${status === "planned" ? "to be brewed" : "brewed"} ${printedDate(brewed.slice(0, 10))}`, brewer, status].filter((word) => word !== undefined).join(", "),
      color: swatch?.css, cells: [...recipeCells(report, club.units), ...figureCells(report, club.units), ...tasterCells(report)],
    };
    return `(window.gylebookCompared ??= {})[${JSON.stringify(slug)}] = ${JSON.stringify(data)};\n`;
  }));
}

function recipeCells(report: BatchReport, units: UnitSystem): ComparedCell[] {
  return recipeColumn(report).filter(({ key }) => key !== undefined)
    .map(({ what, text, key = "" }) => ({ part: "recipe", what, text: unbroken(wordsFor(units, text)), key }));
}

/** Keeps a number and its unit on one line. */
function unbroken(text: string): string {
  return text.replaceAll(/(?<=\d) (?=[\p{L}%°])/gu, "\u00A0");
}

function figureCells({ figures }: BatchReport, units: UnitSystem): ComparedCell[] {
  return (["process", "result"] as const).flatMap((part) => COMPARED_FIGURES[part].flatMap((id): ComparedCell[] => {
    const figure = figures[id];
    if (figure === undefined) return [];
    const { value, unit, plusMinus, basis } = figure;
    const known = plusMinus === undefined ? {} : { plusMinus };
    return [{ part, what: figureEntry(id).title, text: printedQuantity({ value, unit, ...known }, units).first, value, basis, ...known }];
  }));
}

/** Each tasting has its own panel, so that its numbers are set beside another's but never held against them. */
function tasterCells({ aim, tastings }: BatchReport): ComparedCell[] {
  return [
    ...(aim === undefined ? [] : [shown("The aim", aim.verdict)]),
    ...tastings.slice(0, 1).flatMap(tastingCells),
    ...(tastings.length < 2 ? [] : [shown("Further tastings", `${tastings.length - 1}, told on the batch’s page`)]),
  ];
}

function tastingCells(tasting: TastingReport): ComparedCell[] {
  const { name, triangle, preference, attributes } = tasting;
  return [
    shown("Tasting", `${name}${tasting.date === undefined ? "" : `, ${printedDate(tasting.date)}`}${tasting.tasters === undefined ? "" : `, ${tasting.tasters} tasters`}`),
    ...(triangle === undefined ? [] : [shown("Triangle", `${triangle.correct} of ${triangle.tasters} right, p ${printedProbability(triangle.p)}`)]),
    ...(preference === undefined ? [] : [shown("Preference", `after ${preference.after}, before ${preference.before}, neither ${preference.none}, p ${printedProbability(preference.p)}`)]),
    ...attributes.map((attribute) => shown(`${attribute.attribute}, after less before`, liftText(attribute))),
  ];
}

const signed = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(1)}`;

function liftText({ lift, low, high, tasters }: AttributeReport): string {
  return `${signed(lift)}${low === undefined || high === undefined ? "" : ` (${signed(low)} to ${signed(high)})`}, ${tasters} tasters`;
}

function shown(what: string, text: string): ComparedCell {
  return { part: "tasters", what, text };
}

import { figureEntry, type BatchReport, type FigureBasis, type RecipeLine } from "../../report/index.js";
import type { UnitSystem } from "../../units/index.js";
import { printedDate } from "../text/printed-date.js";
import { wordsFor } from "../page/use-words.js";
import { printedQuantity } from "../text/printed-quantity.js";
import { lowerFirst, sentence } from "../text/printed-words.js";

/** What people ask of a beer in a forum, in the order they ask. */
const FIGURES = ["original-gravity", "final-gravity", "abv", "apparent-attenuation", "bitterness", "color", "dry-hop-dose", "dry-hop-contact", "fermentation-temperature"] as const;

interface Line {
  readonly head: string;
  readonly text: string;
}

/** A batch in a few lines, made for pasting into a post. */
export interface ShareSummary {
  readonly plain: string;
  readonly markdown: string;
}

/** @param address of the batch's page, where the site has one */
export function shareSummary(report: BatchReport, units: UnitSystem, address: string | undefined): ShareSummary {
  const lines = linesOf(report, units);
  const title = `${report.batch}: ${report.title}`;
  const summary = wordsFor(units, report.summary);
  const parts = (mark: (line: Line) => string, head: string, say: (text: string) => string, end: string | undefined): string =>
    [head, ...(summary === "" ? [] : [say(summary)]), lines.map(mark).join("\n"), ...(end === undefined ? [] : [end])].filter((part) => part !== "").join("\n\n");
  return {
    plain: parts(({ head, text }) => `${head}: ${text}`, inLine(title), inLine, address),
    markdown: parts(({ head, text }) => `- **${head}:** ${asMarkdown(text)}`, `**${asMarkdown(title)}**`, asMarkdown, address === undefined ? undefined : `<${address}>`),
  };
}

function linesOf(report: BatchReport, units: UnitSystem): Line[] {
  const { style, brewer, brewed, status, recipe, tastings } = report;
  const about = [style, `${status === "planned" ? "to be brewed" : "brewed"} ${printedDate(brewed.slice(0, 10))}${brewer === undefined ? "" : ` by ${brewer}`}`, status];
  const lines: readonly (readonly [head: string, text: string])[] = [
    ["Beer", about.filter((word) => word !== undefined).join(", ")],
    ["Measured", figuresText(report, units, "measured")],
    ["Computed", figuresText(report, units, "computed")],
    ["Planned", figuresText(report, units, "planned")],
    ["Grist", listed(recipe.grist, units)],
    ["Hops", listed(recipe.kettleHops, units)],
    ["Yeast", listed(recipe.yeast === undefined ? [] : [recipe.yeast], units)],
    ["Dry hops", listed(recipe.dryHops, units)],
    ...tastings.map(({ name, says }) => [`Tasting (${inLine(name)})`, wordsFor(units, says.join(" "))] as const),
  ];
  return lines.filter(([, text]) => text !== "").map(([head, text]) => ({ head, text: sentence(inLine(text)) }));
}

/** Figures with what the readings leave open; what is only planned is told apart, and only where nothing was read. */
function figuresText({ figures, planned }: BatchReport, units: UnitSystem, asked: FigureBasis | "planned"): string {
  return FIGURES.flatMap((id) => {
    const figure = figures[id] ?? planned[id];
    const basis = figures[id]?.basis ?? "planned";
    return figure === undefined || basis !== asked ? [] : [`${lowerFirst(figureEntry(id).title)} ${printedQuantity(figure, units).first}`];
  }).join("; ");
}

function listed(lines: readonly RecipeLine[], units: UnitSystem): string {
  return lines.map(({ what, amount, detail }) => wordsFor(units, `${what} ${amount}${detail === "" ? "" : ` (${detail})`}`)).join("; ");
}

/** One line of text, whatever a record holds. */
function inLine(text: string): string {
  return text.replaceAll(/\s+/gu, " ").trim();
}

/** Text that Markdown shows as it is (CommonMark 0.31, 2.4: any ASCII punctuation may be escaped). */
function asMarkdown(text: string): string {
  return inLine(text).replaceAll(/[\\`*_[\]<>#|~!]/gu, "\\$&");
}

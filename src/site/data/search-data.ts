import { FIGURE_TABLE, type BatchReport, type FigureBasis, type RecipeReport } from "../../report/index.js";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { wordsFor } from "../page/use-words.js";
import { reportKey } from "../report-key.js";
import type { SiteFile } from "../site-file.js";
import { plainNotes } from "../text/plain-notes.js";
import { printedDate } from "../text/printed-date.js";
import { printedQuantity } from "../text/printed-quantity.js";
import { printedUnit, type UnitSystem } from "../../units/index.js";

/** A batch as the search page knows it: words to look through, and figures to hold against a range. */
interface SearchedBatch {
  readonly id: string;
  readonly batch: string;
  readonly title: string;
  readonly brewed: string;
  readonly status: string;
  readonly style?: string;
  readonly brewer?: string;
  readonly season?: string;
  readonly series?: string;
  readonly hops: string;
  readonly recipe: string;
  readonly summary: string;
  readonly tasters: string;
  readonly notes: string;
  /** Figure id → value from readings, the same as printed, and how it came about. */
  readonly figures: Readonly<Record<string, readonly [value: number, printed: string, basis: FigureBasis]>>;
}

/** Pages that search finds by their title and what they say of themselves; batches are searched whole. */
const SEARCHED_PAGES = /^(?:seasons|series|hops|competitions|methods|help)\//u;

/**
 * Everything the search page looks through, as a classic script: a page opened from disk may load
 * a script where it may not fetch a file. Made from published reports and the site's own pages only.
 */
export function searchDataFiles(site: Site, pages: readonly SiteFile[]): SiteFile[] {
  const { batches, club } = site.inputs.log;
  const listed = pages.flatMap(({ path, listed: page }) => (page === undefined || !SEARCHED_PAGES.test(path) ? [] : [{ path, ...page }]));
  return [textFile(site, "search-data.js", [batches.map(reportKey), club.units, listed], () => {
    const data = { batches: batches.map((report) => searchedBatch(report, club.units)), pages: listed, figures: searchedFigures(batches) };
    return `window.gylebookSearch = ${JSON.stringify(data)};\n`;
  })];
}

function searchedBatch(report: BatchReport, units: UnitSystem): SearchedBatch {
  const { slug, batch, title, brewed, status, style, brewer, season, series, recipe, summary, tastings, aim, notes } = report;
  const known = { style, brewer, season, series };
  return {
    id: slug, batch, title, brewed: printedDate(brewed.slice(0, 10)), status,
    ...(Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined)) as Partial<SearchedBatch>),
    hops: namesOf([...recipe.kettleHops, ...recipe.dryHops]),
    recipe: recipeWords(recipe),
    summary: wordsFor(units, summary),
    tasters: wordsFor(units, [aim?.words, ...tastings.flatMap(({ name, says }) => [name, ...says])].filter((words) => words !== undefined).join(" ")),
    notes: plainNotes(notes),
    figures: Object.fromEntries(Object.entries(report.figures).map(([id, { value, unit, plusMinus, basis }]) =>
      [id, [value, printedQuantity({ value, unit, ...(plusMinus === undefined ? {} : { plusMinus }) }, units).first, basis]])),
  };
}

function recipeWords({ grist, yeast, water, additions }: RecipeReport): string {
  return namesOf([...grist, ...(yeast === undefined ? [] : [yeast]), ...water, ...additions]);
}

function namesOf(lines: readonly { readonly what: string }[]): string {
  return [...new Set(lines.map(({ what }) => what))].join(", ");
}

/** Figures that some batch has, with the unit of a range. */
export function searchedFigures(batches: readonly BatchReport[]): { id: string; title: string; unit: string }[] {
  return FIGURE_TABLE.filter(({ id }) => batches.some(({ figures }) => id in figures))
    .map(({ id, title, unit }) => ({ id, title, unit: unit === "count" ? "" : printedUnit(unit) }));
}

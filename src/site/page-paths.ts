import type { Chart } from "../charts/index.js";
import type { BatchReport, CompetitionEntry } from "../report/index.js";

/** Paths of pages in the site, without extension. */
export const batchPage = (slug: string): string => `batches/${slug}`;
export const seasonPage = (slug: string): string => `seasons/${slug}`;
export const seriesPage = (slug: string): string => `series/${slug}`;
export const competitionPage = (slug: string): string => `competitions/${slug}`;

/** Where competitions are listed, and where a brewer finds which batch to enter. */
export const COMPETITION_LIST = "competitions/index.html";

/** An entry's own page of scores and comments, where they are public. */
export function feedbackPath(competition: string, { slug, sheets }: CompetitionEntry): string | undefined {
  return sheets === undefined ? undefined : `competitions/${competition}/${slug}.html`;
}

/** The entry notes of a batch that enters a competition. */
export function entryNotesPath({ slug, entryNotes }: BatchReport): string | undefined {
  return entryNotes === undefined ? undefined : `${batchPage(slug)}-entry.html`;
}

/** Social cards: of a batch, and of every page without one of its own. */
export const batchCard = (slug: string): string => `cards/${slug}.png`;
export const BOOK_CARD = "cards/index.png";

/** What the side-by-side page reads of a batch. */
export const compareData = (slug: string): string => `${batchPage(slug)}-compare.js`;

/** Where the numbers of a chart lie as CSV. */
export function chartCsvPath(page: string, chart: Chart): string {
  return `${page}-${chart.id}.csv`;
}

/** Where the brew-day sheet of a batch lies; undefined once the wort is in the fermenter. */
export function brewDayPath({ slug, status, figures }: BatchReport): string | undefined {
  const ahead = status === "planned" || (status === "brewing" && figures["original-gravity"] === undefined);
  return ahead ? `${batchPage(slug)}-brew-day.html` : undefined;
}

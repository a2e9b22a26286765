import type { Chart } from "../charts/index.js";
import type { BatchReport } from "../report/index.js";

/** Paths of pages in the site, without extension. */
export const batchPage = (slug: string): string => `batches/${slug}`;
export const seasonPage = (slug: string): string => `seasons/${slug}`;

/** Where the numbers of a chart lie as CSV. */
export function chartCsvPath(page: string, chart: Chart): string {
  return `${page}-${chart.id}.csv`;
}

/** Where the brew-day sheet of a batch lies; undefined once the wort is in the fermenter. */
export function brewDayPath({ slug, status, figures }: BatchReport): string | undefined {
  const ahead = status === "planned" || (status === "brewing" && figures["original-gravity"] === undefined);
  return ahead ? `${batchPage(slug)}-brew-day.html` : undefined;
}

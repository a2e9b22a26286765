import type { Chart } from "../charts/index.js";

/** Paths of pages in the site, without extension. */
export const batchPage = (slug: string): string => `batches/${slug}`;
export const seasonPage = (slug: string): string => `seasons/${slug}`;

/** Where the numbers of a chart lie as CSV. */
export function chartCsvPath(page: string, chart: Chart): string {
  return `${page}-${chart.id}.csv`;
}

import { renderCharts } from "../charts/index.js";
import type { PageCharts } from "../site/index.js";

/** A drawn chart's markup, by the page it stands on and its id. */
export type ChartMarkup = (page: string, chartId: string) => string | undefined;

/**
 * What was drawn before in this process, by the list of charts: pages whose report didn't change
 * bring the same list again.
 */
const drawn = new WeakMap<PageCharts["charts"], { readonly prefix: string; readonly markup: ReadonlyMap<string, string> }>();

/**
 * Draws the charts of all pages, or takes them from what was drawn before: in this process, or kept in `cacheFolder`.
 *
 * @param say is told how far it has come, once a page that had to be drawn
 */
export async function drawCharts(pages: readonly PageCharts[], cacheFolder: string, say: (what: string) => void): Promise<ChartMarkup> {
  const byPage = new Map<string, ReadonlyMap<string, string>>();
  for (const [index, page] of pages.entries()) {
    byPage.set(page.page, drawnBefore(page) ?? await drawPage(page, cacheFolder));
    say(`Drawing charts: page ${index + 1} of ${pages.length}`);
  }
  return (page, chartId) => byPage.get(page)?.get(chartId);
}

function drawnBefore({ charts, prefix }: PageCharts): ReadonlyMap<string, string> | undefined {
  const before = drawn.get(charts);
  return before?.prefix === prefix ? before.markup : undefined;
}

async function drawPage({ charts, prefix }: PageCharts, cacheDir: string): Promise<ReadonlyMap<string, string>> {
  const markup = await renderCharts(charts, { prefix, cacheDir });
  drawn.set(charts, { prefix, markup });
  return markup;
}

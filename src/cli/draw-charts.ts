import type { PageCharts } from "../site/index.js";
import { startChartThreads } from "./chart-threads.js";
import { drawHere } from "./draw-page.js";

type Markup = ReadonlyMap<string, string>;

/** The charts of a site while they are being drawn. */
export interface ChartDrawing {
  /** Resolves when the charts of a page ("batches/tp-03") are drawn; a page without charts is ready at once. */
  readonly ready: (page: string) => Promise<void>;
  /** A drawn chart's markup; undefined where the page has no such chart. Throws RangeError before the page is ready. */
  readonly markup: (page: string, chartId: string) => string | undefined;
  /** Time spent drawing, all threads together, in milliseconds. */
  readonly spentMs: () => number;
}

/** With fewer pages to draw, starting threads takes longer than they save. */
const FEWEST_FOR_THREADS = 12;

/**
 * What was drawn before in this process, by the list of charts: a page whose report didn't change
 * brings the same list again.
 */
const drawnBefore = new WeakMap<PageCharts["charts"], Markup>();

/**
 * Draws the charts of all pages, or takes them from what was drawn before: in this process, or kept in `cacheFolder`.
 * Many pages are begun at once in threads of their own; few are drawn when they are asked for.
 *
 * @param cacheFolder none where undefined
 */
export function startDrawing(pages: readonly PageCharts[], cacheFolder: string | undefined): ChartDrawing {
  const drawn = new Map<string, Markup>();
  const waiting = new Map<string, () => Promise<void>>();
  let spentMs = 0;
  const fresh = pages.filter(({ page, charts }) => {
    const before = drawnBefore.get(charts);
    if (before !== undefined) drawn.set(page, before);
    return before === undefined;
  });
  const threads = fresh.length < FEWEST_FOR_THREADS ? undefined : startChartThreads(fresh.length);
  for (const page of fresh) {
    const work = async (): Promise<void> => {
      const { markup, ms } = await (threads ?? drawHere)(page, cacheFolder);
      spentMs += ms;
      drawnBefore.set(page.charts, markup);
      drawn.set(page.page, markup);
    };
    waiting.set(page.page, threads === undefined ? once(work) : begun(work()));
  }
  return {
    ready: async (page) => waiting.get(page)?.(),
    markup: (page, chartId) => {
      if (waiting.has(page) && !drawn.has(page)) throw new RangeError(`the charts of ${page} aren't drawn yet`);
      return drawn.get(page)?.get(chartId);
    },
    spentMs: () => spentMs,
  };
}

function once<Result>(work: () => Promise<Result>): () => Promise<Result> {
  let running: Promise<Result> | undefined;
  return () => running ??= work();
}

function begun<Result>(running: Promise<Result>): () => Promise<Result> {
  // Whoever asks hears of a failure; until then it mustn't end the process.
  running.catch(() => undefined);
  return () => running;
}

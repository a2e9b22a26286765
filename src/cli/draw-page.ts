import { renderCharts } from "../charts/index.js";
import type { PageCharts } from "../site/index.js";

export interface DrawnPage {
  /** Markup by chart id. */
  readonly markup: ReadonlyMap<string, string>;
  /** What it took, in milliseconds. */
  readonly ms: number;
}

/** Draws the charts of one page. `cacheFolder` is where drawings are kept; undefined: nowhere. */
export type DrawPage = (page: PageCharts, cacheFolder: string | undefined) => Promise<DrawnPage>;

/** Draws in the thread that asks. */
export const drawHere: DrawPage = async ({ charts, prefix }, cacheFolder) => {
  const began = performance.now();
  const markup = await renderCharts(charts, { prefix, ...(cacheFolder === undefined ? {} : { cacheDir: cacheFolder }) });
  return { markup, ms: performance.now() - began };
};

import type { Chart, Drawing } from "../chart.js";
import { cacheKey, loadDrawing, writeDrawing } from "./chart-cache.js";
import { printSvg } from "./svg-print.js";
import { drawSpec } from "./vega-runtime.js";

export interface RenderOptions {
  /** Kebab-case, unique on a page: begins every id of the drawings. */
  readonly prefix: string;
  /** Where drawings are kept from one build to the next; none where not given. */
  readonly cacheDir?: string;
  /** Draw everything anew, whatever the cache holds. */
  readonly cold?: boolean;
}

/**
 * Draws one chart as two inline SVG elements, a wide one and a narrow one; the page's style shows one of them.
 *
 * @throws Error when a spec doesn't compile: a bug in a chart, not in a record
 */
export async function renderChart(chart: Chart, options: RenderOptions): Promise<string> {
  const { cacheDir, cold = false } = options;
  // The copy has its drawings drawn up once.
  const plain = { ...chart };
  const key = cacheDir === undefined ? "" : cacheKey(plain, options.prefix);
  const kept = cacheDir === undefined || cold ? undefined : await loadDrawing(cacheDir, key);
  if (kept !== undefined) return kept;
  const markup = await renderDrawing(plain, plain.wide, "wide", options.prefix) + await renderDrawing(plain, plain.narrow, "narrow", options.prefix);
  if (cacheDir !== undefined) await writeDrawing(cacheDir, key, markup);
  return markup;
}

/**
 * Draws the charts of a page.
 *
 * @returns markup by chart id
 * @throws RangeError when two charts have one id
 */
export async function renderCharts(charts: Iterable<Chart | undefined>, options: RenderOptions): Promise<Map<string, string>> {
  const drawn = new Map<string, string>();
  for (const chart of charts) {
    if (chart === undefined) continue;
    if (drawn.has(chart.id)) throw new RangeError(`two charts of a page have the id "${chart.id}"`);
    drawn.set(chart.id, await renderChart(chart, options));
  }
  return drawn;
}

async function renderDrawing(chart: Chart, drawing: Drawing, name: "wide" | "narrow", prefix: string): Promise<string> {
  const naming = { idPrefix: `${prefix}-${chart.id}-${name}`, className: `chart-${name}`, title: chart.title, description: chart.description };
  return printSvg(await drawSpec(drawing.spec), drawing, naming);
}

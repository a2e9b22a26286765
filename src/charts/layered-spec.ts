import type { TopLevelSpec } from "vega-lite";
import { plotWidthPx, type Frame } from "./frame.js";
import { CHART_CONFIG } from "./theme.js";

type LayeredSpec = Extract<TopLevelSpec, { layer: unknown[] }>;

/** One layer of a drawing; it draws one of the spec's named data sets. */
export type Layer = LayeredSpec["layer"][number];

/** A row of a data set. */
export type Row = Readonly<Record<string, string | number | boolean | null>>;

/** A layer's data: rows as they are, numbers already numbers. */
export function dataset(name: string): { readonly name: string; readonly format: { readonly parse: null } } {
  return { name, format: { parse: null } };
}

/** What changes from one chart of a kind to the next, apart from the height. */
export interface SpecContent {
  readonly datasets: Readonly<Record<string, readonly Row[]>>;
  /** Numbers and lists that scales and axes refer to by name. */
  readonly params: Readonly<Record<string, number | string | readonly number[] | readonly string[]>>;
}

/**
 * A spec of layers over one plot of a fixed size. All that differs between two charts of a kind sits in
 * data sets, params and height, so that the renderer compiles the rest once. Layers place their own y
 * scales within the plot, which is how panels are stacked over one shared axis.
 */
export function layeredSpec(frame: Frame, plotHeightPx: number, content: SpecContent, layer: readonly Layer[]): LayeredSpec {
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    width: plotWidthPx(frame),
    height: plotHeightPx,
    autosize: "none",
    padding: { left: frame.left, right: frame.right, top: frame.top, bottom: frame.bottom },
    params: Object.entries(content.params).map(([name, value]) => ({ name, value })),
    datasets: content.datasets,
    resolve: { scale: { y: "independent" }, axis: { y: "independent" } },
    config: CHART_CONFIG,
    layer: [...layer],
  };
}

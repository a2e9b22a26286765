import { labelLayer, strokeLayer } from "./label-layers.js";
import { dataset, type Layer } from "./layered-spec.js";
import { COLOURS } from "./theme.js";
import type { Scale } from "./ticks.js";

export interface RelationScales {
  readonly x: Scale;
  readonly y: Scale;
  /** Foot of the plot, px. */
  readonly bottom: number;
}

/** Room above the plot for the name of the upright axis. */
export const RELATION_TITLE_PX = 26;

/** Band, line, points, names, from the paper up. */
export function relationLayers(scales: RelationScales, xTitle: string): readonly Layer[] {
  const x = { field: "x", type: "quantitative" as const };
  const y = (field: string) => ({ ...yChannel(field, scales), axis: null });
  return [
    {
      data: dataset("points"),
      mark: { type: "point", shape: "circle", size: 44, filled: true, fill: COLOURS.second, opacity: 1, strokeWidth: 0 },
      encoding: {
        x: {
          ...x, scale: { domain: [{ expr: "xLow" }, { expr: "xHigh" }], nice: false, zero: false },
          axis: { title: xTitle, titleAnchor: "start", titlePadding: 6, values: { expr: "xTicks" }, format: `.${scales.x.decimals}f`, grid: false },
        },
        y: yChannel("y", scales),
      },
    },
    {
      data: dataset("line"),
      mark: { type: "area", fill: COLOURS.muted, fillOpacity: 0.16, line: false },
      encoding: { x, y: y("low"), y2: { field: "high" } },
    },
    { data: dataset("line"), mark: { type: "line", stroke: COLOURS.ink, strokeWidth: 1.2 }, encoding: { x, y: y("y") } },
    strokeLayer("leaders", { width: 0.6 }),
    labelLayer("labels"),
  ];
}

function yChannel(field: string, { y, bottom }: RelationScales) {
  return {
    field, type: "quantitative" as const,
    scale: { domain: [{ expr: "yLow" }, { expr: "yHigh" }], range: [bottom, RELATION_TITLE_PX], nice: false as const, zero: false },
    axis: { title: null, values: { expr: "yTicks" }, format: `.${y.decimals}f`, grid: true, domain: false, ticks: false, orient: "left" as const },
  };
}

import { labelLayer, PIXEL_X, PIXEL_Y, strokeLayer } from "./label-layers.js";
import { dataset, type Layer } from "./layered-spec.js";
import type { PlacedPanel } from "./fermentation-layout.js";
import { COLOURS } from "./theme.js";

const INKS = { temperature: COLOURS.first, gravity: COLOURS.second } as const;

/** The layers of the drawing, from the paper up. */
export function fermentationLayers(panels: readonly PlacedPanel[], axisTitle: string): readonly Layer[] {
  return [
    shadeLayer(),
    ...panels.map((panel) => lineLayer(panel, axisTitle)),
    strokeLayer("hatches", { stroke: COLOURS.muted, width: 0.35 }),
    strokeLayer("brackets"),
    strokeLayer("rules", { width: 0.6 }),
    strokeLayer("plannedRules", { width: 0.6, dash: [2, 3] }),
    strokeLayer("setPoint", { stroke: COLOURS.first, width: 1, dash: [5, 3] }),
    ...panels.map((panel) => byHandLayer(panel)),
    keyLayer(),
    labelLayer("labels"),
  ];
}

function shadeLayer(): Layer {
  return {
    data: dataset("shades"),
    mark: { type: "rect", fill: COLOURS.shade, fillOpacity: { expr: "datum.opacity" } },
    encoding: { x: PIXEL_X, x2: { field: "x2" }, y: PIXEL_Y, y2: { field: "y2" } },
  };
}

function lineLayer(panel: PlacedPanel, axisTitle: string): Layer {
  return {
    data: dataset(`${panel.name}Line`),
    mark: { type: "line", stroke: INKS[panel.name], strokeWidth: 1.5, strokeJoin: "round", strokeCap: "round", order: null },
    encoding: {
      x: {
        field: "x", type: "quantitative", scale: { domain: [{ expr: "dayLow" }, { expr: "dayHigh" }], nice: false, zero: false },
        axis: { title: axisTitle, titleAnchor: "start", titlePadding: 8, values: { expr: "dayTicks" }, format: ".2~f", grid: false },
      },
      y: yOf(panel),
    },
  };
}

const BY_HAND = { type: "point", shape: "circle", size: 42, filled: false, stroke: COLOURS.ink, strokeWidth: 1.2 } as const;

function keyLayer(): Layer {
  return {
    data: dataset("keys"),
    mark: BY_HAND,
    encoding: { x: PIXEL_X, y: PIXEL_Y },
  };
}

function byHandLayer(panel: PlacedPanel): Layer {
  return {
    data: dataset(`${panel.name}ByHand`),
    mark: BY_HAND,
    encoding: { x: { field: "x", type: "quantitative" }, y: { ...yOf(panel), axis: null } },
  };
}

/** The panel's own scale, placed within the plot by params; the title stands above the panel, as a label. */
function yOf({ name, title, scale }: PlacedPanel) {
  return {
    field: "y", type: "quantitative" as const,
    scale: {
      domain: [{ expr: `${name}Low` }, { expr: `${name}High` }], range: [{ expr: `${name}Bottom` }, { expr: `${name}Top` }], nice: false, zero: false,
    },
    axis: { title: null, values: { expr: `${name}Ticks` }, format: `.${scale.decimals}f`, orient: "left" as const, grid: true, domain: false, ticks: false, description: title },
  };
}

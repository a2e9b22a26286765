import { labelLayer, PIXEL_X, strokeLayer } from "./label-layers.js";
import { dataset, type Layer } from "./layered-spec.js";
import { COLOURS } from "./theme.js";

/** One of the two panels: where it stands, px, and the params its axis takes. */
export interface ControlPanel {
  readonly name: "value" | "range";
  readonly top: number;
  readonly bottom: number;
  readonly decimals: number;
}

/** Limits, whiskers, the line from batch to batch, points, rings around signals, names. */
export function controlLayers(value: ControlPanel, range: ControlPanel): readonly Layer[] {
  return [
    strokeLayer("centers", { stroke: COLOURS.muted, width: 0.9 }),
    strokeLayer("limits", { stroke: COLOURS.first, width: 1.1, dash: [5, 4] }),
    {
      data: dataset("whiskers"), mark: { type: "rule", stroke: COLOURS.muted, strokeWidth: 0.9 },
      encoding: { x: PIXEL_X, y: { ...panelY("from", value), axis: null }, y2: { field: "to" } },
    },
    lineLayer("values", value), pointLayer("values", value),
    lineLayer("ranges", range), pointLayer("ranges", range),
    {
      data: dataset("signals"), mark: { type: "point", shape: "diamond", size: 190, filled: false, stroke: COLOURS.first, strokeWidth: 1.6 },
      encoding: { x: PIXEL_X, y: { ...panelY("y", value), axis: null } },
    },
    labelLayer("labels"),
  ];
}

function lineLayer(name: string, panel: ControlPanel): Layer {
  return { data: dataset(name), mark: { type: "line", stroke: COLOURS.second, strokeWidth: 1 }, encoding: { x: PIXEL_X, y: { ...panelY("y", panel), axis: null } } };
}

function pointLayer(name: string, panel: ControlPanel): Layer {
  return {
    data: dataset(name), mark: { type: "point", shape: "circle", size: panel.name === "value" ? 40 : 22, filled: true, fill: COLOURS.second, opacity: 1, strokeWidth: 0 },
    encoding: { x: PIXEL_X, y: panelY("y", panel) },
  };
}

function panelY(field: string, { name, top, bottom, decimals }: ControlPanel) {
  return {
    field, type: "quantitative" as const,
    scale: { domain: [{ expr: `${name}Low` }, { expr: `${name}High` }], range: [bottom, top], nice: false as const, zero: false },
    axis: { title: null, values: { expr: `${name}Ticks` }, format: `.${decimals}f`, grid: true, domain: false, ticks: false, orient: "left" as const },
  };
}

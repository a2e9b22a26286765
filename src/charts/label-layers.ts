import { dataset, type Layer, type Row } from "./layered-spec.js";
import { COLOURS } from "./theme.js";

/** A label at a place in the plot: px from its top left, y at the foot of the letters. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly align?: "left" | "right" | "center";
  readonly muted?: boolean;
}

/** Positions that are already px: no scale, no axis. */
export const PIXEL_X = { field: "x", type: "quantitative", scale: null } as const;
export const PIXEL_Y = { field: "y", type: "quantitative", scale: null, axis: null } as const;

/** Labels as rows of a data set. */
export function labelRows(labels: readonly Label[]): readonly Row[] {
  return labels.map(({ x, y, text, align, muted }) => ({ x, y, text, align: align ?? "left", muted: muted === true }));
}

/** The layer that draws a data set of labels. */
export function labelLayer(name: string): Layer {
  return {
    data: dataset(name),
    mark: { type: "text", align: { expr: "datum.align" }, fill: { expr: `datum.muted ? ${JSON.stringify(COLOURS.muted)} : ${JSON.stringify(COLOURS.ink)}` } },
    encoding: {
      x: PIXEL_X,
      y: PIXEL_Y,
      text: { field: "text", type: "nominal" },
    },
  };
}

/** A straight line in the plot, px from its top left. */
export interface Stroke {
  readonly x: number;
  readonly x2: number;
  readonly y: number;
  readonly y2: number;
}

/** The layer that draws a data set of strokes as thin rules. */
export function strokeLayer(name: string, mark: { readonly stroke?: string; readonly width?: number; readonly dash?: readonly number[] } = {}): Layer {
  return {
    data: dataset(name),
    mark: {
      type: "rule", stroke: mark.stroke ?? COLOURS.muted, strokeWidth: mark.width ?? 0.8,
      ...(mark.dash === undefined ? {} : { strokeDash: [...mark.dash] }),
    },
    encoding: {
      x: PIXEL_X,
      x2: { field: "x2" },
      y: PIXEL_Y,
      y2: { field: "y2" },
    },
  };
}

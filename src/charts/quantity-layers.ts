import { PIXEL_X, PIXEL_Y } from "./label-layers.js";
import { dataset, type Layer } from "./layered-spec.js";
import type { quantityX } from "./quantity-axis.js";
import { COLOURS } from "./theme.js";

/*
 * Marks of a chart of rows: x is a quantity on the axis that another layer brings, y is px.
 */

interface RuleStyle {
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
}

const ruleMark = ({ stroke = COLOURS.ink, width = 1, dash }: RuleStyle) =>
  ({ type: "rule" as const, stroke, strokeWidth: width, ...(dash === undefined ? {} : { strokeDash: [...dash] }) });

/** Level lines: rows of `from`, `to`, `y`. One of them may bring the axis. */
export function spanLayer(name: string, style: RuleStyle & { readonly axis?: ReturnType<typeof quantityX> } = {}): Layer {
  return {
    data: dataset(name), mark: ruleMark(style),
    encoding: { x: style.axis ?? { field: "from", type: "quantitative" }, x2: { field: "to" }, y: PIXEL_Y },
  };
}

/** Upright lines: rows of `x`, `y`, `y2`. */
export function uprightLayer(name: string, style: RuleStyle = {}): Layer {
  return { data: dataset(name), mark: ruleMark(style), encoding: { x: { field: "x", type: "quantitative" }, y: PIXEL_Y, y2: { field: "y2" } } };
}

/** How circles look: full or hollow, px² in size; a key's stand at px instead of on the axis. */
export interface CircleStyle {
  readonly ink: string;
  readonly isHollow?: boolean;
  readonly size?: number;
  readonly isKey?: boolean;
}

/** Circles: rows of `x`, `y`. */
export function circleLayer(name: string, style: CircleStyle): Layer {
  const { ink, isHollow = false, size = 44 } = style;
  return {
    data: dataset(name),
    mark: { type: "point", shape: "circle", size, filled: !isHollow, ...(isHollow ? { stroke: ink, strokeWidth: 1.3 } : { fill: ink, opacity: 1, strokeWidth: 0 }) },
    encoding: { x: style.isKey === true ? PIXEL_X : { field: "x", type: "quantitative" }, y: PIXEL_Y },
  };
}

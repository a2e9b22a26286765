import type { Drawing } from "./chart.js";
import { plotWidthPx, WIDE_PX, type Frame } from "./frame.js";
import { labelLayer, labelRows, PIXEL_X } from "./label-layers.js";
import { dataset, layeredSpec } from "./layered-spec.js";
import { axisTitle, scaleParams } from "./quantity-axis.js";
import type { SeasonDrawing } from "./season-values.js";
import { textWidthPx } from "./text-width.js";
import { COLOURS } from "./theme.js";
import { computeScale, type Scale } from "./ticks.js";

const HEIGHT_PX = 190;
const TITLE_PX = 24;
const FRAME: Frame = { name: "wide", width: WIDE_PX, left: 46, right: 8, top: 4, bottom: 44 };
/** Between two batch numbers under the axis. */
const GAP_PX = 7;

/** Whether the batches' numbers fit side by side under the axis. */
export function fitsInColumns(drawing: SeasonDrawing): boolean {
  const widest = Math.max(...drawing.values.map((each) => textWidthPx(each.batch)));
  return (widest + GAP_PX) * drawing.values.length <= plotWidthPx(FRAME);
}

/** A column a batch, first brewed on the left. */
export function drawSeasonColumns(drawing: SeasonDrawing): Drawing {
  const { values, unit } = drawing;
  const scale = computeScale(values.flatMap((each) => [each.value - each.plusMinus, each.value + each.plusMinus]), 5, drawing);
  const step = plotWidthPx(FRAME) / values.length;
  const placed = values.map((each, index) => ({ ...each, x: (index + 0.5) * step }));
  const bottom = TITLE_PX + HEIGHT_PX;
  const spec = layeredSpec(FRAME, bottom, {
    params: scaleParams(scale),
    datasets: {
      whiskers: placed.map(({ x, value, plusMinus }) => ({ x, from: value - plusMinus, to: value + plusMinus })),
      points: placed.map(({ x, value }) => ({ x, y: value })),
      labels: labelRows([
        { x: -FRAME.left, y: TITLE_PX - 10, text: axisTitle(drawing.title, unit.label) },
        ...placed.map(({ x, batch }) => ({ x, y: bottom + 17, text: batch, align: "center" as const })),
        { x: 0, y: bottom + 38, text: "batches in the order they were brewed", muted: true },
      ]),
    },
  }, [
    {
      data: dataset("whiskers"),
      mark: { type: "rule", stroke: COLOURS.ink, strokeWidth: 1 },
      encoding: { x: PIXEL_X, y: quantityY("from", scale), y2: { field: "to" } },
    },
    {
      data: dataset("points"),
      mark: { type: "point", shape: "circle", size: 44, filled: true, fill: COLOURS.second, opacity: 1, strokeWidth: 0 },
      encoding: { x: PIXEL_X, y: { ...quantityY("y", scale), axis: null } },
    },
    labelLayer("labels"),
  ]);
  return { spec, width: FRAME.width, height: bottom + FRAME.top + FRAME.bottom };
}

function quantityY(field: string, scale: Scale) {
  return {
    field, type: "quantitative" as const,
    scale: { domain: [{ expr: "low" }, { expr: "high" }], range: [TITLE_PX + HEIGHT_PX, TITLE_PX], nice: false as const, zero: false },
    axis: { title: null, values: { expr: "ticks" }, format: `.${scale.decimals}f`, grid: true, domain: false, ticks: false, orient: "left" as const },
  };
}

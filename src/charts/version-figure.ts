import type { VersionFigure } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { NARROW_PX, plotWidthPx, type Frame } from "./frame.js";
import { labelLayer, labelRows, PIXEL_X, type Label } from "./label-layers.js";
import { dataset, layeredSpec } from "./layered-spec.js";
import { axisTitle } from "./quantity-axis.js";
import { textWidthPx } from "./text-width.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

const FRAME: Frame = { name: "narrow", width: NARROW_PX, left: 44, right: 12, top: 4, bottom: 24 };
const TITLE_PX = 24;
const BOTTOM_PX = TITLE_PX + 88;

/**
 * One figure over the versions of a beer: small, to stand beside others.
 *
 * @returns undefined where no version has it
 */
export function chartVersionFigure(figure: VersionFigure, options: ChartOptions = {}): Chart | undefined {
  if (figure.points.length === 0) return undefined;
  const unit = displayUnit(figure.unit, options.system);
  const drawing = drawVersions(figure, unit);
  return {
    id: options.id ?? `version-${figure.figure}`, kind: "version-figure", title: `${figure.title}, version after version`, description: figure.says,
    table: {
      columns: [{ title: "batch" }, unit.label === "" ? { title: figure.title } : { title: figure.title, unit: unit.label }],
      rows: figure.points.map(({ batch, value, plusMinus }) => [batch, unit.formatValue(value, plusMinus)]),
    },
    wide: drawing, narrow: drawing,
  };
}

function drawVersions({ title, points }: VersionFigure, unit: DisplayUnit): Drawing {
  const values = points.map(({ batch, value, plusMinus = 0 }) => ({ batch, value: unit.convert(value), half: unit.convertDifference(plusMinus) }));
  const scale = computeScale(values.flatMap(({ value, half }) => [value - half, value + half]), 3);
  const step = plotWidthPx(FRAME) / values.length;
  const placed = values.map((each, index) => ({ ...each, x: (index + 0.5) * step }));
  const every = Math.max(1, Math.ceil((Math.max(...values.map(({ batch }) => textWidthPx(batch))) + 6) / step));
  const names = placed.filter((_, index) => index % every === 0).map(({ x, batch }): Label => ({ x, y: BOTTOM_PX + 17, text: batch, align: "center" }));
  const y = (field: string) => ({
    field, type: "quantitative" as const,
    scale: { domain: [{ expr: "low" }, { expr: "high" }], range: [BOTTOM_PX, TITLE_PX], nice: false as const, zero: false },
    axis: { title: null, values: { expr: "ticks" }, format: `.${scale.decimals}f`, grid: true, domain: false, ticks: false, orient: "left" as const },
  });
  const spec = layeredSpec(FRAME, BOTTOM_PX, {
    params: { low: scale.low, high: scale.high, ticks: scale.ticks },
    datasets: {
      whiskers: placed.map(({ x, value, half }) => ({ x, from: value - half, to: value + half })),
      points: placed.map(({ x, value }) => ({ x, y: value })),
      labels: labelRows([{ x: -FRAME.left, y: TITLE_PX - 11, text: axisTitle(title, unit.label) }, ...names]),
    },
  }, [
    { data: dataset("whiskers"), mark: { type: "rule", stroke: COLOURS.ink, strokeWidth: 1 }, encoding: { x: PIXEL_X, y: y("from"), y2: { field: "to" } } },
    { data: dataset("points"), mark: { type: "line", stroke: COLOURS.muted, strokeWidth: 0.8 }, encoding: { x: PIXEL_X, y: { ...y("y"), axis: null } } },
    { data: dataset("points"), mark: { type: "point", shape: "circle", size: 36, filled: true, fill: COLOURS.second, opacity: 1, strokeWidth: 0 }, encoding: { x: PIXEL_X, y: { ...y("y"), axis: null } } },
    labelLayer("labels"),
  ]);
  return { spec, width: FRAME.width, height: BOTTOM_PX + FRAME.top + FRAME.bottom };
}

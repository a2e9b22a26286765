import type { PooledReport } from "../report/index.js";
import { formatNumber } from "../units/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { labelLayer, labelRows, PIXEL_Y } from "./label-layers.js";
import { dataset, layeredSpec, type Layer } from "./layered-spec.js";
import { quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer, uprightLayer } from "./quantity-layers.js";
import { placeRows } from "./row-layout.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

const HALF_PX = 6;

interface ForestRow {
  readonly name: string;
  readonly kind: "batch" | "pooled" | "next";
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

/**
 * How far one attribute moved in each batch, with its 95 % interval, and below them all batches together: a
 * lozenge as wide as the pooled interval, and where one more such batch would be expected.
 *
 * @returns undefined where nothing was tasted
 */
export function chartForest(pooled: PooledReport, options: ChartOptions = {}): Chart | undefined {
  if (pooled.tastings.length === 0) return undefined;
  const rows = forestRows(pooled);
  const slug = pooled.attribute.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  return {
    id: options.id ?? `pooled-${slug}`, kind: "forest", title: `Rise in ${pooled.attribute}, batch by batch and together`, description: pooled.says,
    table: {
      columns: [{ title: "batch" }, { title: "tasters" }, { title: "moved" }, { title: "from" }, { title: "to" }],
      rows: rows.map((row, index) => [row.name, row.kind === "batch" ? String(pooled.tastings[index]?.tasters ?? "") : "", ...[row.value, row.low, row.high].map((end) => end === undefined ? "" : scoreText(end))]),
    },
    wide: drawForest(rows, pooled.attribute, "wide"), narrow: drawForest(rows, pooled.attribute, "narrow"),
  };
}

function forestRows({ tastings, estimate, low, high, nextLow, nextHigh }: PooledReport): ForestRow[] {
  const defined = (ends: { readonly low: number | undefined; readonly high: number | undefined }) =>
    ends.low === undefined || ends.high === undefined ? {} : { low: ends.low, high: ends.high };
  return [
    ...tastings.map((tasting): ForestRow => ({ name: tasting.batch, kind: "batch", value: tasting.lift, ...defined({ low: tasting.low, high: tasting.high }) })),
    ...(estimate === undefined ? [] : [{ name: "all together", kind: "pooled" as const, value: estimate, ...defined({ low, high }) }]),
    ...(nextLow === undefined || nextHigh === undefined ? [] : [{ name: "one more batch", kind: "next" as const, ...defined({ low: nextLow, high: nextHigh }) }]),
  ];
}

function scoreText(value: number): string {
  return formatNumber(value, "P").value;
}

function rowText({ value, low, high }: ForestRow): string {
  const span = low === undefined || high === undefined ? "" : `${scoreText(low)} to ${scoreText(high)}`;
  if (value === undefined) return span;
  const moved = `${value > 0 && Number(value.toFixed(1)) !== 0 ? "+" : ""}${scoreText(value)}`;
  return span === "" ? moved : `${moved} (${span})`;
}

function drawForest(rows: readonly ForestRow[], attribute: string, name: "wide" | "narrow"): Drawing {
  const layout = placeRows(rows.map((row) => ({ name: row.name, value: rowText(row), muted: row.kind === "next" })), name);
  const scale = computeScale([0, ...rows.flatMap(({ value, low, high }) => [value, low, high].filter((end) => end !== undefined))], name === "wide" ? 7 : 5);
  const placed = rows.map((row, index) => ({ ...row, y: layout.middles[index] ?? 0 }));
  const spans = (kind: ForestRow["kind"]) => placed.flatMap(({ kind: own, low, high, y }) => own !== kind || low === undefined || high === undefined ? [] : [{ from: low, to: high, y }]);
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(scale),
    datasets: {
      none: [{ x: 0, y: 0, y2: layout.height }],
      spans: spans("batch"), next: spans("next"),
      points: placed.flatMap(({ kind, value, y }) => kind !== "batch" || value === undefined ? [] : [{ x: value, y }]),
      pooled: placed.flatMap(({ kind, value, low, high, y }) => kind !== "pooled" || value === undefined || low === undefined || high === undefined ? []
        : [{ x: low, top: y, foot: y }, { x: value, top: y - HALF_PX, foot: y + HALF_PX }, { x: high, top: y, foot: y }]),
      labels: labelRows(layout.labels),
    },
  }, forestLayers(attribute, scale.decimals, layout.isStacked));
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

function forestLayers(attribute: string, decimals: number, isStacked: boolean): readonly Layer[] {
  return [
    spanLayer("spans", { axis: quantityX("from", `Rise in ${attribute}, points on the score from 0 to 10`, { decimals, hasGrid: !isStacked }) }),
    uprightLayer("none", { stroke: COLOURS.muted, dash: [3, 3] }),
    spanLayer("next", { stroke: COLOURS.muted, width: 3 }),
    circleLayer("points", { ink: COLOURS.second }),
    {
      data: dataset("pooled"), mark: { type: "area", fill: COLOURS.first, line: false },
      encoding: { x: { field: "x", type: "quantitative" }, y: { ...PIXEL_Y, field: "top" }, y2: { field: "foot" } },
    },
    labelLayer("labels"),
  ];
}

import type { AttributeReport } from "../report/index.js";
import { formatNumber } from "../units/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { labelLayer, labelRows, type Label } from "./label-layers.js";
import { layeredSpec, type Layer } from "./layered-spec.js";
import { quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer } from "./quantity-layers.js";
import { placeRows, type RowLayout } from "./row-layout.js";
import { textWidthPx } from "./text-width.js";
import { COLOURS } from "./theme.js";

/** The scale that tasters score on, whole. */
const SCORES = { low: -0.3, high: 10.3, ticks: [0, 2, 4, 6, 8, 10], decimals: 0 } as const;
const KEY_PX = 24;

interface PairedOptions extends ChartOptions {
  /** What the two samples are called. */
  readonly before?: string;
  readonly after?: string;
}

/**
 * One attribute, a row a taster: a hollow circle before, a full one after, a line between them; below them the
 * means, with the 95 % interval of the mean difference drawn at the mean after.
 *
 * @returns undefined where nobody scored both samples
 */
export function chartPairedScores(attribute: AttributeReport, options: PairedOptions = {}): Chart | undefined {
  if (attribute.pairs.length === 0) return undefined;
  const named = { before: options.before ?? "before", after: options.after ?? "after" };
  const decimals = scoreDecimals(attribute);
  const slug = attribute.attribute.toLowerCase().replace(/[^a-z0-9]+/g, "-");
  return {
    id: options.id ?? `scores-${slug}`, kind: "paired-scores", title: `Scores for ${attribute.attribute}`, description: describeScores(attribute, named),
    table: {
      columns: [{ title: "taster" }, { title: named.before }, { title: named.after }, { title: "difference" }],
      rows: [
        ...attribute.pairs.map(([taster, before, after]) => [taster, before.toFixed(decimals), after.toFixed(decimals), signed(after - before, decimals)]),
        ["mean", formatNumber(attribute.meanBefore, "P").value, formatNumber(attribute.meanAfter, "P").value, liftText(attribute)],
      ],
    },
    get wide() { return drawScores(attribute, named, "wide"); },
    get narrow() { return drawScores(attribute, named, "narrow"); },
  };
}

/** Scores are written as they were given: whole, or with one place. */
function scoreDecimals({ pairs }: AttributeReport): number {
  return pairs.every(([, before, after]) => Number.isInteger(before) && Number.isInteger(after)) ? 0 : 1;
}

function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return Number(text) === 0 ? text : (value < 0 ? "−" : "+") + text;
}

/** "+1.6 (0.5 to 2.7)" */
function liftText({ lift, low, high }: AttributeReport): string {
  const end = (value: number): string => formatNumber(value, "P").value;
  return low === undefined || high === undefined ? signed(lift, 1) : `${signed(lift, 1)} (${end(low)} to ${end(high)})`;
}

function describeScores(attribute: AttributeReport, named: { readonly before: string; readonly after: string }): string {
  const higher = attribute.pairs.filter(([, before, after]) => after > before).length;
  const lower = attribute.pairs.filter(([, before, after]) => after < before).length;
  const interval = attribute.low === undefined ? "" : ", with the 95 % interval of the mean difference in brackets";
  return `${higher} of ${attribute.pairs.length} tasters scored ${attribute.attribute} higher in ${named.after} than in ${named.before}, ${lower} lower; `
    + `mean difference ${liftText(attribute)}${interval}.`;
}

function drawScores(attribute: AttributeReport, named: { readonly before: string; readonly after: string }, name: "wide" | "narrow"): Drawing {
  const pairs = [...attribute.pairs, ["mean", attribute.meanBefore, attribute.meanAfter] as const];
  const rows = pairs.map(([taster, before, after], index) => ({ name: taster, value: index < attribute.pairs.length ? signed(after - before, scoreDecimals(attribute)) : liftText(attribute) }));
  const layout = placeRows(rows, name, KEY_PX);
  const placed = pairs.map(([, before, after], index) => ({ before, after, y: layout.middles[index] ?? 0 }));
  const mean = placed[placed.length - 1];
  const interval = mean === undefined || attribute.low === undefined || attribute.high === undefined ? []
    : [{ from: attribute.meanBefore + attribute.low, to: attribute.meanBefore + attribute.high, y: mean.y }];
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(SCORES),
    datasets: {
      lines: placed.slice(0, -1).map(({ before, after, y }) => ({ from: before, to: after, y })),
      interval,
      before: placed.map(({ before, y }) => ({ x: before, y })),
      after: placed.map(({ after, y }) => ({ x: after, y })),
      keyBefore: [{ x: 5, y: 9 }], keyAfter: [{ x: keyAfterX(named.before), y: 9 }],
      labels: labelRows([...keyLabels(named), ...layout.labels]),
    },
  }, scoreLayers(attribute, layout.isStacked));
  return { spec, width: layout.frame.width, height: totalHeight(layout) };
}

function scoreLayers({ attribute }: AttributeReport, isStacked: boolean): readonly Layer[] {
  const title = `${attribute.charAt(0).toUpperCase()}${attribute.slice(1)}, score from 0 to 10`;
  const before = { ink: COLOURS.first, isHollow: true, size: 72 };
  const after = { ink: COLOURS.second, size: 40 };
  return [
    spanLayer("lines", { stroke: COLOURS.muted, axis: quantityX("from", title, { decimals: 0, hasGrid: !isStacked }) }),
    spanLayer("interval", { width: 2.4 }),
    circleLayer("before", before), circleLayer("after", after),
    circleLayer("keyBefore", { ...before, isKey: true }), circleLayer("keyAfter", { ...after, isKey: true }),
    labelLayer("labels"),
  ];
}

function keyAfterX(before: string): number {
  return 5 + 12 + textWidthPx(before) + 22;
}

function keyLabels(named: { readonly before: string; readonly after: string }): readonly Label[] {
  return [{ x: 5 + 10, y: 13, text: named.before, muted: true }, { x: keyAfterX(named.before) + 10, y: 13, text: named.after, muted: true }];
}

function totalHeight({ frame, height }: RowLayout): number {
  return height + frame.top + frame.bottom;
}

import type { ControlReport, SeasonSeries } from "../report/index.js";
import type { Chart, ChartOptions, ChartTable, Drawing } from "./chart.js";
import { controlLayers, type ControlPanel } from "./control-layers.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { NARROW_PX, plotWidthPx, WIDE_PX, type Frame } from "./frame.js";
import { labelRows, type Label, type Stroke } from "./label-layers.js";
import { layeredSpec } from "./layered-spec.js";
import { axisTitle } from "./quantity-axis.js";
import { textWidthPx } from "./text-width.js";
import { computeScale, type Scale } from "./ticks.js";

const WIDE: Frame = { name: "wide", width: WIDE_PX, left: 50, right: 54, top: 4, bottom: 42 };
const NARROW: Frame = { name: "narrow", width: NARROW_PX, left: 46, right: 50, top: 4, bottom: 42 };
const TITLE_PX = 24;
const HEIGHT_PX = { value: { wide: 170, narrow: 140 }, range: { wide: 64, narrow: 54 } } as const;
/** Between two batch numbers under the axis. */
const GAP_PX = 8;

/** The figure in the unit that is drawn. */
interface Drawn {
  readonly title: string;
  readonly unit: DisplayUnit;
  readonly batches: readonly string[];
  readonly values: readonly number[];
  readonly whiskers: readonly number[];
  readonly control: ControlReport;
}

/**
 * A season's figure as an individuals chart above its moving ranges: the centre line, limits where there are
 * enough batches for them, and a ring round each batch that signals.
 *
 * @returns undefined where the report holds no control chart
 */
export function chartControl(series: SeasonSeries, options: ChartOptions = {}): Chart | undefined {
  const { control, points } = series;
  if (control === undefined) return undefined;
  const unit = displayUnit(series.unit, options.system);
  const drawn: Drawn = {
    title: series.title, unit, control: inUnit(control, unit), batches: points.map(({ batch }) => batch),
    values: points.map(({ value }) => unit.convert(value)), whiskers: points.map(({ plusMinus }) => unit.convertDifference(plusMinus ?? 0)),
  };
  return {
    id: options.id ?? `control-${series.figure}`, kind: "control", title: `${series.title}, batch after batch`, description: series.says,
    table: controlTable(series, unit, control), wide: drawControl(drawn, WIDE), narrow: drawControl(drawn, NARROW),
  };
}

function inUnit(control: ControlReport, { convert, convertDifference }: DisplayUnit): ControlReport {
  return {
    ...control, center: convert(control.center), lower: convert(control.lower), upper: convert(control.upper),
    movingRanges: control.movingRanges.map(convertDifference), meanMovingRange: convertDifference(control.meanMovingRange), movingRangeUpper: convertDifference(control.movingRangeUpper),
  };
}

function controlTable(series: SeasonSeries, unit: DisplayUnit, control: ControlReport): ChartTable {
  const withUnit = (title: string) => unit.label === "" ? { title } : { title, unit: unit.label };
  const signalsOf = (batch: string): string => control.signals.filter((signal) => signal.batch === batch)
    .map(({ rule, side }) => rule === "beyond-limit" ? `${side} the limit` : `eighth in a row ${side} the centre`).join(", ");
  return {
    columns: [{ title: "batch" }, { title: "brewed" }, withUnit(series.title), { title: "signal, or why not measured" }],
    rows: [
      ...series.points.map(({ batch, brewed, value, plusMinus }) => [batch, brewed, unit.formatValue(value, plusMinus), signalsOf(batch)]),
      ...series.without.map(({ batch, why }) => [batch, "", "", why]),
    ],
  };
}

function drawControl(drawn: Drawn, frame: Frame): Drawing {
  const { control, values, whiskers } = drawn;
  const hasLimits = control.standing !== "none";
  const value = computeScale([...values.flatMap((each, index) => [each - (whiskers[index] ?? 0), each + (whiskers[index] ?? 0)]), ...(hasLimits ? [control.lower, control.upper] : [])], 5);
  const range = computeScale([0, ...control.movingRanges, ...(hasLimits ? [control.movingRangeUpper] : [])], 3, { fromZero: true });
  const valueBottom = TITLE_PX + HEIGHT_PX.value[frame.name];
  const rangeTop = valueBottom + TITLE_PX + 6;
  const panels: Panels = {
    value: { name: "value", top: TITLE_PX, bottom: valueBottom, decimals: value.decimals, scale: value },
    range: { name: "range", top: rangeTop, bottom: rangeTop + HEIGHT_PX.range[frame.name], decimals: range.decimals, scale: range },
  };
  const spec = layeredSpec(frame, panels.range.bottom, controlContent(drawn, panels, frame), controlLayers(panels.value, panels.range));
  return { spec, width: frame.width, height: panels.range.bottom + frame.top + frame.bottom };
}

type Panels = Readonly<Record<"value" | "range", ControlPanel & { readonly scale: Scale }>>;

function controlContent(drawn: Drawn, panels: Panels, frame: Frame) {
  const { control, values, whiskers, batches } = drawn;
  const step = plotWidthPx(frame) / values.length;
  const x = (index: number): number => (index + 0.5) * step;
  const lines = limitLines(control, panels, plotWidthPx(frame));
  return {
    params: {
      valueLow: panels.value.scale.low, valueHigh: panels.value.scale.high, valueTicks: panels.value.scale.ticks,
      rangeLow: panels.range.scale.low, rangeHigh: panels.range.scale.high, rangeTicks: panels.range.scale.ticks,
    },
    datasets: {
      values: values.map((y, index) => ({ x: x(index), y })),
      whiskers: values.map((y, index) => ({ x: x(index), from: y - (whiskers[index] ?? 0), to: y + (whiskers[index] ?? 0) })),
      ranges: control.movingRanges.map((y, index) => ({ x: x(index + 1), y })),
      signals: control.signals.flatMap(({ batch }) => batches.includes(batch) ? [{ x: x(batches.indexOf(batch)), y: values[batches.indexOf(batch)] ?? 0 }] : []),
      centers: lines.filter(({ dashed }) => !dashed).map(({ stroke }) => ({ ...stroke })),
      limits: lines.filter(({ dashed }) => dashed).map(({ stroke }) => ({ ...stroke })),
      labels: labelRows([...titles(drawn, panels, frame), ...lines.map(({ label }) => label), ...batchLabels(batches, new Set(control.signals.map(({ batch }) => batch)), { x, step, y: panels.range.bottom + 17, width: plotWidthPx(frame) + frame.right })]),
    },
  };
}

interface LimitLine {
  readonly dashed: boolean;
  readonly stroke: Stroke;
  readonly label: Label;
}

/** No limits, no line: so few batches have no centre to speak of either. */
function limitLines(control: ControlReport, { value, range }: Panels, width: number): LimitLine[] {
  if (control.standing === "none") return [];
  const line = (panel: Panels["value"], at: number, text: string, dashed: boolean): LimitLine => {
    const y = panel.bottom - (at - panel.scale.low) / (panel.scale.high - panel.scale.low) * (panel.bottom - panel.top);
    return { dashed, stroke: { x: 0, x2: width, y, y2: y }, label: { x: width + 6, y: y + 4, text, muted: true } };
  };
  const lines = [
    line(value, control.upper, "upper", true), line(value, control.center, "centre", false), line(value, control.lower, "lower", true),
    line(range, control.movingRangeUpper, "upper", true),
  ];
  return control.upper > control.lower ? lines : lines.slice(1, 2);
}

function titles({ title, unit }: Drawn, { value, range }: Panels, frame: Frame): Label[] {
  return [
    { x: -frame.left, y: value.top - 10, text: axisTitle(title, unit.label) },
    { x: -frame.left, y: range.top - 8, text: axisTitle("Moved since the batch before", unit.label) },
    { x: 0, y: range.bottom + 36, text: "batches in the order they were brewed", muted: true },
  ];
}

/** As many numbers as fit side by side, those that signal first of all. */
function batchLabels(batches: readonly string[], signalled: ReadonlySet<string>, place: { readonly x: (index: number) => number; readonly step: number; readonly y: number; readonly width: number }): Label[] {
  const taken: { readonly left: number; readonly right: number }[] = [];
  const every = Math.max(1, Math.ceil((Math.max(...batches.map((batch) => textWidthPx(batch))) + GAP_PX) / place.step));
  const order = [...batches.keys()].sort((one, other) => Number(signalled.has(batches[other] ?? "")) - Number(signalled.has(batches[one] ?? "")) || one - other)
    .filter((index) => signalled.has(batches[index] ?? "") || index % every === 0);
  return order.flatMap((index): Label[] => {
    const text = batches[index] ?? "";
    const half = textWidthPx(text) / 2;
    const middle = place.x(index);
    const box = { left: middle - half - GAP_PX / 2, right: middle + half + GAP_PX / 2 };
    if (taken.some((other) => box.left < other.right && other.left < box.right)) return [];
    taken.push(box);
    return [{ x: middle, y: place.y, text, align: "center" }];
  });
}

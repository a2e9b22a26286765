import type { RelationReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { NARROW_PX, plotWidthPx, WIDE_PX, type Frame } from "./frame.js";
import { labelRows, type Label } from "./label-layers.js";
import { layeredSpec, type SpecContent } from "./layered-spec.js";
import { placeNames } from "./point-labels.js";
import { axisTitle } from "./quantity-axis.js";
import { relationLayers, RELATION_TITLE_PX, type RelationScales } from "./relation-layers.js";
import { textWidthPx } from "./text-width.js";
import { computeScale } from "./ticks.js";

const WIDE: Frame = { name: "wide", width: WIDE_PX, left: 46, right: 10, top: 4, bottom: 44 };
const NARROW: Frame = { name: "narrow", width: NARROW_PX, left: 42, right: 8, top: 4, bottom: 44 };
const HEIGHT_PX = { wide: 290, narrow: 220 } as const;
/** How far beyond the points an interval may stretch the axis, as a share of their range. */
const BAND_STRETCH = 0.75;

/** A relation in the units that are drawn. */
interface Drawn {
  readonly points: readonly { readonly batch: string; readonly x: number; readonly y: number }[];
  readonly line: readonly { readonly x: number; readonly y: number; readonly low: number; readonly high: number }[];
  readonly xTitle: string;
  readonly yTitle: string;
}

/**
 * One figure against another: a named point a batch, and the fitted line with the 95 % interval of its mean
 * where the report draws one.
 *
 * @returns undefined where there are no points
 */
export function chartRelation(relation: RelationReport, options: ChartOptions = {}): Chart | undefined {
  if (relation.points.length === 0) return undefined;
  const xUnit = displayUnit(relation.xUnit, options.system);
  const yUnit = displayUnit(relation.yUnit, options.system);
  const drawn: Drawn = {
    points: relation.points.map(({ batch, x, y }) => ({ batch, x: xUnit.convert(x), y: yUnit.convert(y) })),
    line: (relation.line ?? []).map((each) => ({ x: xUnit.convert(each.x), y: yUnit.convert(each.y), low: yUnit.convert(each.low), high: yUnit.convert(each.high) })),
    xTitle: upperFirst(axisTitle(relation.xTitle, xUnit.label)), yTitle: upperFirst(axisTitle(relation.yTitle, yUnit.label)),
  };
  return {
    id: options.id ?? `relation-${relation.x}-${relation.y}`, kind: "relation", title: `${upperFirst(relation.yTitle)} against ${lowerFirst(relation.xTitle)}`,
    description: relation.says,
    table: {
      columns: [{ title: "batch" }, column(relation.xTitle, xUnit), column(relation.yTitle, yUnit)],
      rows: relation.points.map(({ batch, x, y }) => [batch, xUnit.formatValue(x), yUnit.formatValue(y)]),
    },
    get wide() { return drawRelation(drawn, WIDE); },
    get narrow() { return drawRelation(drawn, NARROW); },
  };
}

function column(title: string, unit: DisplayUnit): Chart["table"]["columns"][number] {
  return unit.label === "" ? { title } : { title, unit: unit.label };
}

/** "Dry-hop dose" → "dry-hop dose", but "IBU" stays. */
function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function drawRelation(drawn: Drawn, frame: Frame): Drawing {
  const steps = frame.name === "wide" ? 6 : 4;
  const bottom = RELATION_TITLE_PX + HEIGHT_PX[frame.name];
  const x = computeScale(drawn.points.map((point) => point.x), steps, { fromZero: true });
  const y = computeScale(yValues(drawn), steps);
  const scales: RelationScales = { x, y, bottom };
  const spec = layeredSpec(frame, bottom, relationContent(drawn, scales, frame), relationLayers(scales, drawn.xTitle));
  return { spec, width: frame.width, height: bottom + frame.top + frame.bottom };
}

function yValues({ points, line }: Drawn): readonly number[] {
  const values = points.map((point) => point.y);
  const least = Math.min(...values);
  const most = Math.max(...values);
  const room = (most - least) * BAND_STRETCH;
  return [...values, ...line.flatMap(({ low, high }) => [Math.max(low, least - room), Math.min(high, most + room)])];
}

/** Points of a straight line a few pixels apart, from its two ends. */
function alongLine(line: readonly { readonly x: number; readonly y: number }[]): readonly { readonly x: number; readonly y: number }[] {
  const [first, last] = [line[0], line[line.length - 1]];
  if (first === undefined || last === undefined) return [];
  const steps = Math.ceil(Math.abs(last.x - first.x) / 3);
  return Array.from({ length: steps + 1 }, (_, step) => {
    const part = steps === 0 ? 0 : step / steps;
    return { x: first.x + part * (last.x - first.x), y: first.y + part * (last.y - first.y) };
  });
}

function relationContent({ points, line, yTitle }: Drawn, { x, y, bottom }: RelationScales, frame: Frame): SpecContent {
  const width = plotWidthPx(frame);
  const toPixels = (point: { readonly x: number; readonly y: number }) => ({
    x: (point.x - x.low) / (x.high - x.low) * width, y: bottom - (point.y - y.low) / (y.high - y.low) * (bottom - RELATION_TITLE_PX),
  });
  const placed = points.map((point) => ({ ...toPixels(point), widthPx: textWidthPx(point.batch) }));
  const places = placeNames(placed, { width, height: bottom }, alongLine(line.map(toPixels)));
  const names = places.flatMap((place, index): readonly Label[] => place === undefined ? [] : [{ x: place.x, y: place.y, text: points[index]?.batch ?? "" }]);
  const within = (value: number): number => Math.min(y.high, Math.max(y.low, value));
  return {
    params: { xLow: x.low, xHigh: x.high, xTicks: x.ticks, yLow: y.low, yHigh: y.high, yTicks: y.ticks },
    datasets: {
      points: points.map((point) => ({ x: point.x, y: point.y })),
      line: line.map((each) => ({ x: each.x, y: within(each.y), low: within(each.low), high: within(each.high) })),
      leaders: places.flatMap((place) => place?.leader === undefined ? [] : [place.leader]),
      labels: labelRows([{ x: -frame.left, y: RELATION_TITLE_PX - 12, text: yTitle }, ...names]),
    },
  };
}

import { bendOf, type Bend } from "./season-bend.js";
import { DAYS_TO_TASTING, figureAxis, liftAxes, PREFERENCE, SETTINGS, type Axis } from "./season-axes.js";
import { movedTogether } from "./season-together.js";
import { trendOf, type Trend } from "./season-trend.js";
import type { BatchReport, TogetherReport } from "./types.js";

export interface RelationPoint {
  readonly batch: string;
  readonly slug: string;
  readonly x: number;
  readonly y: number;
  readonly xPlusMinus?: number;
}

/** One thing against another, before its trend is judged among those of the page. */
export interface SeasonRelation {
  readonly x: Axis;
  readonly y: Axis;
  readonly first: boolean;
  readonly points: readonly RelationPoint[];
  /** All x equal, or further apart by no more than the readings can tell. */
  readonly sameX: boolean;
  readonly trend: Trend | undefined;
  /** Only of the dose against what was tasted most: where more hops stop paying. */
  readonly bend: Bend | undefined;
  /** What moved together with x, worked out when it is told. */
  readonly together: () => readonly TogetherReport[];
}

/** What may follow from the settings. The hops can't have worked before the tasting was asked for. */
export function outcomeAxes(batches: readonly BatchReport[]): { readonly tasted: readonly Axis[]; readonly measured: readonly Axis[] } {
  return {
    tasted: [...liftAxes(batches), PREFERENCE],
    measured: [figureAxis("loss-total"), figureAxis("dry-hop-ph-rise"), figureAxis("dry-hop-gravity-drop")],
  };
}

/**
 * Every setting against every outcome. The first questions, of what hops cost and what tasters found of
 * them, are fixed beforehand by what was scored most, never by what looks best.
 *
 * @param batches in brew order
 */
export function seasonRelations(batches: readonly BatchReport[]): SeasonRelation[] {
  const { tasted, measured } = outcomeAxes(batches);
  const first = firstPairs(tasted, measured);
  const further = SETTINGS.flatMap((x) => [...measured, ...tasted].map((y) => [x, y] as const))
    // How long it waited for the tasting can't have changed what was measured before.
    .filter(([x, y]) => (x !== DAYS_TO_TASTING || tasted.includes(y)) && !first.some((pair) => pair[0].id === x.id && pair[1].id === y.id));
  const bending = tasted[0]?.id;
  return [
    ...first.map(([x, y]) => relationOf([x, y], { first: true, bends: x.id === "dry-hop-dose" && y.id === bending }, batches)),
    ...further.map((pair) => relationOf(pair, { first: false, bends: false }, batches)),
  ].filter(({ points }) => points.length > 0);
}

type Pair = readonly [x: Axis, y: Axis];

function firstPairs(tasted: readonly Axis[], measured: readonly Axis[]): Pair[] {
  const [dose, contact, temperature] = SETTINGS;
  const [most] = tasted;
  if (dose === undefined || contact === undefined || temperature === undefined || most === undefined) return [];
  const [loss, , drop] = measured;
  const asked = (x: Axis, y: Axis | undefined): Pair[] => y === undefined ? [] : [[x, y]];
  return [
    ...asked(dose, loss), ...asked(temperature, drop), ...asked(dose, drop),
    ...tasted.filter(({ id }) => id !== PREFERENCE.id).flatMap((lift) => asked(dose, lift)),
    ...(most.id === PREFERENCE.id ? [] : [...asked(contact, most), ...asked(temperature, most)]),
    ...asked(dose, PREFERENCE),
  ];
}

function relationOf([x, y]: Pair, asked: { readonly first: boolean; readonly bends: boolean }, batches: readonly BatchReport[]): SeasonRelation {
  const having = batches.filter((batch) => x.valueOf(batch) !== undefined && y.valueOf(batch) !== undefined);
  const points = having.flatMap((batch) => pointOf(batch, x, y));
  const sameX = alike(points);
  const [xs, ys] = [points.map((point) => point.x), points.map((point) => point.y)];
  const trend = sameX ? undefined : trendOf(xs, ys);
  return {
    x, y, first: asked.first, points, sameX, trend,
    bend: asked.bends && trend !== undefined ? bendOf(xs, ys) : undefined,
    together: () => trend === undefined ? [] : movedTogether(x.id, (batch) => x.valueOf(batch)?.value, having),
  };
}

function pointOf(batch: BatchReport, xAxis: Axis, yAxis: Axis): RelationPoint[] {
  const [x, y] = [xAxis.valueOf(batch), yAxis.valueOf(batch)];
  if (x === undefined || y === undefined) return [];
  return [{ batch: batch.batch, slug: batch.slug, x: x.value, y: y.value, ...(x.plusMinus === undefined ? {} : { xPlusMinus: x.plusMinus }) }];
}

/** Twelve digits: what is computed from equal readings may differ in the last one. */
const SAME_DIGITS = 12;

function alike(points: readonly RelationPoint[]): boolean {
  const sorted = [...points].sort((one, other) => one.x - other.x);
  const [lowest, highest] = [sorted[0], sorted.at(-1)];
  if (lowest === undefined || highest === undefined || points.length < 2) return false;
  if (lowest.x.toPrecision(SAME_DIGITS) === highest.x.toPrecision(SAME_DIGITS)) return true;
  return highest.x - lowest.x <= Math.hypot(lowest.xPlusMinus ?? 0, highest.xPlusMinus ?? 0);
}

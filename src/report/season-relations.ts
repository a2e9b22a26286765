import { slugOf } from "../records/index.js";
import { figureEntry } from "./figure-table.js";
import { liftsOf, ownTastings, scoredAttributes } from "./season-lifts.js";
import { movedTogether } from "./season-together.js";
import { trendOf, type Trend } from "./season-trend.js";
import { uncapitalised } from "./season-words.js";
import type { BatchReport, RelationReport } from "./types.js";

/** What one axis of a relation stands for. */
interface Axis {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** As it stands inside a sentence: "0.12 L more total loss". */
  readonly words: string;
  readonly valueOf: (batch: BatchReport) => { readonly value: number; readonly plusMinus?: number } | undefined;
}

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
  readonly points: readonly RelationPoint[];
  /** All x equal, or further apart by no more than the readings can tell. */
  readonly sameX: boolean;
  readonly trend: Trend | undefined;
  readonly together: NonNullable<RelationReport["together"]>;
}

/** Attributes worth a relation of their own; every one more costs the others power. */
const MOST_ATTRIBUTES = 4;

/**
 * The pairs asked about: what the hops cost in beer, what they did to gravity, and what the tasters
 * found of them. The list is fixed beforehand by what was scored most, never by what looks best.
 *
 * @param batches in brew order
 */
export function seasonRelations(batches: readonly BatchReport[]): SeasonRelation[] {
  const dose = figureAxis("dry-hop-dose");
  const temperature = figureAxis("dry-hop-temperature");
  const drop = figureAxis("dry-hop-gravity-drop");
  const lifts = liftAxes(batches);
  const [most] = lifts;
  const pairs: readonly (readonly [Axis, Axis])[] = [
    [dose, figureAxis("loss-total")],
    [temperature, drop],
    [dose, drop],
    ...lifts.map((lift) => [dose, lift] as const),
    ...(most === undefined ? [] : [[figureAxis("dry-hop-contact"), most] as const, [temperature, most] as const]),
    [dose, preferenceAxis()],
  ];
  return pairs.map(([x, y]) => relationOf(x, y, batches)).filter(({ points }) => points.length > 0);
}

function relationOf(x: Axis, y: Axis, batches: readonly BatchReport[]): SeasonRelation {
  const having = batches.filter((batch) => x.valueOf(batch) !== undefined && y.valueOf(batch) !== undefined);
  const points = having.flatMap((batch) => pointOf(batch, x, y));
  const sameX = alike(points);
  const trend = sameX ? undefined : trendOf(points.map((point) => point.x), points.map((point) => point.y));
  return { x, y, points, sameX, trend, together: trend === undefined ? [] : movedTogether(x.id, having) };
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

function figureAxis(id: string): Axis {
  const { title, unit } = figureEntry(id);
  return { id, title, unit, words: uncapitalised(title), valueOf: ({ figures }) => figures[id] };
}

function liftAxes(batches: readonly BatchReport[]): Axis[] {
  const attributes = scoredAttributes(batches).slice(0, MOST_ATTRIBUTES);
  return attributes.map((attribute, index) => ({
    id: liftId(attribute, attributes.slice(0, index)),
    title: `Rise in ${attribute}`,
    unit: "points",
    words: attribute,
    valueOf: (batch) => {
      const lift = liftsOf(attribute, [batch])[0]?.attribute.lift;
      return lift === undefined ? undefined : { value: lift };
    },
  }));
}

/** Two attributes may shorten to one address: the later gets its place as well. */
function liftId(attribute: string, earlier: readonly string[]): string {
  const slug = slugOf(attribute);
  const taken = slug === "" || earlier.some((other) => slugOf(other) === slug);
  return taken ? `lift-${[slug, earlier.length + 1].filter((part) => part !== "").join("-")}` : `lift-${slug}`;
}

/** Share of those who chose, of the first tasting of the batch that asked, %. */
function preferenceAxis(): Axis {
  return {
    id: "preference-share", title: "Share that preferred after", unit: "%", words: "preference for the later sample",
    valueOf: (batch) => {
      const share = ownTastings(batch).find(({ preference }) => preference?.share !== undefined)?.preference?.share;
      return share === undefined ? undefined : { value: 100 * share };
    },
  };
}

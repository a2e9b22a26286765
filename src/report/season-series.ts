import { median } from "../statistics/index.js";
import { formatNumber, printedUnit } from "../units/index.js";
import { claimOf, type TrendFamily } from "./season-claims.js";
import { controlReport } from "./season-control.js";
import { GRAVITY_OFF_PLAN, measureOf, type Measured } from "./season-measures.js";
import { brewedDay } from "./season-rows.js";
import { trendOf, type Trend } from "./season-trend.js";
import { quantityText, rateText, withUnit } from "./season-quantities.js";
import { counted } from "./season-words.js";
import { chanceText } from "./tasting-words.js";
import type { BatchReport, ControlReport, SeasonPoint, SeasonSeries } from "./types.js";

/**
 * Figures told batch by batch. What the brewers set (a dose, a temperature) is told; whether it
 * drifts is asked only of what came out, since every question asked costs the others some power.
 * `control`: whether the process holds is read from it.
 */
const FIGURES: readonly { readonly id: string; readonly asked: boolean; readonly always?: boolean; readonly control?: boolean }[] = [
  { id: "brewhouse-efficiency", asked: true, control: true },
  { id: GRAVITY_OFF_PLAN, asked: false, control: true },
  { id: "apparent-attenuation", asked: true, control: true },
  { id: "transfer-efficiency", asked: true, always: true, control: true },
  { id: "loss-total", asked: true, always: true, control: true },
  { id: "crash-hours", asked: false, control: true },
  { id: "dry-hop-dose", asked: false, always: true },
  { id: "dry-hop-temperature", asked: false, always: true },
  { id: "dry-hop-contact", asked: false },
  { id: "original-gravity", asked: false },
  { id: "abv", asked: false },
  { id: "package-yield", asked: false },
];

const DAYS_A_MONTH = 365.25 / 12;

/** One figure over the season, with its trend over time where that is asked. */
export interface SeasonFigure {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly asked: boolean;
  readonly points: readonly SeasonPoint[];
  readonly without: SeasonSeries["without"];
  readonly trend: Trend | undefined;
  readonly control: ControlReport | undefined;
}

/** @param batches in brew order */
export function seasonFigures(batches: readonly BatchReport[]): SeasonFigure[] {
  return FIGURES.map((figure) => figureOver(figure, batches))
    .filter(({ id, points }) => points.length > 0 || FIGURES.some((figure) => figure.id === id && figure.always === true));
}

function figureOver({ id, asked, control = false }: (typeof FIGURES)[number], batches: readonly BatchReport[]): SeasonFigure {
  const { title, unit, reportOf, whyNot } = measureOf(id);
  const having = batches.filter((batch) => reportOf(batch) !== undefined);
  const points = having.flatMap((batch) => pointOf(batch, reportOf(batch)));
  return {
    id, title, unit, asked, points,
    without: batches.filter((batch) => !having.includes(batch)).map((batch) => ({ batch: batch.batch, why: whyNot(batch) })),
    trend: asked ? trendOf(having.map((batch) => brewedDay(batch) / DAYS_A_MONTH), points.map(({ value }) => value)) : undefined,
    control: control ? controlReport(points, unit, batches) : undefined,
  };
}

function pointOf({ batch, slug, title, brewed }: BatchReport, figure: Measured | undefined): SeasonPoint[] {
  if (figure === undefined) return [];
  const { value, plusMinus } = figure;
  return [{ batch, slug, title, brewed, value, ...(plusMinus === undefined ? {} : { plusMinus }) }];
}

/** The figure as the page shows it, with a description that claims no more than the family of trends allows. */
export function seriesReport(figure: SeasonFigure, family: TrendFamily): SeasonSeries {
  const { id, title, unit, asked, points, without, trend, control } = figure;
  const claim = claimOf(points.length, trend, family);
  const says = [seriesSays(figure, unit, family), ...(control === undefined ? [] : [control.says])].join(" ");
  return { figure: id, title, unit, points, without, ...(asked ? { claim } : {}), ...(control === undefined ? {} : { control }), says };
}

function seriesSays({ asked, points, trend }: SeasonFigure, unit: string, family: TrendFamily): string {
  const [first] = points;
  if (first === undefined) return "No batch of the season has this figure yet.";
  if (points.length === 1) return `One batch, ${first.batch}: ${quantityText(first.value, unit, first.plusMinus)}. One batch shows no trend.`;
  const sorted = [...points].sort((one, other) => one.value - other.value);
  const [lowest, highest] = [sorted[0] ?? first, sorted.at(-1) ?? first];
  const span = lowest.value === highest.value
    ? `all at ${quantityText(first.value, unit, first.plusMinus)}`
    : `from ${quantityText(lowest.value, unit, lowest.plusMinus)} (${lowest.batch}) to ${quantityText(highest.value, unit, highest.plusMinus)} (${highest.batch}), middle value ${formatted(median(points.map(({ value }) => value)), unit, first.plusMinus)}`;
  return `${counted(points.length, "batch", "batches")}, ${span}. ${trendSays(asked, points.length, trend, unit, family)}`.trimEnd();
}

function trendSays(asked: boolean, n: number, trend: Trend | undefined, unit: string, family: TrendFamily): string {
  if (!asked) return "";
  const claim = claimOf(n, trend, family);
  if (claim === "too-few") return `${n} batches are too few to speak of a trend.`;
  if (trend === undefined || claim === "none") return "No trend over the season is shown.";
  const { slope, low, high } = trend;
  const [least, most] = slope > 0 ? [low, high] : [-high, -low];
  const half = (high - low) / 2;
  const chance = `p ${chanceText(family.get(trend) ?? 1)} with all questions of the season allowed for`;
  const moved = `${claim === "possible" ? "Possibly it" : "It"} ${slope > 0 ? "rose" : "fell"} over the season, by ${withUnit(rateText(Math.abs(slope), half), printedUnit(unit))} a month`;
  return `${moved} (${rateText(least, half)} to ${rateText(most, half)}; ${chance}).`;
}

function formatted(value: number, unit: string, plusMinus?: number): string {
  return formatNumber(value, unit, plusMinus).value;
}

import type { SeriesReport, TimelineReport } from "../report/index.js";
import type { UnitSystem } from "../units/index.js";
import { displayUnit } from "./display-unit.js";
import type { Row } from "./layered-spec.js";
import { thinRun } from "./thin-runs.js";
import { computeScale, type Scale } from "./ticks.js";

/** A day and a value in the unit that is drawn, as a row of a data set; a null value breaks the line. */
export interface PanelPoint extends Row {
  readonly x: number;
  readonly y: number | null;
}

/** One of the stacked panels, before it has a place. */
export interface Panel {
  readonly name: "temperature" | "gravity";
  /** "Temperature, °C" */
  readonly title: string;
  readonly scale: Scale;
  readonly line: readonly PanelPoint[];
  readonly byHand: readonly PanelPoint[];
  /** Set point of the crash, in the panel's unit. */
  readonly setPoint?: number;
}

const HOURS = 24;
/** Shortest axis of temperature, °C or °F: a degree of noise must look like one. */
const SHORTEST_TEMPERATURE = 5;

/** Which panels a timeline has readings for. */
export function panelNames(timeline: TimelineReport): readonly Panel["name"][] {
  const { temperature, gravity, gravityReadings } = timeline;
  return [...(isRead(temperature) ? ["temperature" as const] : []), ...(isRead(gravity) || isRead(gravityReadings) ? ["gravity" as const] : [])];
}

function isRead(series: SeriesReport | undefined): boolean {
  return series?.runs.some((run) => run.length > 0) === true;
}

/**
 * The panels that a timeline has readings for: temperature above gravity.
 *
 * @param columnHours what one column of the drawing stands for; lines are thinned to it
 */
export function buildPanels(timeline: TimelineReport, columnHours: number, steps: number, system?: UnitSystem): readonly Panel[] {
  return [temperaturePanel(timeline, columnHours, steps, system), gravityPanel(timeline, columnHours, steps, system)].filter((panel) => panel !== undefined);
}

function temperaturePanel(timeline: TimelineReport, columnHours: number, steps: number, system?: UnitSystem): Panel | undefined {
  const series = timeline.temperature;
  const unit = displayUnit(series?.unit ?? "C", system);
  const drawn = drawnSeries(series, columnHours, unit.convert);
  if (drawn.line.length + drawn.byHand.length === 0) return undefined;
  const setPoint = timeline.crashSet === undefined ? undefined : unit.convert(timeline.crashSet);
  const values = [...valuesOf(drawn.line), ...valuesOf(drawn.byHand), ...(setPoint === undefined ? [] : [setPoint])];
  return {
    name: "temperature", title: `Temperature, ${unit.label}`, scale: computeScale(values, steps, { smallestStep: 0.5, smallestRange: SHORTEST_TEMPERATURE }), ...drawn,
    ...(setPoint === undefined ? {} : { setPoint }),
  };
}

function gravityPanel(timeline: TimelineReport, columnHours: number, steps: number, system?: UnitSystem): Panel | undefined {
  const unit = displayUnit(timeline.gravity?.unit ?? timeline.gravityReadings?.unit ?? "SG", system);
  const log = drawnSeries(timeline.gravity, columnHours, unit.convert);
  const readings = drawnSeries(timeline.gravityReadings, columnHours, unit.convert);
  const byHand = [...log.byHand, ...readings.byHand, ...readings.line].filter((point) => point.y !== null);
  if (log.line.length + byHand.length === 0) return undefined;
  const shortest = unit.label === "" ? { smallestStep: 0.001, smallestRange: 0.008 } : { smallestStep: 0.1, smallestRange: 2 };
  const scale = computeScale([...valuesOf(log.line), ...valuesOf(byHand)], steps, shortest);
  // Specific gravity is always written to three places.
  const decimals = Math.max(scale.decimals, unit.label === "" ? 3 : 0);
  return { name: "gravity", title: unit.label === "" ? "Specific gravity" : `Gravity, ${unit.label}`, scale: { ...scale, decimals }, line: log.line, byHand };
}

function drawnSeries(
  series: SeriesReport | undefined, columnHours: number, convert: (value: number) => number,
): { readonly line: readonly PanelPoint[]; readonly byHand: readonly PanelPoint[] } {
  if (series === undefined) return { line: [], byHand: [] };
  const toPoint = ([hour, value]: readonly [number, number]): PanelPoint => ({ x: hour / HOURS, y: convert(value) });
  if (series.source === "hand") return { line: [], byHand: series.runs.flat().map(toPoint) };
  const line = series.runs.filter((run) => run.length > 0).flatMap((run, index): readonly PanelPoint[] => {
    const points = thinRun(run, columnHours).map(toPoint);
    return index === 0 ? points : [{ x: points[0]?.x ?? 0, y: null }, ...points];
  });
  return { line, byHand: [] };
}

function valuesOf(points: readonly PanelPoint[]): readonly number[] {
  return points.map((point) => point.y).filter((value) => value !== null);
}

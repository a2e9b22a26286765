import type { SeriesReport, TimelineReport } from "../report/index.js";
import type { UnitSystem } from "../units/index.js";
import type { ChartTable } from "./chart.js";
import { displayUnit } from "./display-unit.js";
import type { DayAxis } from "./fermentation-axis.js";

const HOURS = 24;
const MOST_ROWS = 40;

/** A row a day (or a few days, for a long timeline): the range of temperature, the last gravity, what was done. */
export function fermentationTable(timeline: TimelineReport, axis: DayAxis, system?: UnitSystem): ChartTable {
  const periods = periodsOf(axis);
  const parts = [
    ...(timeline.temperature === undefined ? [] : temperatureColumns(timeline.temperature, periods, system)),
    ...(timeline.gravity === undefined ? [] : [gravityColumn("gravity, log", timeline.gravity, periods, system)]),
    ...(timeline.gravityReadings === undefined ? [] : [gravityColumn("gravity, by hand", timeline.gravityReadings, periods, system)]),
  ];
  const rows = periods.list.map(({ name, from, to }, index) => [
    name, ...parts.map((part) => part.cells[index] ?? ""),
    timeline.events.filter((event) => event.hour >= from && event.hour < to).map((event) => event.label).join("; "),
  ]);
  const later = axis.later.map((event) => [String(Math.floor(event.hour / HOURS)), ...parts.map(() => ""), event.label]);
  return { columns: [{ title: "day" }, ...parts.map((part) => part.column), { title: "what happened" }], rows: [...rows, ...later] };
}

interface Column {
  readonly column: ChartTable["columns"][number];
  readonly cells: readonly string[];
}

interface Periods {
  readonly first: number;
  readonly hoursEach: number;
  readonly list: readonly { readonly name: string; readonly from: number; readonly to: number }[];
}

function periodsOf(axis: DayAxis): Periods {
  const first = Math.floor(axis.low);
  const days = Math.floor(axis.high) - first + 1;
  const each = Math.ceil(days / MOST_ROWS);
  const list = Array.from({ length: Math.ceil(days / each) }, (_, index) => {
    const day = first + index * each;
    return { name: each === 1 ? String(day) : `${day}–${day + each - 1}`, from: day * HOURS, to: (day + each) * HOURS };
  });
  return { first: first * HOURS, hoursEach: each * HOURS, list };
}

interface Outline {
  readonly lowest: number;
  readonly highest: number;
  readonly last: number;
}

/** Lowest, highest and last value of each period; a hole where nothing was read. */
function outlines(series: SeriesReport, periods: Periods): readonly (Outline | undefined)[] {
  const found: (Outline | undefined)[] = periods.list.map(() => undefined);
  for (const [hour, value] of series.runs.flat()) {
    const index = Math.floor((hour - periods.first) / periods.hoursEach);
    const known = found[index];
    found[index] = { lowest: Math.min(known?.lowest ?? value, value), highest: Math.max(known?.highest ?? value, value), last: value };
  }
  return found;
}

function temperatureColumns(series: SeriesReport, periods: Periods, system?: UnitSystem): readonly Column[] {
  const unit = displayUnit(series.unit, system);
  const found = outlines(series, periods);
  return [
    { column: { title: "lowest", unit: unit.label }, cells: found.map((each) => each === undefined ? "" : unit.formatValue(each.lowest)) },
    { column: { title: "highest", unit: unit.label }, cells: found.map((each) => each === undefined ? "" : unit.formatValue(each.highest)) },
  ];
}

function gravityColumn(title: string, series: SeriesReport, periods: Periods, system?: UnitSystem): Column {
  const unit = displayUnit(series.unit, system);
  const written = (value: number): string => series.source === "hand" && unit.label === "" ? asRead(value) : unit.formatValue(value);
  const cells = outlines(series, periods).map((each) => each === undefined ? "" : written(each.last));
  return { column: unit.label === "" ? { title } : { title, unit: unit.label }, cells };
}

/** A hydrometer is read to half a division: 1.0125 keeps its fourth place, 1.012 has none. */
function asRead(gravity: number): string {
  return gravity.toFixed(4).replace(/0$/, "");
}

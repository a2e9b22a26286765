import type { SeasonSeries } from "../report/index.js";
import type { Chart, ChartOptions, ChartTable } from "./chart.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { drawSeasonColumns, fitsInColumns } from "./season-columns.js";
import { drawSeasonRows } from "./season-rows.js";
import type { SeasonValue } from "./season-values.js";

/** Where zero is no natural beginning of the scale. */
const WITHOUT_ZERO = new Set(["C", "SG"]);

/**
 * One figure of a season's batches in brew order, with its uncertainty: side by side where their numbers fit
 * under the axis, else one below the other.
 *
 * @returns undefined where no batch has the figure
 */
export function chartSeasonFigure(series: SeasonSeries, options: ChartOptions = {}): Chart | undefined {
  if (series.points.length === 0) return undefined;
  const unit = displayUnit(series.unit, options.system);
  const values = series.points.map((point): SeasonValue => ({
    batch: point.batch, value: unit.convert(point.value), plusMinus: unit.convertDifference(point.plusMinus ?? 0), text: unit.formatValue(point.value, point.plusMinus),
  }));
  const drawing = { title: series.title, unit, fromZero: !WITHOUT_ZERO.has(series.unit), values };
  return {
    id: options.id ?? `season-${series.figure}`, kind: "season-figure", title: `${series.title}, batch by batch`, description: series.says,
    table: seasonTable(series, unit),
    get wide() { return fitsInColumns(drawing) ? drawSeasonColumns(drawing) : drawSeasonRows(drawing, "wide"); },
    get narrow() { return drawSeasonRows(drawing, "narrow"); },
  };
}

function seasonTable(series: SeasonSeries, unit: DisplayUnit): ChartTable {
  const rows = [
    ...series.points.map((point) => [point.batch, point.brewed, unit.formatValue(point.value, point.plusMinus)]),
    ...series.without.map(({ batch, why }) => [batch, "", why]),
  ];
  return { columns: [{ title: "batch" }, { title: "brewed" }, unit.label === "" ? { title: series.title } : { title: series.title, unit: unit.label }], rows };
}

import type { GroupReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { labelLayer, labelRows } from "./label-layers.js";
import { layeredSpec } from "./layered-spec.js";
import { axisTitle, quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer, uprightLayer } from "./quantity-layers.js";
import { placeRows } from "./row-layout.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

const HALF_PX = 11;

/**
 * One outcome by something that is named: a row a batch, group under group, each group's mean as an upright line.
 *
 * @returns undefined where there is nothing to compare
 */
export function chartGroups(report: GroupReport, options: ChartOptions = {}): Chart | undefined {
  if (report.groups.length === 0) return undefined;
  const unit = displayUnit(report.yUnit, options.system);
  return {
    id: options.id ?? `groups-${report.by}-${report.y}`, kind: "groups", title: `${report.yTitle} by ${report.by}`, description: report.says,
    table: {
      columns: [{ title: report.byTitle }, { title: "batch" }, unit.label === "" ? { title: report.yTitle } : { title: report.yTitle, unit: unit.label }],
      rows: report.groups.flatMap(({ name, points }) => points.map(({ batch, y }) => [name, batch, unit.formatValue(y)])),
    },
    wide: drawGroups(report, unit, "wide"), narrow: drawGroups(report, unit, "narrow"),
  };
}

function drawGroups(report: GroupReport, unit: DisplayUnit, name: "wide" | "narrow"): Drawing {
  const rows = report.groups.flatMap(({ name: group, points }) => points.map(({ batch, y }) => ({ group, batch, value: unit.convert(y), text: unit.formatValue(y) })));
  const layout = placeRows(rows.map(({ group, batch, text }) => ({ name: `${group}: ${batch}`, value: text })), name);
  const scale = computeScale(rows.map(({ value }) => value), name === "wide" ? 6 : 4);
  const placed = rows.map((row, index) => ({ ...row, y: layout.middles[index] ?? 0 }));
  const means = report.groups.map(({ name: group, mean }) => {
    const ys = placed.filter((row) => row.group === group).map(({ y }) => y);
    return { x: unit.convert(mean), y: Math.min(...ys) - HALF_PX, y2: Math.max(...ys) + HALF_PX };
  });
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(scale),
    datasets: { axis: [], means, points: placed.map(({ value, y }) => ({ x: value, y })), labels: labelRows(layout.labels) },
  }, [
    spanLayer("axis", { axis: quantityX("from", axisTitle(report.yTitle, unit.label), { decimals: scale.decimals, hasGrid: !layout.isStacked }) }),
    uprightLayer("means", { stroke: COLOURS.first, width: 1.6 }),
    circleLayer("points", { ink: COLOURS.second }),
    labelLayer("labels"),
  ]);
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

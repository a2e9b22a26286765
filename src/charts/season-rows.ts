import type { Drawing } from "./chart.js";
import { labelLayer, labelRows } from "./label-layers.js";
import { layeredSpec } from "./layered-spec.js";
import { axisTitle, quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer } from "./quantity-layers.js";
import { placeRows } from "./row-layout.js";
import type { SeasonDrawing } from "./season-values.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

/** A row a batch, first brewed on top. */
export function drawSeasonRows(drawing: SeasonDrawing, name: "wide" | "narrow"): Drawing {
  const { values, unit } = drawing;
  const layout = placeRows(values.map((each) => ({ name: each.batch, value: each.text })), name);
  const scale = computeScale(values.flatMap((each) => [each.value - each.plusMinus, each.value + each.plusMinus]), name === "wide" ? 6 : 4, drawing);
  const placed = values.map((each, index) => ({ ...each, y: layout.middles[index] ?? 0 }));
  const title = axisTitle(drawing.title, unit.label);
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(scale),
    datasets: {
      whiskers: placed.map(({ value, plusMinus, y }) => ({ from: value - plusMinus, to: value + plusMinus, y })),
      points: placed.map(({ value, y }) => ({ x: value, y })),
      labels: labelRows(layout.labels),
    },
  }, [
    spanLayer("whiskers", { axis: quantityX("from", title, { decimals: scale.decimals, hasGrid: !layout.isStacked }) }),
    circleLayer("points", { ink: COLOURS.second }),
    labelLayer("labels"),
  ]);
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

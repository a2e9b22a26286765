import type { LedgerReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { wordsInUnits } from "../units/index.js";
import { displayUnit } from "./display-unit.js";
import { labelLayer, labelRows, PIXEL_Y } from "./label-layers.js";
import { dataset, layeredSpec, type Layer, type SpecContent } from "./layered-spec.js";
import { ledgerRows, type LedgerRow } from "./ledger-rows.js";
import { axisTitle, quantityX, scaleParams } from "./quantity-axis.js";
import { spanLayer, uprightLayer } from "./quantity-layers.js";
import { placeRows, type RowLayout } from "./row-layout.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

const HALF_BAR_PX = 6;

/**
 * Where the beer went: what went into the fermenter as a bar, and under it each part that stepped off,
 * to scale, down to the package; its uncertainty as a line through the end that moved.
 *
 * @returns undefined where nothing went in or nothing is known to have left
 */
export function chartLedger(ledger: LedgerReport, options: ChartOptions & { readonly batch: string }): Chart | undefined {
  if (ledger.entries.length === 0 || ledger.into <= 0) return undefined;
  const { system = "metric" } = options;
  const unit = displayUnit("L", system);
  const rows = ledgerRows(ledger, unit);
  const axis = axisTitle(wordsInUnits("Beer at 20 °C", system, true), unit.label);
  return {
    id: options.id ?? "ledger", kind: "ledger", title: `Where the beer went, ${options.batch}`, description: ledger.says,
    table: {
      columns: [{ title: "where" }, { title: wordsInUnits("volume at 20 °C", system, true) }],
      rows: rows.map((row) => [row.name, row.value]),
    },
    get wide() { return drawLedger(rows, axis, "wide"); },
    get narrow() { return drawLedger(rows, axis, "narrow"); },
  };
}

function drawLedger(rows: readonly LedgerRow[], axis: string, name: "wide" | "narrow"): Drawing {
  const layout = placeRows(rows.map((row) => ({ name: row.name, value: row.value, muted: row.kind === "mark" })), name);
  const ends = rows.flatMap((row) => [row.from, row.to, row.uncertainEnd - (row.plusMinus ?? 0), row.uncertainEnd + (row.plusMinus ?? 0)]);
  const scale = computeScale([0, ...ends], name === "wide" ? 6 : 4, { fromZero: true });
  const spec = layeredSpec(layout.frame, layout.height, ledgerContent(rows, layout, scaleParams(scale)), ledgerLayers(quantityX("from", axis, { decimals: scale.decimals, hasGrid: !layout.isStacked })));
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

function ledgerContent(rows: readonly LedgerRow[], layout: RowLayout, params: SpecContent["params"]): SpecContent {
  const placed = rows.map((row, index) => ({ ...row, y: layout.middles[index] ?? 0 }));
  const flows = placed.filter((row) => row.kind !== "mark");
  return {
    params,
    datasets: {
      bars: flows.map(({ kind, from, to, y }) => ({ kind, from, to, y: y - HALF_BAR_PX, y2: y + HALF_BAR_PX })),
      // Where names stand above the bars, a line from bar to bar would run through the words.
      steps: layout.isStacked ? [] : flows.slice(0, -1).map((row, index) =>
        ({ x: row.left, y: row.y + HALF_BAR_PX, y2: (flows[index + 1]?.y ?? row.y) - HALF_BAR_PX })),
      marks: placed.filter((row) => row.kind === "mark").map(({ from, to, y }) => ({ from, to, y })),
      markEnds: placed.filter((row) => row.kind === "mark").flatMap(({ from, to, y }) => [...(from > 0 ? [from] : []), to].map((x) => ({ x, y: y - 4, y2: y + 4 }))),
      whiskers: placed.filter((row) => (row.plusMinus ?? 0) > 0)
        .map(({ uncertainEnd, plusMinus = 0, y }) => ({ from: uncertainEnd - plusMinus, to: uncertainEnd + plusMinus, y })),
      labels: labelRows(layout.labels),
    },
  };
}

/** Hollow with a dashed outline: not accounted for. Filled in the first ink: lost. In the second: still beer to drink. */
function ledgerLayers(from: ReturnType<typeof quantityX>): readonly Layer[] {
  const fill = `datum.kind === "open" ? "transparent" : datum.kind === "lost" ? ${JSON.stringify(COLOURS.first)} : ${JSON.stringify(COLOURS.second)}`;
  return [
    {
      data: dataset("bars"),
      mark: {
        type: "rect", fill: { expr: fill }, stroke: { expr: `datum.kind === "open" ? ${JSON.stringify(COLOURS.first)} : "transparent"` }, strokeWidth: 1.2,
      },
      encoding: { x: from, x2: { field: "to" }, y: PIXEL_Y, y2: { field: "y2" } },
    },
    uprightLayer("steps", { stroke: COLOURS.muted }),
    uprightLayer("markEnds", { stroke: COLOURS.muted }),
    spanLayer("marks", { stroke: COLOURS.muted }),
    spanLayer("whiskers", { width: 1.4 }),
    labelLayer("labels"),
  ];
}

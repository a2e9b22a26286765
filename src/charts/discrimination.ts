import type { CountReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { labelLayer, labelRows } from "./label-layers.js";
import { layeredSpec } from "./layered-spec.js";
import { plotWidthPx } from "./frame.js";
import { quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer, uprightLayer } from "./quantity-layers.js";
import { placeRows } from "./row-layout.js";
import { textWidthPx } from "./text-width.js";
import { COLOURS } from "./theme.js";

const SHARES = { low: 0, high: 100, ticks: [0, 25, 50, 75, 100], decimals: 0 } as const;
const HEAD_PX = 22;

/**
 * A discrimination test: the share that chose right as a point with its exact 95 % interval, against the
 * share that guessing gives.
 *
 * @returns undefined where nobody took the test
 */
export function chartDiscrimination(count: CountReport, options: ChartOptions & { readonly test: string }): Chart | undefined {
  if (count.tasters < 1) return undefined;
  const interval = `${percent(count.low)} to ${percent(count.high)} %`;
  const value = `${count.correct} of ${count.tasters} right`;
  const name = options.test.charAt(0).toUpperCase() + options.test.slice(1);
  return {
    id: options.id ?? `discrimination-${options.test}`, kind: "discrimination", title: `${name}: who told them apart`,
    description: `${count.correct} of ${count.tasters} tasters were right, ${percent(count.share)} % (95 % interval ${interval}); guessing gives ${percent(count.chance)} %.`,
    table: {
      columns: [{ title: "test" }, { title: "right" }, { title: "tasters" }, { title: "share", unit: "%" }, { title: "95 % interval" }, { title: "guessing", unit: "%" }],
      rows: [[options.test, String(count.correct), String(count.tasters), percent(count.share), interval, percent(count.chance)]],
    },
    get wide() { return drawCount(count, { name, value }, "wide"); },
    get narrow() { return drawCount(count, { name, value }, "narrow"); },
  };
}

function percent(share: number): string {
  return (share * 100).toFixed(0);
}

function drawCount(count: CountReport, row: { readonly name: string; readonly value: string }, name: "wide" | "narrow"): Drawing {
  const layout = placeRows([row], name, HEAD_PX);
  const y = layout.middles[0] ?? 0;
  const guess = `guessing ${percent(count.chance)} %`;
  const width = plotWidthPx(layout.frame);
  const at = Math.max(0, Math.min(count.chance * width - textWidthPx(guess) / 2, width - textWidthPx(guess)));
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(SHARES),
    datasets: {
      interval: [{ from: count.low * 100, to: count.high * 100, y }],
      chance: [...(layout.isStacked ? [[HEAD_PX - 4, HEAD_PX], [HEAD_PX + 17, layout.height]] : [[HEAD_PX - 4, layout.height]])]
        .map(([from = 0, to = 0]) => ({ x: count.chance * 100, y: from, y2: to })),
      points: [{ x: count.share * 100, y }],
      labels: labelRows([{ x: at, y: 13, text: guess, muted: true }, ...layout.labels]),
    },
  }, [
    spanLayer("interval", { width: 1.4, axis: quantityX("from", "Tasters who were right, %", { decimals: 0, hasGrid: !layout.isStacked }) }),
    uprightLayer("chance", { stroke: COLOURS.muted, dash: [4, 3] }),
    circleLayer("points", { ink: COLOURS.second, size: 60 }),
    labelLayer("labels"),
  ]);
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

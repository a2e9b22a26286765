import type { TastingReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { labelLayer, labelRows, PIXEL_Y } from "./label-layers.js";
import { dataset, layeredSpec } from "./layered-spec.js";
import { quantityX, scaleParams } from "./quantity-axis.js";
import { placeRows } from "./row-layout.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

type Preference = NonNullable<TastingReport["preference"]>;

const HALF_PX = 6;
/** Between one vote and the next, as a share of a vote's width. */
const GAP = 0.12;

/**
 * Votes counted out: one mark a taster. Those with no preference have a row of their own and are never shared out.
 *
 * @returns undefined where nobody voted
 */
export function chartPreference(preference: Preference, options: ChartOptions & { readonly before?: string; readonly after?: string } = {}): Chart | undefined {
  const rows = [
    { name: options.before ?? "before", votes: preference.before }, { name: options.after ?? "after", votes: preference.after },
    { name: "no preference", votes: preference.none },
  ];
  const tasters = preference.before + preference.after + preference.none;
  if (tasters === 0) return undefined;
  return {
    id: options.id ?? "preference", kind: "preference", title: "Which they preferred",
    description: `Of ${tasters} tasters ${preference.after} preferred ${rows[1]?.name ?? ""}, ${preference.before} preferred ${rows[0]?.name ?? ""} and ${preference.none} had no preference.`,
    table: { columns: [{ title: "preferred" }, { title: "tasters" }], rows: rows.map((row) => [row.name, String(row.votes)]) },
    get wide() { return drawVotes(rows, "wide"); },
    get narrow() { return drawVotes(rows, "narrow"); },
  };
}

function drawVotes(rows: readonly { readonly name: string; readonly votes: number }[], name: "wide" | "narrow"): Drawing {
  const layout = placeRows(rows.map((row) => ({ name: row.name, value: String(row.votes) })), name);
  const most = Math.max(...rows.map((row) => row.votes));
  const scale = computeScale([0, most], name === "wide" ? 8 : 5, { fromZero: true, smallestStep: 1 });
  const votes = rows.flatMap((row, index) => Array.from({ length: row.votes }, (_, vote) =>
    ({ from: vote + GAP / 2, to: vote + 1 - GAP / 2, y: (layout.middles[index] ?? 0) - HALF_PX, y2: (layout.middles[index] ?? 0) + HALF_PX })));
  const spec = layeredSpec(layout.frame, layout.height, { params: scaleParams(scale), datasets: { votes, labels: labelRows(layout.labels) } }, [
    {
      data: dataset("votes"), mark: { type: "rect", fill: COLOURS.second },
      encoding: { x: quantityX("from", "Tasters", { decimals: 0, hasGrid: !layout.isStacked }), x2: { field: "to" }, y: PIXEL_Y, y2: { field: "y2" } },
    },
    labelLayer("labels"),
  ]);
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}

import type { Chart } from "../../charts/index.js";
import type { BatchReport } from "../../report/index.js";
import { batchCharts } from "../page-charts.js";
import { batchPage, chartCsvPath } from "../page-paths.js";
import type { Site } from "../page/site.js";
import type { Methods } from "../method-view.js";
import { figureRows, type FigureRow } from "../views/figure-rows.js";

/** Everything the parts of one batch page are rendered from. */
export interface BatchView {
  readonly site: Site;
  readonly report: BatchReport;
  readonly methods: Methods;
}

export function rowsOf(view: BatchView, ids: ReadonlySet<string>): FigureRow[] {
  return figureRows(view.report, view.methods, ids);
}

/** A chart of the batch with its picture and where its numbers lie, ready for the page. */
export function chartOf(view: BatchView, id: string): { chart: Chart; markup: string | undefined; csv: string } | undefined {
  const { inputs } = view.site;
  const page = batchPage(view.report.slug);
  const chart = batchCharts(view.report, inputs.log.club.units).find((known) => known.id === id);
  return chart === undefined ? undefined : { chart, markup: inputs.chartMarkup(page, id), csv: chartCsvPath(page, chart) };
}

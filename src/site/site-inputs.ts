import type { LogReport } from "../report/index.js";
import type { ProblemView, RecordFieldView } from "./help-views.js";
import type { MethodView } from "./method-view.js";

/** A picture as the build wrote it: where it lies in the site and its size in px. */
export interface PhotoView {
  readonly path: string;
  readonly width: number;
  readonly height: number;
}

/** A published batch's fermentation log, byte for byte as the brewer's device wrote it. */
export interface FermentationLogView {
  readonly slug: string;
  readonly text: string;
  readonly sha256: string;
}

/** Everything the pages are made from; nothing is read from disk while they are rendered. */
export interface SiteInputs {
  readonly log: LogReport;
  /** The program's version: other code may give other bytes, so it is part of every key. */
  readonly version: string;
  readonly methods: readonly MethodView[];
  readonly recordFields: readonly RecordFieldView[];
  readonly problemCatalogue: readonly ProblemView[];
  /** A chart of `pageCharts`, drawn: by the page's path without extension ("batches/tp-03") and the chart's id. */
  readonly chartMarkup: (page: string, chartId: string) => string | undefined;
  /** By path inside the log. */
  readonly photos: ReadonlyMap<string, PhotoView>;
  readonly logs?: readonly FermentationLogView[];
}

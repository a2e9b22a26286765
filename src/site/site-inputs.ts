import type { LogReport } from "../report/index.js";

/** A relation as its pages and the working tell it: the descriptor that science keeps beside each function. */
export interface MethodView {
  readonly id: string;
  readonly title: string;
  readonly subject: string;
  readonly says: string;
  readonly inputs: readonly MethodInputView[];
  readonly output: { readonly symbol: string; readonly unit: string };
  readonly formula: string;
  readonly range: string;
  readonly source: string;
  readonly status: string;
  readonly model?: { readonly limit: number; readonly as: "absolute" | "share"; readonly source: string };
  readonly checks: readonly MethodCheckView[];
}

export interface MethodInputView {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

export interface MethodCheckView {
  readonly given: readonly number[];
  readonly gives: number;
  readonly within: number;
  readonly source: string;
  /** Which part of a result with several parts. */
  readonly part?: string;
}

/** One field of a record, for the help page. */
export interface RecordFieldView {
  readonly path: string;
  readonly meaning: string;
  readonly unit?: string;
  readonly default?: string;
  readonly range?: string;
  readonly required?: boolean;
  readonly example?: string;
  /** The kind of file it belongs to: "batch", "club.yaml". */
  readonly file?: string;
}

/** One kind of problem, for the help page: as the catalogue of problems tells it. */
export interface ProblemView {
  readonly code: string;
  readonly severity: string;
  readonly title: string;
  readonly explanation: string;
}

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

/** One file of the site. Equal keys mean equal bytes. */
export interface SiteFile {
  /** Inside the site, forward slashes, always with an extension. */
  readonly path: string;
  readonly key: string;
  readonly render: () => string;
}

/** A file that doesn't depend on the log: style, script, font. */
export interface SiteAsset {
  readonly path: string;
  readonly bytes: Uint8Array;
}

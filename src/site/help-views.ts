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

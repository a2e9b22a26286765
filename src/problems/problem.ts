/** How much a problem matters: an error stops the build, a warning is printed and shown. */
export type Severity = "error" | "warning";

/** One thing wrong with one place of one file, and what to write instead. */
export interface Problem {
  /** Permanent, `file-kind/what`: `record/unit-missing`. */
  readonly code: string;
  readonly severity: Severity;
  /** Path inside the log, with forward slashes. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, counted in UTF-16 code units. */
  readonly column: number;
  /** Where in the record: `dry_hops[0].amount`; empty for a whole file. */
  readonly field: string;
  readonly expected: string;
  readonly found: string;
  /** What to write instead, in one line. */
  readonly fix: string;
}

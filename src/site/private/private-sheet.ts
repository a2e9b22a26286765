import type { ComponentChildren } from "preact";
import type { PrivateReport } from "../../report/index.js";

/** What private sheets are made from. */
export interface PrivateInputs {
  readonly report: PrivateReport;
}

/** One file to print: one page, or one page a taster, an entry, a flight. */
export interface PrivateSheet {
  /** The file's name, with its extension; no folders. */
  readonly path: string;
  readonly title: string;
  /** What browsers print in the margin, where that mustn't name the batch; else its name and the title. */
  readonly marginTitle?: string;
  /** Who it is for and what for, one sentence, for the list. */
  readonly says: string;
  /** Who may see it, in a few words, printed on top of every page: "for the pourer only". */
  readonly eyes: string;
  /** Pages, each in a `PaperPage`. */
  readonly content: () => ComponentChildren;
}

/** A private sheet, ready to be written. */
export interface PrivateFile {
  readonly path: string;
  readonly render: () => string;
}

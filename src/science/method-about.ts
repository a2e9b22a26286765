import { type MethodSubject } from "./method-subject.js";

/** Where a relation comes from, and how far that has been seen. */
export type SourceStatus = "published" | "common practice" | "from memory";

/** One input of a relation. `low` and `high` bound its domain: outside them the relation throws. */
export interface MethodInput {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

/** A value from outside the project that the relation must reproduce; the tests run every one. */
export interface MethodCheck {
  /**
   * The inputs in the order of `about.inputs`. For a relation on a series or a list the last
   * inputs (one reading: its time and its value) repeat, reading after reading.
   */
  readonly given: readonly number[];
  readonly gives: number;
  readonly within: number;
  /** Which part of the result, for relations whose result has several. */
  readonly part?: string;
  /** Author, title, edition or DOI, page; or "from memory" or "common practice", said as such. */
  readonly source: string;
}

/** What is known of a relation: feeds the methods pages, the working on batch pages and the figures table. */
export interface MethodAbout {
  /** kebab-case, permanent: it is in page addresses and exported data. */
  readonly id: string;
  readonly title: string;
  readonly subject: MethodSubject;
  /** One or two plain sentences for a brewer: what it gives and which variant it is. */
  readonly says: string;
  readonly inputs: readonly MethodInput[];
  readonly output: { readonly symbol: string; readonly unit: string };
  /** The relation in plain text, with the symbols above. */
  readonly formula: string;
  /** Where it holds, in words. */
  readonly range: string;
  readonly source: string;
  readonly status: SourceStatus;
  /** Half-width at 95 % of what the relation itself is worth, in the output's unit or as a share of the value, where published. */
  readonly model?: {
    readonly limit: number;
    readonly as: "absolute" | "share";
    readonly source: string;
  };
  readonly checks: readonly MethodCheck[];
}

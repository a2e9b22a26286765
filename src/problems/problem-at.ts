import { CATALOGUE, type CatalogueEntry, type Given, type ProblemCode } from "./catalogue.js";
import type { Problem } from "./problem.js";

/** Where a problem is, and the text that stands there. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly field: string;
  /** As written; empty when there is nothing. */
  readonly found: string;
}

const LONGEST_FOUND = 60;

/** Words a problem from the catalogue for a place. */
export function problemAt<Code extends ProblemCode>(code: Code, place: Place, given: Given<Code>): Problem {
  const entry = CATALOGUE[code] as CatalogueEntry<Given<Code>>;
  const { expected, fix, found = place.found } = entry.wording(given);
  const { file, line, column, field } = place;
  return { code, severity: entry.severity, file, line, column, field, expected, found: shortened(found), fix };
}

/** One line, at most LONGEST_FOUND characters, without control characters that could disturb a terminal. */
function shortened(text: string): string {
  // eslint-disable-next-line no-control-regex -- these are what must not reach a terminal
  const line = text.replaceAll(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu, " ").trim();
  const letters = [...line];
  return letters.length > LONGEST_FOUND ? `${letters.slice(0, LONGEST_FOUND - 1).join("")}…` : line;
}

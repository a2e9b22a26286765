import { CATALOGUE, type CatalogueEntry, type Given, type ProblemCode } from "./catalogue.js";
import { printable } from "./printable.js";
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

function shortened(text: string): string {
  const letters = [...printable(text.slice(0, LONGEST_FOUND * 20)).trim()];
  return letters.length > LONGEST_FOUND ? `${letters.slice(0, LONGEST_FOUND - 1).join("")}…` : letters.join("");
}

import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** What a tasting needs on paper. */
export function tastingSheets(_inputs: PrivateInputs): PrivateSheet[] {
  return [];
}

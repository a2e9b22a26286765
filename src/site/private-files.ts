import { bestOfShowSheets } from "./private/best-of-show-sheet.js";
import { entrySlips } from "./private/entry-slips.js";
import { feedbackSheets } from "./private/feedback-sheets.js";
import { flightSheets } from "./private/flight-sheets.js";
import { privateIndex } from "./private/private-index.js";
import { renderPrivatePage } from "./private/private-page.js";
import type { PrivateFile, PrivateInputs, PrivateSheet } from "./private/private-sheet.js";
import { registrarSheets } from "./private/registrar-sheets.js";
import { scoreSheets } from "./private/score-sheets.js";
import { tastingSheets } from "./private/tasting-sheets.js";

/** What is put on paper and never published: a new kind of sheet is a new file in private/ and one line here. */
const CONTENTS: readonly ((inputs: PrivateInputs) => PrivateSheet[])[] = [
  tastingSheets, entrySlips, registrarSheets, flightSheets, scoreSheets, bestOfShowSheets, feedbackSheets,
];

/**
 * Every sheet of one batch or competition, with a list of them. Each file is whole in itself, style
 * included: it opens from disk and prints from any folder. None of them is part of a site.
 */
export function privateFiles(inputs: PrivateInputs): PrivateFile[] {
  const sheets = CONTENTS.flatMap((sheetsOf) => sheetsOf(inputs));
  return [privateIndex(inputs, sheets), ...sheets].map((sheet) => ({ path: sheet.path, render: () => renderPrivatePage(inputs, sheet) }));
}

import type { EntryRow } from "../../../records/index.js";
import { drawBlindCodes, type SeededGenerator } from "../../../statistics/index.js";

/** Codes that look alike are kept apart as long as there are enough others. */
const MOST_APART = 150;
/** Three digits hold no more codes that are safe to read. */
export const MOST_CODES = 600;

/**
 * A blind code for each entry: those recorded stay, the rest are drawn.
 *
 * @returns by registration id; undefined where the codes run out
 */
export function drawCodes(entries: readonly EntryRow[], generator: SeededGenerator): Map<string, string> | undefined {
  const taken = new Set(entries.flatMap(({ code }) => code ?? []));
  const without = entries.filter(({ code }) => code === undefined);
  if (entries.length > MOST_CODES) return undefined;
  const drawn = drawBlindCodes(drawnCount(entries.length), generator, { keepApart: entries.length <= MOST_APART }).filter((code) => !taken.has(code));
  if (drawn.length < without.length) return undefined;
  const fresh = new Map(without.map(({ entry }, index) => [entry, drawn[index] ?? ""]));
  return new Map(entries.map(({ entry, code }) => [entry, code ?? fresh.get(entry) ?? ""]));
}

/** As many as could be needed even where every recorded code is drawn again. */
function drawnCount(entries: number): number {
  return entries <= MOST_APART ? MOST_APART : MOST_CODES;
}

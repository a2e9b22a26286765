import type { Batch } from "../records/index.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Whether nothing has come of a tasting yet. */
export function isOpen({ triangle, tetrad, duoTrio, pair = [], preference, scores, ranking }: Tasting): boolean {
  const counted = [triangle, tetrad, duoTrio].some((test) => test?.correct !== undefined);
  const voted = pair.some(({ counts }) => counts.length > 0) || (preference !== undefined && (preference.counts.length > 0 || preference.none !== undefined));
  return !counted && !voted && scores === undefined && ranking === undefined;
}

import { folded, nearestName, problemAt, type Place, type Problem } from "../../problems/index.js";
import type { ParsedBatch } from "../parse-batch.js";

/** Shorter words differ by one letter too easily: pine and wine. */
const SHORTEST_SIMILAR = 6;
/** More attributes than any panel scores: beyond it, nothing is compared. */
const MOST_ATTRIBUTES = 200;

/** Attributes of score files that are written nearly like those of the aim, of a pair test, or of each other. */
export function scoredAttributesMatch({ partial, placeOf }: ParsedBatch, scored: readonly Place[]): Problem[] {
  if (scored.length > MOST_ATTRIBUTES) return [];
  const { aim, tastings } = partial;
  const named: Place[] = [
    ...(["raise", "lower", "hold"] as const).flatMap((kind) => (aim?.[kind] ?? []).map((_, index) => placeOf(["aim", kind, index]))),
    ...(tastings ?? []).flatMap(({ pair }, index) => (pair ?? []).map((_, place) => placeOf(["tastings", index, "pair", place, "attribute"]))),
  ];
  const known = [...named];
  return scored.flatMap((place) => {
    const problem = compare(place, known);
    known.push(place);
    return problem === undefined ? [] : [problem];
  });
}

function compare(place: Place, known: readonly Place[]): Problem | undefined {
  if (known.some(({ found }) => found === place.found)) return undefined;
  const same = known.find(({ found }) => folded(found) === folded(place.found));
  if (same !== undefined) return problemAt("tasting/attribute-spelling", place, { other: same.found, field: where(same, place) });
  if (place.found.length < SHORTEST_SIMILAR) return undefined;
  const nearest = nearestName(place.found, known.map(({ found }) => found).filter((found) => found.length >= SHORTEST_SIMILAR), 1);
  const near = known.find(({ found }) => found === nearest);
  return near === undefined ? undefined : problemAt("tasting/attribute-similar", place, { other: near.found, field: where(near, place) });
}

const where = (other: Place, { file }: Place): string => (other.file === file ? other.field : `${other.field} in ${other.file}:${other.line}`);

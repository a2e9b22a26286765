import { total, weightedMean, type MethodAbout } from "../science/index.js";
import { propagate } from "../statistics/index.js";
import { computedBy, missing, missingForAll, type Known, type Missing, type Result } from "./known.js";

/**
 * Adds values of one unit; missing when any is. One alone is its own sum, and its working shows how it came about.
 *
 * @param about the relation each part came from, where the sum is that relation's own (bitterness over additions)
 */
export function totalOf(results: readonly Result[], unit: string, about: MethodAbout = total.about): Result {
  const known = allKnown(results);
  if ("missing" in known) return known;
  const [only] = known.list;
  if (known.list.length === 1 && only !== undefined) return only;
  const sum = propagate((...values) => total(values), known.list);
  return computedBy(about, sum.value, sum.contributions, known.list, unit);
}

/** The mean of values weighted by others (temperatures by mass, say); missing when any is, or when nothing weighs anything. */
export function weightedMeanOf(results: readonly Result[], weights: readonly Result[], unit: string): Result {
  const known = allKnown([...results, ...weights]);
  if ("missing" in known) return known;
  const count = results.length;
  const values = known.list.map(({ value }) => value);
  const refusal = weightedMean.refuses(values.slice(0, count), values.slice(count));
  if (refusal !== undefined) return missing(`${weightedMean.about.title} can't be computed: ${refusal}`);
  const mean = propagate((...at) => weightedMean(at.slice(0, count), at.slice(count)), known.list);
  return computedBy(weightedMean.about, mean.value, mean.contributions, known.list, unit);
}

function allKnown(results: readonly Result[]): { readonly list: readonly Known[] } | Missing {
  const list: Known[] = [];
  const reasons: string[] = [];
  for (const result of results) {
    if ("missing" in result) reasons.push(result.missing);
    else list.push(result);
  }
  return reasons.length > 0 ? missingForAll(reasons) : { list };
}

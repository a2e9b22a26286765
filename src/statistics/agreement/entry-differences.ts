import { studentTwoSided } from "../distributions/student-t.js";
import { varianceShare } from "../numerics/householder.js";
import type { Interval } from "../samples/interval.js";
import { coverageFactor } from "../uncertainty/coverage.js";
import { adjustedMean } from "./adjusted-mean.js";
import { findConnectedGroups, type JudgeScore } from "./connected-groups.js";
import { fitSeverity, type SeverityModel } from "./severity-model.js";

export interface EntryDifference {
  /** First entry's adjusted mean less the second's. */
  readonly estimate: number;
  readonly standardError: number;
  /** Each difference on its own: several at once aren't allowed for. */
  readonly interval: Interval;
  /** Two-sided. */
  readonly p: number;
}

/**
 * Differences of entries' adjusted means under score = entry + judge + error, from one fit. Where every
 * judge scored every entry, judges' severity cancels and the differences are those of the plain means.
 *
 * Source: two-way layout, textbook. From memory; checked against R lm (judge_bias_expected.csv).
 *
 * @param pairs each of two entries
 * @throws RangeError when the scores are not linked, too few, or an entry has none
 */
export function entryDifferences(scores: readonly JudgeScore[], pairs: readonly (readonly [string, string])[], level = 0.95): EntryDifference[] {
  if (findConnectedGroups(scores).length !== 1) throw new RangeError("entryDifferences requires linked scores");
  const model = fitSeverity(scores);
  const factor = coverageFactor(level, model.degreesOfFreedom);
  return pairs.map(([first, second]) => differenceOf(model, first, second, factor));
}

/** Difference of two entries, as `entryDifferences` for one pair. */
export function entryDifference(scores: readonly JudgeScore[], first: string, second: string): EntryDifference {
  const [difference] = entryDifferences(scores, [[first, second]]);
  if (difference === undefined) throw new RangeError("entryDifference requires two entries");
  return difference;
}

function differenceOf(model: SeverityModel, first: string, second: string, factor: number): EntryDifference {
  const [a, b] = [adjustedMean(model, first), adjustedMean(model, second)];
  const estimate = a.height - b.height;
  const shares = first === second ? 0 : a.shares + b.shares;
  const spread = shares + varianceShare(model, a.weights.map((weight, j) => weight - (b.weights[j] ?? 0)));
  const standardError = Math.sqrt(model.residualVariance * spread);
  return {
    estimate, standardError,
    interval: { low: estimate - factor * standardError, high: estimate + factor * standardError },
    p: estimate === 0 ? 1 : studentTwoSided(estimate / standardError, model.degreesOfFreedom),
  };
}

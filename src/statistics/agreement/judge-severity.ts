import { fUpperTail } from "../distributions/f-ratio.js";
import { varianceShare } from "../numerics/householder.js";
import { dot } from "../numerics/sums.js";
import { adjustedMean } from "./adjusted-mean.js";
import { findConnectedGroups, type ConnectedGroup, type JudgeScore } from "./connected-groups.js";
import { fitSeverity, type SeverityModel } from "./severity-model.js";

/** Nothing ties the groups together: judges' severity can't be told from the entries' quality between them. */
export interface UnlinkedJudges {
  readonly linked: false;
  readonly groups: readonly ConnectedGroup[];
}

export interface LinkedJudges {
  readonly linked: true;
  /** Mean the entry would have had from all judges. A diagnostic for the organiser, never a medal. */
  readonly entries: readonly { readonly entry: string; readonly adjustedMean: number; readonly standardError: number }[];
  /** Points a judge gives above the average judge (lenient) or below (severe); they sum to zero. */
  readonly judges: readonly { readonly judge: string; readonly severity: number; readonly standardError: number }[];
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  /** Do judges differ at all? Infinity when nothing is left unexplained. */
  readonly fRatio: number;
  readonly p: number;
}

/**
 * Judges' severity by the additive model score = entry + judge + error. Refuses when the scores
 * fall into groups that share no judge and no entry. One score a judge and entry can't show
 * whether a judge uses the scale differently.
 *
 * Source: two-way layout, textbook; connectedness after Weeks & Williams 1964. From memory;
 * checked against R lm (judge_bias_expected.csv).
 *
 * @throws RangeError with one judge, a judge twice on an entry, or too few scores
 */
export function judgeSeverity(scores: readonly JudgeScore[]): LinkedJudges | UnlinkedJudges {
  const groups = findConnectedGroups(scores);
  if (groups.length > 1) return { linked: false, groups };
  const model = fitSeverity(scores);
  const sigma = Math.sqrt(model.residualVariance);
  const fRatio = model.explained === 0 ? 0 : model.explained / (model.judges.length - 1) / model.residualVariance;
  return {
    linked: true,
    entries: [...model.entries.keys()].map((entry) => {
      const { height, weights, shares } = adjustedMean(model, entry);
      return { entry, adjustedMean: height, standardError: sigma * Math.sqrt(shares + varianceShare(model, weights)) };
    }),
    judges: judgeEffects(model),
    residualStandardDeviation: sigma,
    degreesOfFreedom: model.degreesOfFreedom,
    fRatio,
    p: fUpperTail(fRatio, model.judges.length - 1, model.degreesOfFreedom),
  };
}

function judgeEffects(model: SeverityModel): LinkedJudges["judges"] {
  const last = model.judges.length - 1;
  return model.judges.map((judge, index) => {
    const weights = model.effects.map((_, j): number => (index === last ? -1 : j === index ? 1 : 0));
    return { judge, severity: dot(weights, model.effects), standardError: Math.sqrt(model.residualVariance * varianceShare(model, weights)) };
  });
}

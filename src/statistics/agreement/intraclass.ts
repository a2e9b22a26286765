import { fUpperQuantile } from "../distributions/f-ratio.js";
import { requireOpenProbability } from "../numerics/arguments.js";
import { type Interval } from "../samples/interval.js";
import { computeMeanSquares, type MeanSquares } from "./mean-squares.js";

export interface IntraclassEstimate {
  readonly estimate: number;
  /** Undefined when judges agree without any scatter, or so badly that Satterthwaite's approximation fails. */
  readonly interval: Interval | undefined;
}

export interface IntraclassForms {
  /** ICC(1): each target seen by other judges; severity counts as error. */
  readonly oneWay: IntraclassEstimate;
  /** ICC(2): absolute agreement, judges a sample of judges. For scores that decide. */
  readonly agreement: IntraclassEstimate;
  /** ICC(3): consistency; hides severity. */
  readonly consistency: IntraclassEstimate;
}

export interface Intraclass {
  /** Of one judge's score: ICC(·,1). */
  readonly single: IntraclassForms;
  /** Of the mean of these judges: ICC(·,k). */
  readonly average: IntraclassForms;
  readonly meanSquares: MeanSquares;
}

/**
 * Intraclass correlation in its six forms, with intervals.
 *
 * Source: Shrout & Fleiss, Psychological Bulletin 86 (1979). Published, with their example.
 *
 * @param rows one a target (entry), one column a judge; complete, at least 2 by 2
 * @throws RangeError when all targets have the same mean
 */
export function intraclassCorrelation(rows: readonly (readonly number[])[], level = 0.95): Intraclass {
  requireOpenProbability("intraclassCorrelation", "level", level);
  const meanSquares = computeMeanSquares("intraclassCorrelation", rows);
  const { targets, judges, betweenTargets, withinTargets, residual } = meanSquares;
  if (betweenTargets === 0) throw new RangeError("intraclassCorrelation requires targets whose means differ");
  const tail = (1 - level) / 2;
  const oneWay = ratioForm(betweenTargets, withinTargets, { judges, degrees: [targets - 1, targets * (judges - 1)], tail });
  const consistency = ratioForm(betweenTargets, residual, { judges, degrees: [targets - 1, (targets - 1) * (judges - 1)], tail });
  const agreement = agreementForm(meanSquares, tail);
  const average = (form: IntraclassEstimate): IntraclassEstimate => averaged(form, judges);
  return {
    single: { oneWay, agreement, consistency },
    average: { oneWay: average(oneWay), agreement: average(agreement), consistency: average(consistency) },
    meanSquares,
  };
}

interface RatioSetting {
  readonly judges: number;
  readonly degrees: readonly [number, number];
  readonly tail: number;
}

/** Forms 1 and 3 rest on one F ratio. */
function ratioForm(between: number, error: number, { judges, degrees: [upper, lower], tail }: RatioSetting): IntraclassEstimate {
  const fromRatio = (f: number): number => (f - 1) / (f + judges - 1);
  if (error === 0) return { estimate: 1, interval: undefined };
  const f = between / error;
  const low = fromRatio(f / fUpperQuantile(tail, upper, lower));
  return { estimate: fromRatio(f), interval: { low, high: fromRatio(f * fUpperQuantile(tail, lower, upper)) } };
}

/** Form 2, with Satterthwaite's degrees of freedom for the interval. */
function agreementForm({ targets: n, judges: k, betweenTargets, betweenJudges, residual }: MeanSquares, tail: number): IntraclassEstimate {
  const estimate = (betweenTargets - residual) / (betweenTargets + (k - 1) * residual + (k * (betweenJudges - residual)) / n);
  if (residual === 0) return { estimate, interval: undefined };
  const severity = betweenJudges / residual;
  const rest = n * (1 + (k - 1) * estimate) - k * estimate;
  const degrees =
    ((k - 1) * (n - 1) * (k * estimate * severity + rest) ** 2) / ((n - 1) * (k * estimate * severity) ** 2 + rest ** 2);
  if (degrees < 1) return { estimate, interval: undefined };
  const others = k * betweenJudges + (k * n - k - n) * residual;
  const upper = fUpperQuantile(tail, n - 1, degrees);
  const lower = fUpperQuantile(tail, degrees, n - 1);
  return {
    estimate,
    interval: {
      low: (n * (betweenTargets - upper * residual)) / (upper * others + n * betweenTargets),
      high: (n * (lower * betweenTargets - residual)) / (others + n * lower * betweenTargets),
    },
  };
}

/** Spearman and Brown: from one judge to the mean of k. */
function averaged({ estimate, interval }: IntraclassEstimate, judges: number): IntraclassEstimate {
  const step = (single: number): number => (judges * single) / (1 + (judges - 1) * single);
  return { estimate: step(estimate), interval: interval && { low: step(interval.low), high: step(interval.high) } };
}

import { studentFactor, studentTwoSided } from "../distributions/student-t.js";
import { requireFinite } from "../numerics/arguments.js";
import { intervalAround, type Interval } from "../samples/interval.js";
import { mean, standardDeviation } from "../samples/sample.js";
import { equateRounding } from "../samples/ties.js";

export interface MeanDifference {
  readonly count: number;
  readonly mean: number;
  readonly standardDeviation: number;
  /** Undefined when all differences are equal: they show no scatter to judge by. */
  readonly interval: Interval | undefined;
  readonly t: number | undefined;
  /** Two-sided p of a mean difference of zero. */
  readonly p: number | undefined;
}

/**
 * Mean of paired differences with Student's interval: each taster scored both samples, so
 * tasters' own use of the scale drops out.
 *
 * Source: Student, Biometrika 6 (1908). Published; checked on his and on Darwin's data.
 *
 * @param differences one a taster, second sample less first, at least 2
 */
export function meanDifference(differences: readonly number[], level = 0.95): MeanDifference {
  requireFinite("meanDifference", differences, 2);
  const count = differences.length;
  const center = mean(differences);
  const equated = equateRounding(differences);
  const spread = new Set(equated).size > 1 ? standardDeviation(differences) : 0;
  const standardError = spread / Math.sqrt(count);
  const factor = studentFactor(level, count - 1);
  const judged = spread > 0 ? center / standardError : undefined;
  return {
    count,
    mean: center,
    standardDeviation: spread,
    interval: judged === undefined ? undefined : intervalAround(center, factor * standardError),
    t: judged,
    p: judged === undefined ? undefined : studentTwoSided(judged, count - 1),
  };
}

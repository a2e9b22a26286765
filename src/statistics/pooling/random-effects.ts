import { chiSquareUpperTail } from "../distributions/chi-square.js";
import { studentFactor } from "../distributions/student-t.js";
import { requireFinite, requireOpenProbability, requireSameLength } from "../numerics/arguments.js";
import { findRoot } from "../numerics/root.js";
import { intervalAround, type Interval } from "../samples/interval.js";

export interface PooledEffect {
  readonly estimate: number;
  readonly standardError: number;
  readonly interval: Interval;
  /** τ²: variance of the batches' true effects about their mean. */
  readonly betweenVariance: number;
  /** Cochran's Q of all effects being the same, with its p. */
  readonly q: number;
  readonly qP: number;
  /** I² = (Q − df)/Q, cut at 0: share of the scatter that the standard errors don't explain. */
  readonly heterogeneityShare: number;
  /** Where the true effect of another batch would lie; undefined below 3 effects. */
  readonly predictionInterval: Interval | undefined;
}

/**
 * Pools effects of several batches, each with its own standard error, when their true effects may
 * differ: Paule and Mandel's τ² and the interval of Knapp and Hartung, which with few batches
 * keeps its level where the usual one is too short. Its factor is not let below 1, so
 * that effects that happen to agree don't make the interval shorter than their errors allow.
 *
 * Source: Paule & Mandel, Journal of Research NBS 87 (1982); Knapp & Hartung, Statistics in
 * Medicine 22 (2003); prediction after Higgins, Thompson & Spiegelhalter, JRSS A 172 (2009). Published;
 * formulas from memory, checked against published results.
 *
 * @param standardErrors each above 0; at least 2 effects
 */
export function poolRandomEffects(estimates: readonly number[], standardErrors: readonly number[], level = 0.95): PooledEffect {
  requireFinite("poolRandomEffects", estimates, 2);
  requireFinite("poolRandomEffects", standardErrors, 2);
  requireSameLength("poolRandomEffects", estimates, standardErrors);
  requireOpenProbability("poolRandomEffects", "level", level);
  if (standardErrors.some((error) => error <= 0)) throw new RangeError("poolRandomEffects requires standard errors above 0");
  const degrees = estimates.length - 1;
  const variances = standardErrors.map((error) => error ** 2);
  const fixed = weigh(estimates, variances, 0);
  const betweenVariance = pauleMandel(estimates, variances, fixed.q);
  const pooled = weigh(estimates, variances, betweenVariance);
  const standardError = Math.sqrt(Math.max(1, pooled.q / degrees) / pooled.total);
  const spread = Math.sqrt(betweenVariance + standardError ** 2);
  return {
    estimate: pooled.center,
    standardError,
    interval: intervalAround(pooled.center, studentFactor(level, degrees) * standardError),
    betweenVariance,
    q: fixed.q,
    qP: chiSquareUpperTail(fixed.q, degrees),
    heterogeneityShare: fixed.q > degrees ? (fixed.q - degrees) / fixed.q : 0,
    predictionInterval: degrees < 2 ? undefined : intervalAround(pooled.center, studentFactor(level, degrees - 1) * spread),
  };
}

/** τ² with Q(τ²) equal to its expectation, the degrees of freedom; 0 when Q(0) is below that already. */
function pauleMandel(estimates: readonly number[], variances: readonly number[], q: number): number {
  const degrees = estimates.length - 1;
  if (q <= degrees) return 0;
  const excess = (tau2: number): number => weigh(estimates, variances, tau2).q - degrees;
  // Σ (y − ȳ)² / τ² bounds Q from above, so Q has fallen below its expectation here.
  const range = Math.max(...estimates) - Math.min(...estimates);
  const most = (estimates.length * range ** 2) / degrees;
  return findRoot(excess, 0, most, most * 1e-13);
}

function weigh(estimates: readonly number[], variances: readonly number[], tau2: number): { center: number; total: number; q: number } {
  const weights = variances.map((variance) => 1 / (variance + tau2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const center = weights.reduce((sum, weight, i) => sum + weight * (estimates[i] ?? 0), 0) / total;
  return { center, total, q: weights.reduce((sum, weight, i) => sum + weight * ((estimates[i] ?? 0) - center) ** 2, 0) };
}

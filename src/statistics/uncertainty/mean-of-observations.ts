import { type Uncertain } from "./uncertain.js";

/**
 * The mean of repeated observations. Each observation is a base reading of its own, so two
 * quantities read in the same sitting, with the same ids, keep the correlation they showed.
 * The contribution of observation k is (x_k − mean)/√(n(n − 1)).
 *
 * Source: JCGM 100:2008, 4.2.3 (uncertainty of a mean), 5.2.3 (covariance of two means). Published.
 *
 * @param ids one id an observation, the same across quantities observed together
 */
export function meanOfObservations(ids: readonly string[], observations: readonly number[]): Uncertain {
  const n = observations.length;
  if (n < 2) throw new RangeError(`meanOfObservations requires at least 2 observations, got ${n}`);
  if (new Set(ids).size !== n) throw new RangeError("meanOfObservations requires one distinct id an observation");
  if (!observations.every(Number.isFinite)) throw new RangeError("meanOfObservations requires finite observations");
  const mean = observations.reduce((total, x) => total + x, 0) / n;
  const scale = Math.sqrt(n * (n - 1));
  const contributions = Object.fromEntries(observations.map((x, k) => [ids[k] ?? "", (x - mean) / scale]));
  return { value: mean, contributions };
}

import { meanDifference, poolRandomEffects, type PooledEffect } from "../statistics/index.js";
import { liftsOf, scoredAttributes } from "./season-lifts.js";
import { pooledSays } from "./pooled-says.js";
import type { AttributeReport, BatchReport, PooledReport } from "./types.js";

/** Fewer batches than this are shown, not pooled. */
export const LEAST_FOR_POOLING = 5;

interface Weighed {
  readonly tasting: PooledReport["tastings"][number];
  /** Absent for one taster, or where all differences are equal: there is nothing to weigh it by. */
  readonly standardError?: number;
}

/**
 * Every attribute scored before and after in the season: each batch's lift, and from five batches on
 * their pooled lift, weighted by the tasters' scatter, the batches' true lifts free to differ.
 *
 * @param batches in brew order
 * @returns by attribute, those of most batches first
 */
export function pooledReports(batches: readonly BatchReport[]): Record<string, PooledReport> {
  const weighed = scoredAttributes(batches).map((attribute) => ({ attribute, lifts: liftsOf(attribute, batches).map(({ batch, attribute: scored }) => weigh(batch, scored)) }));
  const pooled = weighed.filter(({ lifts }) => usable(lifts).length >= LEAST_FOR_POOLING).length;
  return Object.fromEntries(weighed.map(({ attribute, lifts }) => [attribute, pooledReport(attribute, lifts, pooled)]));
}

function weigh({ batch, slug }: BatchReport, { lift, tasters, pairs }: AttributeReport): Weighed {
  const tasting = { batch, slug, lift, tasters };
  if (pairs.length < 2) return { tasting };
  const { interval, standardDeviation } = meanDifference(pairs.map(([, before, after]) => after - before));
  if (interval === undefined) return { tasting };
  return { tasting: { ...tasting, ...interval }, standardError: standardDeviation / Math.sqrt(pairs.length) };
}

function usable(lifts: readonly Weighed[]): { readonly lift: number; readonly standardError: number }[] {
  return lifts.flatMap(({ tasting: { lift }, standardError }) => standardError === undefined ? [] : [{ lift, standardError }]);
}

/** @param asked how many attributes the season pools: an interval is called clear of 0 with all of them allowed for (Bonferroni) */
function pooledReport(attribute: string, lifts: readonly Weighed[], asked: number): PooledReport {
  const used = usable(lifts);
  const told = { attribute, tastings: lifts.map(({ tasting }) => tasting) };
  if (used.length < LEAST_FOR_POOLING) return { ...told, says: pooledSays({ ...told }, lifts.length - used.length, false) };
  const values = used.map(({ lift }) => lift);
  const errors = used.map(({ standardError }) => standardError);
  const strict = poolRandomEffects(values, errors, 1 - 0.05 / asked).interval;
  const result = { ...told, ...estimates(poolRandomEffects(values, errors)) };
  const clear = strict.low > 0 || strict.high < 0;
  return { ...result, clear, says: pooledSays(result, lifts.length - used.length, clear) };
}

function estimates({ estimate, interval, betweenVariance, heterogeneityShare, predictionInterval }: PooledEffect): Omit<PooledReport, "attribute" | "tastings" | "says"> {
  return {
    estimate, ...interval,
    between: Math.sqrt(betweenVariance),
    heterogeneity: heterogeneityShare,
    ...(predictionInterval === undefined ? {} : { nextLow: predictionInterval.low, nextHigh: predictionInterval.high }),
  };
}

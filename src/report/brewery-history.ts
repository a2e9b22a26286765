import { coverageFactor, linearFit, mean, predictionInterval, slopeInterval, standardDeviation, type LinearFit } from "../statistics/index.js";
import type { BatchReport } from "./types.js";

/** A mean over this brewery's own batches, with the range another batch would fall in nineteen times in twenty. */
export interface OwnMean {
  readonly batches: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** What this brewery's own batches show of beer lost for each kilogram of hops. */
export interface OwnHopLoss {
  readonly batches: number;
  readonly fit: LinearFit;
  readonly lowLPerKg: number;
  readonly highLPerKg: number;
}

/** Fewer batches than this say too little to stand beside common practice. */
const LEAST_BATCHES = 5;

/** Finished batches made on the same equipment; none where the batch names none, since any might be another brewery's. */
export function comparableBatches(equipment: string | undefined, batches: readonly BatchReport[]): BatchReport[] {
  return equipment === undefined ? [] : batches.filter((batch) => batch.status === "packaged" && batch.equipment === equipment);
}

/**
 * Mean of a figure over batches and its 95 % prediction interval for one more,
 * mean ± t s √(1 + 1/n): a textbook interval for one normal observation (from memory).
 */
export function ownMean(id: string, batches: readonly BatchReport[]): OwnMean | undefined {
  const values = batches.flatMap((batch) => batch.figures[id]?.value ?? []);
  const count = values.length;
  if (count < LEAST_BATCHES) return undefined;
  const middle = mean(values);
  const reach = coverageFactor(0.95, count - 1) * standardDeviation(values) * Math.sqrt(1 + 1 / count);
  return { batches: count, mean: middle, low: middle - reach, high: middle + reach };
}

/**
 * Total loss against hop mass over comparable batches: the slope is what a
 * kilogram of hops costs here, dumps and what is left in the vessel included.
 */
export function ownHopLoss(form: string, batches: readonly BatchReport[]): OwnHopLoss | undefined {
  const points = batches.flatMap((batch) => {
    const mass = batch.figures["dry-hop-mass"]?.value;
    const loss = batch.figures["loss-total"]?.value;
    const sameForm = batch.dryHops.every((hop) => hop.form === form);
    return mass === undefined || loss === undefined || !sameForm ? [] : [{ kg: mass / 1000, loss }];
  });
  const distinct = new Set(points.map((point) => point.kg)).size;
  if (points.length < LEAST_BATCHES || distinct < 3) return undefined;
  const fit = linearFit(points.map((point) => point.kg), points.map((point) => point.loss));
  const { low, high } = slopeInterval(fit);
  return { batches: points.length, fit, lowLPerKg: low, highLPerKg: high };
}

/** Loss to expect of one more batch with this mass of hops, L. */
export function expectedLoss(own: OwnHopLoss, massKg: number): { readonly value: number; readonly low: number; readonly high: number } {
  const { low, high } = predictionInterval(own.fit, massKg);
  return { value: own.fit.intercept + own.fit.slope * massKg, low: Math.max(0, low), high };
}

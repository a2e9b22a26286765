import { requireCount } from "../numerics/arguments.js";
import { type SeededGenerator } from "./seeded-generator.js";

/**
 * Williams square: orders in which every sample stands once in each place and follows every other
 * equally often. An even number of samples takes that many orders, an odd number twice as many.
 *
 * Source: Williams, Australian Journal of Scientific Research A 2 (1949); MacFie et al., Journal of
 * Sensory Studies 4 (1989). From memory; the algorithm and the square of six as published notes.
 *
 * @param samples 2 to 26
 * @returns orders of sample numbers from 0
 */
export function williamsSquare(samples: number): number[][] {
  requireCount("williamsSquare", "samples", samples, 2, 26);
  // 0, 1, n − 1, 2, n − 2, …
  const base = Array.from({ length: samples }, (_, place) => (place % 2 === 1 ? (place + 1) / 2 : (samples - place / 2) % samples));
  const rows = Array.from({ length: samples }, (_, shift) => base.map((sample) => (sample + shift) % samples));
  return samples % 2 === 0 ? rows : [...rows, ...rows.map((row) => row.toReversed())];
}

export interface SampleOrders {
  /** One a taster, sample numbers from 0. */
  readonly orders: readonly (readonly number[])[];
  /** Whether the tasters fill whole squares; if not, balance is partial. */
  readonly balanced: boolean;
}

/**
 * Deals the rows of Williams squares to tasters, rows and sample numbers shuffled. The first place
 * keeps its own effect: a dummy first sample helps (common practice).
 */
export function dealSampleOrders(samples: number, tasters: number, generator: SeededGenerator): SampleOrders {
  requireCount("dealSampleOrders", "tasters", tasters, 1);
  const square = williamsSquare(samples);
  const names = generator.shuffle(square[0] ?? []);
  const orders: number[][] = [];
  while (orders.length < tasters) {
    for (const row of generator.shuffle(square)) orders.push(row.map((sample) => names[sample] ?? 0));
  }
  return { orders: orders.slice(0, tasters), balanced: tasters % square.length === 0 };
}

import { dot } from "../numerics/sums.js";
import type { SeverityModel } from "./severity-model.js";

/** An entry's mean as if every judge had scored it, and what its variance is made of. */
export interface AdjustedMean {
  readonly height: number;
  readonly weights: readonly number[];
  /** The entry's own share of the residual variance: one over its scores. */
  readonly shares: number;
}

/** @throws RangeError when the entry has no score */
export function adjustedMean(model: SeverityModel, entry: string): AdjustedMean {
  const row = model.entries.get(entry);
  if (row === undefined) throw new RangeError(`adjustedMean: no scores for ${entry}`);
  return { height: row.mean - dot(row.coding, model.effects), weights: row.coding, shares: 1 / row.count };
}

import { requireFinite } from "../numerics/arguments.js";
import { midRanks } from "../samples/ties.js";

/** A complete table of ranks: one row a judge, one column a sample. */
export interface RankedTable {
  readonly judges: number;
  readonly samples: number;
  /** Ranked inside each row from 1, ties sharing mid-ranks. */
  readonly ranks: readonly (readonly number[])[];
  /** One a sample. */
  readonly rankSums: readonly number[];
}

/**
 * Ranks each judge's row.
 *
 * @param rows scores or ranks; every judge has every sample
 * @throws RangeError with fewer than 2 judges or samples, or with a missing cell
 */
export function rankRows(caller: string, rows: readonly (readonly number[])[]): RankedTable {
  const samples = rows[0]?.length ?? 0;
  if (rows.length < 2 || samples < 2) {
    throw new RangeError(`${caller} requires at least 2 judges and 2 samples, got ${rows.length} and ${samples}`);
  }
  for (const row of rows) {
    if (row.length !== samples) throw new RangeError(`${caller} requires every judge to have ${samples} samples, got ${row.length}`);
    requireFinite(caller, row);
  }
  const ranks = rows.map(midRanks);
  const rankSums = Array.from({ length: samples }, (_, j) => ranks.reduce((total, row) => total + (row[j] ?? 0), 0));
  return { judges: rows.length, samples, ranks, rankSums };
}

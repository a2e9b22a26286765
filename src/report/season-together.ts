import { varianceInflation } from "../statistics/index.js";
import { figureEntry } from "./figure-table.js";
import { LEAST_FOR_TREND } from "./season-trend.js";
import type { BatchReport, RelationReport } from "./types.js";

type Together = NonNullable<RelationReport["together"]>;

/** What a brewer sets in a dry hop: any of them may be what really did it. */
const SET_BY_BREWER = ["dry-hop-dose", "dry-hop-temperature", "dry-hop-contact"];

/** Above this, warn (common practice). */
const WARN_ABOVE = 5;

/**
 * What moved together with one setting over the same batches, so that its effect can't be told from
 * the other's: by variance inflation, 1 / (1 − r²) for two.
 *
 * @param x the figure on the axis
 * @param batches those of the relation
 */
export function movedTogether(x: string, batches: readonly BatchReport[]): Together {
  return SET_BY_BREWER.filter((other) => other !== x).flatMap((other): Together[number][] => {
    const inflation = inflationOf(x, other, batches);
    if (inflation === undefined || inflation <= WARN_ABOVE) return [];
    return [{ figure: other, title: figureEntry(other).title, ...(Number.isFinite(inflation) ? { inflation } : {}) }];
  });
}

function inflationOf(x: string, other: string, batches: readonly BatchReport[]): number | undefined {
  const pairs = batches.flatMap(({ figures }) => {
    const [one, two] = [figures[x]?.value, figures[other]?.value];
    return one === undefined || two === undefined ? [] : [[one, two] as const];
  });
  const columns = [pairs.map(([one]) => one), pairs.map(([, two]) => two)];
  if (pairs.length < LEAST_FOR_TREND || columns.some((column) => new Set(column).size < 2)) return undefined;
  return varianceInflation(columns)[0];
}

import { varianceInflation } from "../statistics/index.js";
import { SETTINGS } from "./season-axes.js";
import { GROUPINGS } from "./season-groupings.js";
import { LEAST_FOR_TREND } from "./season-trend.js";
import { uncapitalised } from "./season-words.js";
import type { BatchReport, TogetherReport } from "./types.js";

/** Above the first, warn; above the second, effects of settings that moved together are not told apart (common practice). */
const WARN_ABOVE = 5;
const REFUSE_ABOVE = 10;
/** A group with fewer batches inside or outside it says nothing of a setting. */
export const LEAST_IN_GROUP = 3;

/** One setting as numbers: itself where it is measured, 1 inside a group and 0 outside. */
interface Setting {
  readonly figure: string;
  readonly title: string;
  readonly valueOf: (batch: BatchReport) => number | undefined;
}

/**
 * What moved together with one setting over the same batches, so that its effect can't be told from
 * the other's: by variance inflation, 1 / (1 − r²) for two.
 *
 * @param x id of the setting on the axis, or of the grouping
 * @param valueOf what it is in numbers
 * @param batches those of the relation
 */
export function movedTogether(x: string, valueOf: Setting["valueOf"], batches: readonly BatchReport[]): TogetherReport[] {
  return settingsOf(batches).filter(({ figure }) => figure !== x).flatMap((other): TogetherReport[] => {
    const inflation = inflationOf(valueOf, other.valueOf, batches);
    if (inflation === undefined || inflation <= WARN_ABOVE) return [];
    return [{ figure: other.figure, title: other.title, ...(Number.isFinite(inflation) ? { inflation } : {}) }];
  });
}

function settingsOf(batches: readonly BatchReport[]): Setting[] {
  return [
    ...SETTINGS.map(({ id, title, valueOf }) => ({ figure: id, title, valueOf: (batch: BatchReport) => valueOf(batch)?.value })),
    ...GROUPINGS.flatMap(({ id, words, groupOf }) => {
      const names = [...new Set(batches.map(groupOf))].filter((name) => name !== undefined).sort();
      // Of two groups one is the other turned round.
      return (names.length === 2 ? names.slice(0, 1) : names).map((name) => ({
        figure: id, title: `${words} ${name}`,
        valueOf: (batch: BatchReport): number | undefined => {
          const group = groupOf(batch);
          return group === undefined ? undefined : Number(group === name);
        },
      })).filter((setting) => isSplit(batches.map(setting.valueOf)));
    }),
  ];
}

function isSplit(values: readonly (number | undefined)[]): boolean {
  const inside = values.filter((value) => value === 1).length;
  return inside >= LEAST_IN_GROUP && values.filter((value) => value === 0).length >= LEAST_IN_GROUP;
}

function inflationOf(one: Setting["valueOf"], other: Setting["valueOf"], batches: readonly BatchReport[]): number | undefined {
  const pairs = batches.flatMap((batch) => {
    const [x, y] = [one(batch), other(batch)];
    return x === undefined || y === undefined ? [] : [[x, y] as const];
  });
  const columns = [pairs.map(([x]) => x), pairs.map(([, y]) => y)];
  if (pairs.length < LEAST_FOR_TREND || columns.some((column) => new Set(column).size < 2)) return undefined;
  return varianceInflation(columns)[0];
}

/** Whether effects can't be split at all, beyond an inflation of ten or where one follows from the other. */
export function isRefused({ inflation }: TogetherReport): boolean {
  return inflation === undefined || inflation > REFUSE_ABOVE;
}

/** Titles as they stand inside a sentence. */
export function togetherNames(list: readonly TogetherReport[]): string[] {
  return list.map(({ title }) => uncapitalised(title));
}

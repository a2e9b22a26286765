import type { CompetitionRecord, SheetRow } from "../../records/index.js";
import type { JudgeScore } from "../../statistics/index.js";
import { remembered } from "../remembered.js";

/** A judge's total for one entry, by registration id, as first written down. */
export interface FlightScore extends JudgeScore {
  readonly flight: string;
}

/** A table without holes: those judges of a flight who scored all of its scored entries. */
export interface CompleteTable {
  readonly entries: readonly string[];
  readonly judges: readonly string[];
  /** One row an entry, one column a judge. */
  readonly rows: readonly (readonly number[])[];
}

export function totalOf({ sections }: SheetRow): number {
  return sections.reduce((sum, { points }) => sum + points, 0);
}

/** Registration ids by blind code. */
export const entryByCode = remembered((record: CompetitionRecord): ReadonlyMap<string, string> =>
  new Map(record.entries.flatMap(({ code, entry }) => (code === undefined ? [] : [[code, entry]]))));

/** Every judge's first score of every entry. The agreed scores aren't independent of each other, so agreement is never judged by them. */
export const flightScores = remembered((record: CompetitionRecord): readonly FlightScore[] => {
  const entries = entryByCode(record);
  return record.scores.flatMap((sheet) => {
    const entry = entries.get(sheet.code);
    return entry === undefined ? [] : [{ flight: sheet.flight, judge: sheet.judge, entry, score: totalOf(sheet) }];
  });
});

/** The judges with every entry of these scores; none where fewer than two of them, or of the entries. */
export function completeTable(scores: readonly JudgeScore[]): CompleteTable | undefined {
  const entries = distinct(scores.map(({ entry }) => entry));
  const byJudge = new Map<string, Map<string, number>>();
  for (const { judge, entry, score } of scores) {
    const own = byJudge.get(judge) ?? new Map<string, number>();
    byJudge.set(judge, own.set(entry, score));
  }
  const judges = [...byJudge].filter(([, own]) => own.size === entries.length);
  if (judges.length < 2 || entries.length < 2) return undefined;
  return {
    entries, judges: judges.map(([judge]) => judge),
    rows: entries.map((entry) => judges.map(([, own]) => own.get(entry) ?? 0)),
  };
}

export function distinct<Item>(items: readonly Item[]): Item[] {
  return [...new Set(items)];
}

/** Items by a key, in order of first appearance. */
export function groupedBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}

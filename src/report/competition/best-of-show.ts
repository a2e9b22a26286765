import { concordance } from "../../statistics/index.js";
import type { BestOfShowRow, CompetitionRecord } from "../../records/index.js";
import type { BestOfShowReport, PlaceReport } from "../types.js";
import { distinct, entryByCode } from "./flight-scores.js";
import { placesOf, type Placing } from "./places.js";

export interface BestOfShow {
  readonly report: BestOfShowReport;
  /** By registration id. */
  readonly places: ReadonlyMap<string, PlaceReport>;
}

/**
 * Best of show from the judges' ranks: the lowest sum of ranks stands first. No formula is published for it; this is
 * the plainest one, said on the page, and a place the club recorded stands over it.
 */
export function bestOfShowOf(record: CompetitionRecord, showsRanks: boolean): BestOfShow | undefined {
  const entries = entryByCode(record);
  const rows = record.bestOfShow.filter(({ code }) => entries.has(code));
  if (rows.length === 0) return undefined;
  const placings = allPlaced(distinct(rows.map(({ code }) => code)).map((code) => placingOf(code, rows)));
  const judges = distinct(rows.map(({ judge }) => judge));
  const places = new Map([...placesOf(placings, placings.length)].map(([code, place]) => [entries.get(code) ?? code, place]));
  const order = [...places].sort(([, a], [, b]) => a.place - b.place).map(([entry]) => entry);
  const agreed = concordanceOf(rows, judges);
  const decision = placings.find((placing) => placing.decision !== undefined)?.decision;
  const report: BestOfShowReport = {
    judges, entries: order,
    ...(showsRanks ? { ranks: order.map((entry) => rankedBy(entry, rows, entries)) } : {}),
    ...(decision === undefined ? {} : { decision }),
    ...(agreed === undefined ? {} : { concordance: agreed }),
    says: sayBestOfShow(rows, judges.length, placings),
  };
  return { report, places };
}

/** Unranked by a judge counts as one behind the last rank that judge gave. */
function placingOf(code: string, rows: readonly BestOfShowRow[]): Placing {
  const judges = distinct(rows.map(({ judge }) => judge));
  const sum = judges.reduce((total, judge) => {
    const own = rows.filter((row) => row.judge === judge);
    return total + (own.find((row) => row.code === code)?.rank ?? Math.max(...own.map(({ rank }) => rank)) + 1);
  }, 0);
  const told = rows.filter((row) => row.code === code);
  const place = told.find((row) => row.place !== undefined)?.place;
  const decision = told.find((row) => row.decision !== undefined)?.decision;
  return { code, merit: -sum, ...(place === undefined ? {} : { place }), ...(decision === undefined ? {} : { decision }) };
}

/** Where the club recorded some places only, the rest follow by their ranks. */
function allPlaced(placings: readonly Placing[]): readonly Placing[] {
  if (placings.every(({ place }) => place === undefined)) return placings;
  return placings.map((placing) => ({ ...placing, place: placing.place ?? 1 + placings.filter(({ merit }) => merit > placing.merit).length }));
}

type Ranked = NonNullable<BestOfShowReport["ranks"]>[number];

function rankedBy(entry: string, rows: readonly BestOfShowRow[], entries: ReadonlyMap<string, string>): Ranked {
  const ranks = rows.filter(({ code }) => entries.get(code) === entry).map(({ judge, rank }) => ({ judge, rank }));
  return { entry, ranks, sum: ranks.reduce((total, { rank }) => total + rank, 0) };
}

function concordanceOf(rows: readonly BestOfShowRow[], judges: readonly string[]): BestOfShowReport["concordance"] {
  const codes = distinct(rows.map(({ code }) => code));
  const table = judges.map((judge) => codes.map((code) => rows.find((row) => row.judge === judge && row.code === code)?.rank));
  const complete = table.filter((ranks): ranks is number[] => ranks.every((rank) => rank !== undefined));
  if (complete.length < judges.length || judges.length < 2 || codes.length < 3) return undefined;
  const { w, chanceFloor, p } = concordance(complete);
  return { w, chance: chanceFloor, p };
}

function sayBestOfShow(rows: readonly BestOfShowRow[], judges: number, placings: readonly Placing[]): string {
  const [best] = [...placings].sort((a, b) => b.merit - a.merit);
  const firsts = rows.filter(({ code, rank }) => code === best?.code && rank === 1).length;
  const recorded = placings.some(({ place }) => place !== undefined);
  const rule = recorded ? "The places are as the judges recorded them." : "The lowest sum of ranks stands first.";
  return `${judges} judges ranked ${placings.length} beers side by side. ${rule} ${firsts} of ${judges} put the one with the lowest sum first.`;
}

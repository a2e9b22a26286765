import { concordance, intraclassCorrelation, mean, type IntraclassEstimate } from "../../statistics/index.js";
import type { AgreementReport, EstimateReport, JudgePairReport } from "../types.js";
import { completeTable, distinct, type CompleteTable, type FlightScore } from "./flight-scores.js";
import { counted } from "../season-words.js";
import { points } from "./points.js";

/** Kendall's W says nothing of fewer entries than this. */
const FEWEST_RANKED = 3;

/**
 * How far the judges of one flight agreed before they talked.
 *
 * Judged by absolute agreement, judges as a sample of judges (ICC 2, Shrout & Fleiss 1979, published): the form for
 * scores that decide; the others hide severity.
 *
 * @param scores of one flight
 * @param agreeWithin points that two judges of one entry may be apart
 * @param named whether the entries may be named
 * @returns undefined with fewer than two judges or entries
 */
export function agreementOf(scores: readonly FlightScore[], agreeWithin: number, named: boolean): AgreementReport | undefined {
  const pairs = pairReports(scores, agreeWithin);
  if (pairs.length === 0) return undefined;
  const table = completeTable(scores);
  const apart = apartEntries(scores, agreeWithin);
  const classes = table === undefined ? {} : intraclass(table);
  const agreed = table === undefined || table.entries.length < FEWEST_RANKED ? undefined : concordanceOf(table);
  return {
    judges: table?.judges.length ?? distinct(scores.map(({ judge }) => judge)).length,
    entries: table?.entries.length ?? distinct(scores.map(({ entry }) => entry)).length,
    ...classes, ...(agreed === undefined ? {} : { concordance: agreed }),
    pairs, apart: apart.length, ...(named && apart.length > 0 ? { apartEntries: apart } : {}),
    says: sayAgreement(classes.single, apart.length, { agreeWithin, complete: table !== undefined }),
  };
}

function intraclass(table: CompleteTable): { single?: EstimateReport; average?: EstimateReport } {
  // Entries all with the same mean leave nothing to tell apart.
  if (new Set(table.rows.map((row) => mean(row))).size < 2) return {};
  const { single, average } = intraclassCorrelation(table.rows);
  return { single: estimate(single.agreement), average: estimate(average.agreement) };
}

function estimate({ estimate: value, interval }: IntraclassEstimate): EstimateReport {
  return { value, ...(interval === undefined ? {} : { low: interval.low, high: interval.high }) };
}

function concordanceOf({ rows, judges }: CompleteTable): AgreementReport["concordance"] {
  const byJudge = judges.map((_, column) => rows.map((row) => row[column] ?? 0));
  // A judge who gave every entry the same ranks nothing.
  if (byJudge.every((own) => new Set(own).size === 1)) return undefined;
  const { w, chanceFloor, p } = concordance(byJudge);
  return { w, chance: chanceFloor, p };
}

function pairReports(scores: readonly FlightScore[], agreeWithin: number): JudgePairReport[] {
  const judges = distinct(scores.map(({ judge }) => judge));
  return judges.flatMap((first, index) => judges.slice(index + 1).flatMap((second) => {
    const differences = differencesOf(scores, first, second);
    if (differences.length === 0) return [];
    const apart = differences.map(Math.abs);
    return [{
      judges: [first, second] as const, entries: differences.length,
      meanDifference: mean(differences), meanApart: mean(apart), mostApart: Math.max(...apart), within: apart.filter((points) => points <= agreeWithin).length,
    }];
  }));
}

function differencesOf(scores: readonly FlightScore[], first: string, second: string): number[] {
  const others = new Map(scores.filter(({ judge }) => judge === second).map(({ entry, score }) => [entry, score]));
  return scores.filter(({ judge }) => judge === first).flatMap(({ entry, score }) => {
    const other = others.get(entry);
    return other === undefined ? [] : [score - other];
  });
}

function apartEntries(scores: readonly FlightScore[], agreeWithin: number): string[] {
  return distinct(scores.map(({ entry }) => entry)).filter((entry) => {
    const own = scores.filter((score) => score.entry === entry).map(({ score }) => score);
    return Math.max(...own) - Math.min(...own) > agreeWithin;
  });
}

function sayAgreement(single: EstimateReport | undefined, apart: number, { agreeWithin, complete }: { readonly agreeWithin: number; readonly complete: boolean }): string {
  const distance = apart === 0
    ? `No entry had its judges more than ${points(agreeWithin)} points apart.`
    : `On ${counted(apart, "entry", "entries")} the judges were more than ${points(agreeWithin)} points apart before they talked.`;
  if (!complete) return `${distance} Too few judges scored every entry for an intraclass correlation.`;
  if (single === undefined) return `${distance} The entries' means don't differ, so agreement can't be set against their differences.`;
  const { low, high, value } = single;
  const range = low === undefined || high === undefined ? "" : `, 95 % interval ${share(low)} to ${share(high)}`;
  return `${distance} One judge's score carries ${share(value)} of the difference between entries${range}.${wide(low, high)}`;
}

/** An interval this wide settles little, and the page says so. */
const WIDE = 0.5;

function wide(low: number | undefined, high: number | undefined): string {
  return low !== undefined && high !== undefined && high - low > WIDE ? " A flight this small can't say it closer." : "";
}

const share = (value: number): string => value.toFixed(2).replace("-", "−");

import { requireFinite } from "../numerics/arguments.js";
import { solveLeastSquares } from "../numerics/householder.js";
import { sumOfSquares } from "../numerics/sums.js";
import { mean } from "../samples/sample.js";
import { type JudgeScore } from "./connected-groups.js";

/** The additive model score = entry + judge + error, fitted; judges' effects sum to zero. */
export interface SeverityModel {
  readonly judges: readonly string[];
  /** One effect a judge but the last, which is minus their sum. */
  readonly effects: readonly number[];
  /** How the effects vary together: see `varianceShare`. */
  readonly inverseTriangle: readonly (readonly number[])[];
  readonly residualVariance: number;
  readonly degreesOfFreedom: number;
  /** Sum of squares that the judges explain beyond the entries. */
  readonly explained: number;
  readonly entries: ReadonlyMap<string, EntryRow>;
}

export interface EntryRow {
  readonly count: number;
  readonly mean: number;
  /** Mean coding of the judges who scored it. */
  readonly coding: readonly number[];
}

/**
 * Fits the model by taking each entry's mean off its scores and its judges' coding; what is left
 * tells judges apart by the entries they share.
 *
 * Source: textbook two-way layout (Searle, Linear Models, ch. 7). From memory; checked against R lm.
 *
 * @param scores connected, no judge twice on one entry
 * @throws RangeError when no score is left over to show the scatter
 */
export function fitSeverity(scores: readonly JudgeScore[]): SeverityModel {
  requireFinite("judgeSeverity", scores.map((score) => score.score), 2);
  const judges = [...new Set(scores.map((score) => score.judge))];
  const codings = new Map(judges.map((judge) => [judge, codingOf(judges, judge)]));
  const entries = entryRows(scores, codings);
  const degreesOfFreedom = scores.length - entries.size - (judges.length - 1);
  if (judges.length < 2) throw new RangeError(`judgeSeverity requires at least 2 judges, got ${judges.length}`);
  if (degreesOfFreedom < 1) throw new RangeError("judgeSeverity requires more scores than entries and judges together need");
  const centred = scores.map(({ score, entry }) => score - (entries.get(entry)?.mean ?? 0));
  const columns = Array.from({ length: judges.length - 1 }, (_, j) =>
    scores.map(({ judge, entry }) => (codings.get(judge)?.[j] ?? 0) - (entries.get(entry)?.coding[j] ?? 0)),
  );
  const solved = solveLeastSquares(columns, centred);
  const residual = sumOfSquares(solved.residuals);
  return {
    judges,
    effects: solved.solution,
    inverseTriangle: solved.inverseTriangle,
    residualVariance: residual / degreesOfFreedom,
    degreesOfFreedom,
    explained: Math.max(0, sumOfSquares(centred) - residual),
    entries,
  };
}

/** Sum-to-zero coding: a 1 in the judge's own column, −1 in all for the last judge. */
function codingOf(judges: readonly string[], judge: string): number[] {
  const last = judge === judges.at(-1);
  return judges.slice(0, -1).map((other) => (last ? -1 : other === judge ? 1 : 0));
}

function entryRows(scores: readonly JudgeScore[], codings: ReadonlyMap<string, readonly number[]>): Map<string, EntryRow> {
  const byEntry = new Map<string, JudgeScore[]>();
  for (const score of scores) byEntry.set(score.entry, [...(byEntry.get(score.entry) ?? []), score]);
  return new Map([...byEntry].map(([entry, own]) => {
    if (new Set(own.map((score) => score.judge)).size < own.length) throw new RangeError(`judgeSeverity: a judge scored ${entry} twice`);
    const rows = own.map((score) => codings.get(score.judge) ?? []);
    const coding = (rows[0] ?? []).map((_, j) => mean(rows.map((row) => row[j] ?? 0)));
    return [entry, { count: own.length, mean: mean(own.map((score) => score.score)), coding }];
  }));
}

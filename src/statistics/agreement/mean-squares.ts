import { requireFinite } from "../numerics/arguments.js";
import { sum } from "../numerics/sums.js";
import { mean } from "../samples/sample.js";

/** Mean squares of a complete table of targets by judges. */
export interface MeanSquares {
  readonly targets: number;
  readonly judges: number;
  readonly betweenTargets: number;
  readonly betweenJudges: number;
  readonly withinTargets: number;
  /** What neither the target nor the judge's severity explains. */
  readonly residual: number;
}

/**
 * Two-way analysis of variance with one score a cell.
 *
 * Source: Shrout & Fleiss, Psychological Bulletin 86 (1979), table 3. Published.
 *
 * @param rows one a target, one column a judge
 */
export function computeMeanSquares(caller: string, rows: readonly (readonly number[])[]): MeanSquares {
  const targets = rows.length;
  const judges = rows[0]?.length ?? 0;
  if (targets < 2 || judges < 2) throw new RangeError(`${caller} requires at least 2 targets and 2 judges, got ${targets} and ${judges}`);
  for (const row of rows) {
    requireFinite(caller, row);
    if (row.length !== judges) throw new RangeError(`${caller} requires every target to have ${judges} scores, got ${row.length}`);
  }
  const grand = mean(rows.flat());
  const targetMeans = rows.map(mean);
  const judgeMeans = Array.from({ length: judges }, (_, j) => mean(rows.map((row) => row[j] ?? 0)));
  const within = sum(rows.flatMap((row, i) => row.map((score) => (score - (targetMeans[i] ?? 0)) ** 2)));
  const severity = targets * sum(judgeMeans.map((m) => (m - grand) ** 2));
  const unexplained = sum(
    rows.flatMap((row, i) => row.map((score, j) => (score - (targetMeans[i] ?? 0) - (judgeMeans[j] ?? 0) + grand) ** 2)),
  );
  // What rounding leaves of nothing is nothing.
  const rest = unexplained > 1e-20 * (within + severity) ? unexplained : 0;
  return {
    targets,
    judges,
    betweenTargets: (judges * sum(targetMeans.map((m) => (m - grand) ** 2))) / (targets - 1),
    betweenJudges: severity / (judges - 1),
    withinTargets: within / (targets * (judges - 1)),
    residual: rest / ((targets - 1) * (judges - 1)),
  };
}

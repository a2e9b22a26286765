import { bendTest, bentHeight, bentSlope, type BendTest } from "../statistics/index.js";
import { LEAST_FOR_SHOWN, type TrendFamily } from "./season-claims.js";
import { rateText } from "./season-quantities.js";
import { chanceText } from "./tasting-words.js";
import { SHOWN_AT } from "./tasting-limits.js";
import type { BendReport, RelationReport } from "./types.js";

/** Fewer different x can't show a curve. */
const LEAST_DISTINCT = 4;

/** A curve tested against the straight line. */
export interface Bend {
  readonly p: number;
  readonly test: BendTest;
  readonly xs: readonly number[];
}

/** @returns undefined where so few batches can't show a curve */
export function bendOf(xs: readonly number[], ys: readonly number[]): Bend | undefined {
  if (xs.length < LEAST_FOR_SHOWN || new Set(xs).size < LEAST_DISTINCT || new Set(ys).size < 2) return undefined;
  const test = bendTest(xs, ys);
  return { p: test.p, test, xs };
}

/** @param step what x is counted in: "g/L" */
export function bendReport(bend: Bend, family: TrendFamily, step: string): BendReport {
  const adjusted = family.get(bend) ?? 1;
  const claim = adjusted <= SHOWN_AT ? "shown" : "none";
  const ends = [Math.min(...bend.xs), Math.max(...bend.xs)].map((x) => ({ x, ...bentSlope(bend.test, x) }));
  return { p: bend.p, adjusted, claim, ends, says: bendSays(bend, claim === "shown", ends, adjusted, step) };
}

/** The curve with the interval of its mean, at the x of the straight line. */
export function bentLine(bend: Bend, line: NonNullable<RelationReport["line"]>): NonNullable<RelationReport["line"]> {
  return line.map(({ x }) => ({ x, ...bentHeight(bend.test, bend.xs, x) }));
}

function bendSays({ test }: Bend, shown: boolean, ends: BendReport["ends"], adjusted: number, step: string): string {
  if (!shown) return `No bend is shown: a curve fits no better than the straight line beyond chance (p ${chanceText(adjusted)} with the season's other questions allowed for).`;
  const [first, last] = ends.map(({ x, slope, low, high }) => `${rateText(slope, (high - low) / 2)} (${rateText(low, (high - low) / 2)} to ${rateText(high, (high - low) / 2)}) at ${rateText(x, 0)} ${step}`);
  const how = test.curvature < 0 ? "It is not a straight line but levels off" : "It is not a straight line but steepens";
  return `${how} (p ${chanceText(adjusted)} with the season's other questions allowed for): each extra ${step} is worth ${first ?? ""} and ${last ?? ""}.`;
}

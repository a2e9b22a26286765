import { friedmanTest } from "../ranking/friedman.js";

export interface Concordance {
  /** Kendall's W, 0 to 1, corrected for ties. */
  readonly w: number;
  /** What W is on average when judges rank at random: 1/judges. With two or three judges that is a lot. */
  readonly chanceFloor: number;
  /** Mean rank correlation over all pairs of judges. */
  readonly meanSpearman: number;
  /** Of judges ranking at random; exact for small panels. */
  readonly p: number;
  readonly exact: boolean;
}

/**
 * How far judges agree on the order of the samples.
 *
 * Source: Kendall & Babington Smith, Annals of Mathematical Statistics 10 (1939); W = χ²/(m(n − 1)).
 * From memory; checked on published examples.
 *
 * @param rows one a judge, scores or ranks, every judge with every sample
 */
export function concordance(rows: readonly (readonly number[])[]): Concordance {
  const { statistic, degreesOfFreedom, p, exact } = friedmanTest(rows);
  const judges = rows.length;
  const w = Math.min(1, statistic / (judges * degreesOfFreedom));
  return { w, chanceFloor: 1 / judges, meanSpearman: (judges * w - 1) / (judges - 1), p, exact };
}

import { requireFinite, requireOpenProbability } from "../numerics/arguments.js";
import { type Interval } from "../samples/interval.js";
import { median } from "../samples/sample.js";
import { equateRounding, tieSizes } from "../samples/ties.js";
import { balanceUnderNull } from "./signed-rank.js";

export interface HodgesLehmann {
  readonly estimate: number;
  /** Undefined when so few differences can't reach the level (five or fewer at 95 %). */
  readonly interval: Interval | undefined;
  /** Whether the interval holds its level exactly: no zeros and no equal sizes among the differences. */
  readonly exact: boolean;
}

/**
 * Typical difference after Hodges and Lehmann: the median of the means of all pairs (each
 * difference with itself too). The interval holds the shifts that the signed-rank test does not
 * reject.
 *
 * Source: Hodges & Lehmann, Annals of Mathematical Statistics 34 (1963); Hollander & Wolfe,
 * Nonparametric Statistical Methods, 3.2 and 3.3. From memory; checked against R wilcox.test.
 */
export function hodgesLehmann(differences: readonly number[], level = 0.95): HodgesLehmann {
  requireFinite("hodgesLehmann", differences);
  requireOpenProbability("hodgesLehmann", "level", level);
  const averages = pairAverages(differences).sort((a, b) => a - b);
  const outside = averagesOutside(differences.length, (1 - level) / 2);
  const low = averages[outside - 1];
  const high = averages[averages.length - outside];
  const sizes = equateRounding(differences).map(Math.abs);
  return {
    estimate: median(averages),
    interval: low === undefined || high === undefined ? undefined : { low, high },
    exact: !sizes.includes(0) && tieSizes(sizes).length === sizes.length,
  };
}

function pairAverages(differences: readonly number[]): number[] {
  return differences.flatMap((a, i) => differences.slice(i).map((b) => (a + b) / 2));
}

/** How many positive-rank sums from 0 up have together a chance of `tail` at most. */
function averagesOutside(count: number, tail: number): number {
  const ranks = Array.from({ length: count }, (_, i) => i + 1);
  const balance = balanceUnderNull(ranks);
  const full = (count * (count + 1)) / 2;
  let chance = 0;
  for (let sum = 0; sum <= full; sum += 1) {
    chance += balance.get(2 * sum - full) ?? 0;
    if (chance > tail + 1e-12) return sum;
  }
  return full;
}

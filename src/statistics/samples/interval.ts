/** A closed interval; `low` ≤ `high`. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** `center` ± `halfWidth`. */
export function intervalAround(center: number, halfWidth: number): Interval {
  return { low: center - halfWidth, high: center + halfWidth };
}

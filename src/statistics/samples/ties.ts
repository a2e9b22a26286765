/** Sizes of the groups of equal values, in rising order of the values; all ones when nothing is tied. */
export function tieSizes(values: readonly number[]): number[] {
  const sizes = new Map<number, number>();
  for (const value of values.toSorted((a, b) => a - b)) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  return [...sizes.values()];
}

/** Ranks from 1, equal values sharing the mean of the ranks they take up. */
export function midRanks(values: readonly number[]): number[] {
  const sorted = values.toSorted((a, b) => a - b);
  const ranks = new Map<number, number>();
  for (const [index, value] of sorted.entries()) {
    if (!ranks.has(value)) ranks.set(value, (index + 1 + sorted.lastIndexOf(value) + 1) / 2);
  }
  return values.map((value) => ranks.get(value) ?? 0);
}

/**
 * Values that differ from each other by rounding only (1 part in 10¹¹ of the largest) made equal to the
 * first of them, so that ties show; all others stay as they are.
 */
export function equateRounding(values: readonly number[]): number[] {
  const unit = values.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0) * 1e-11;
  const first = new Map<number, number>();
  return values.map((value) => {
    // + 0 turns −0 into 0.
    const place = (unit === 0 ? 0 : Math.round(value / unit)) + 0;
    const known = place === 0 ? 0 : (first.get(place) ?? value);
    first.set(place, known);
    return known;
  });
}

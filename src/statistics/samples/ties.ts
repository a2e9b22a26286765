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

/** Values that differ from each other by rounding only (1 part in 10¹¹ of the largest) made equal, so that ties show. */
export function equateRounding(values: readonly number[]): number[] {
  const unit = values.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0) * 1e-11;
  // + 0 turns −0 into 0.
  return unit === 0 ? values.map(() => 0) : values.map((value) => Math.round(value / unit) * unit + 0);
}

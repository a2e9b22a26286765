/**
 * What every function of this folder asks of its arguments. A wrong number throws here, with the
 * caller's name in the sentence, so that no NaN travels further.
 */

/** @throws RangeError unless every value is a finite number and there are at least `least` of them */
export function requireFinite(caller: string, values: readonly number[], least = 1): void {
  if (values.length < least) throw new RangeError(`${caller} requires at least ${least} values, got ${values.length}`);
  const bad = values.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0) throw new RangeError(`${caller} requires finite numbers, got ${values[bad]} at position ${bad}`);
}

/** @throws RangeError unless `count` is a whole number from `low` to `high` */
export function requireCount(caller: string, name: string, count: number, low = 0, high = Number.MAX_SAFE_INTEGER): void {
  if (Number.isSafeInteger(count) && count >= low && count <= high) return;
  const upTo = high === Number.MAX_SAFE_INTEGER ? "" : ` to ${high}`;
  throw new RangeError(`${caller} requires ${name} to be a whole number from ${low}${upTo}, got ${count}`);
}

/** @throws RangeError unless 0 < `probability` < 1 */
export function requireOpenProbability(caller: string, name: string, probability: number): void {
  if (probability > 0 && probability < 1) return;
  throw new RangeError(`${caller} requires ${name} to lie between 0 and 1, got ${probability}`);
}

/** @throws RangeError unless both lists have the same length */
export function requireSameLength(caller: string, first: readonly unknown[], second: readonly unknown[]): void {
  if (first.length === second.length) return;
  throw new RangeError(`${caller} requires lists of equal length, got ${first.length} and ${second.length}`);
}

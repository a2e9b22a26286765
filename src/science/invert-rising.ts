/** Bracket width, relative to x, at which two candidates are one number. */
const sameNumber = 4e-16;
const mostSteps = 100;

/**
 * The x for which a rising function gives `target`: false position in its Illinois form, which
 * never leaves the bracket and takes about ten evaluations on the smooth relations here.
 *
 * Source: Dowell & Jarratt, "A modified regula falsi method", BIT 11:168 (1971); from memory.
 *
 * @param rising strictly rising and continuous between `low` and `high`
 * @throws RangeError when `target` isn't reached between `low` and `high`
 * @example invertRising((x) => x * x, 2, { low: 1, high: 2 }) is the square root of 2
 */
export function invertRising(
  rising: (x: number) => number,
  target: number,
  bounds: { readonly low: number; readonly high: number },
): number {
  let { low, high } = bounds;
  let below = rising(low) - target;
  let above = rising(high) - target;
  if (!(below <= 0 && above >= 0)) throw new RangeError(`invertRising: ${target} isn't reached between ${low} and ${high}`);
  if (below === 0) return low;
  for (let step = 0, movedLow: boolean | undefined; step < mostSteps && high - low > sameNumber * Math.abs(high); step += 1) {
    const x = high - (above * (high - low)) / (above - below);
    const miss = rising(x) - target;
    if (miss === 0 || x <= low || x >= high) return x;
    if (miss < 0) {
      // An end that stays put twice running is weighed half, so the other side moves too.
      if (movedLow === true) above /= 2;
      [low, below, movedLow] = [x, miss, true];
    } else {
      if (movedLow === false) below /= 2;
      [high, above, movedLow] = [x, miss, false];
    }
  }
  return high;
}

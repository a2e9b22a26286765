/** An axis: its ends, a little beyond the values, and the rounded values that are marked between them. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** Decimals that tell one tick from the next. */
  readonly decimals: number;
}

export interface ScaleOptions {
  /** No step below this one: the last digit that the readings have. */
  readonly smallestStep?: number;
  /** No axis shorter than this, so that noise alone doesn't fill it. */
  readonly smallestRange?: number;
  /** Begin at 0 where that costs the values less than a third of the axis. */
  readonly fromZero?: boolean;
}

/** Room beyond the outermost values, as a share of their range. */
const PADDING = 0.06;

/**
 * Ends that hold all values with a little room, and ticks at multiples of 1, 2 or 5 × 10ⁿ between them.
 * Values that (nearly) agree stand in the middle of the shortest axis that makes sense.
 *
 * @param values at least one, finite
 * @param wanted about how many steps the axis should have
 * @throws RangeError when there is no value
 */
export function computeScale(values: readonly number[], wanted: number, options: ScaleOptions = {}): Scale {
  if (values.length === 0) throw new RangeError("computeScale requires at least one value, got 0");
  const least = values.reduce((a, b) => Math.min(a, b));
  const most = values.reduce((a, b) => Math.max(a, b));
  const isZeroBased = options.fromZero === true && least >= 0 && most > 0 && least < most * 2 / 3;
  const [low, high] = isZeroBased ? [0, most * (1 + PADDING)] : widened(least, most, options);
  const smallest = options.smallestStep ?? 0;
  return marked(low, high, Math.max(smallest, roundStep((high - low) / wanted)));
}

function widened(least: number, most: number, { smallestStep = 0, smallestRange = 0 }: ScaleOptions): [number, number] {
  const agree = most - least <= Math.abs(most) * 1e-9;
  const shortest = Math.max(smallestRange, 2 * smallestStep, agree && smallestRange === 0 ? Math.abs(most) * 0.2 : 0);
  const length = Math.max((most - least) * (1 + 2 * PADDING), shortest) || 2;
  const middle = (least + most) / 2;
  return [middle - length / 2, middle + length / 2];
}

/** Steps of an axis of days: quarters of a day, days, weeks. */
const DAY_STEPS = [0.05, 0.1, 0.25, 0.5, 1, 2, 5, 7, 14, 28, 56, 112, 224, 365] as const;

/** Ticks of an axis of days, about `wanted` of them, between its ends, which stay where they are. */
export function dayTicks(low: number, high: number, wanted: number): readonly number[] {
  const step = DAY_STEPS.find((each) => (high - low) / each <= wanted) ?? roundStep((high - low) / wanted);
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step + 0);
}

function marked(low: number, high: number, step: number): Scale {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  const ticks = Array.from({ length: Math.max(0, count) }, (_, index) => Number(((first + index) * step).toFixed(decimals)) + 0);
  return { low, high, ticks, decimals };
}

/** The round number nearest to a step, by ratio. */
function roundStep(raw: number): number {
  const power = 10 ** Math.floor(Math.log10(raw) + 1e-9);
  const lead = raw / power;
  return power * (lead < Math.SQRT2 ? 1 : lead < Math.sqrt(10) ? 2 : lead < Math.sqrt(50) ? 5 : 10);
}

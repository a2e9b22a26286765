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
  /** Begin at 0 where that costs the values less than a third of the axis. */
  readonly fromZero?: boolean;
}

/** Room beyond the outermost values, as a share of their range. */
const PADDING = 0.06;

/**
 * Ends that hold all values with a little room, and ticks at multiples of 1, 2 or 5 × 10ⁿ between them.
 * Equal values get one step of room on either side.
 *
 * @param values at least one, finite
 * @param wanted about how many steps the axis should have
 * @throws RangeError when there is no value
 */
export function computeScale(values: readonly number[], wanted: number, options: ScaleOptions = {}): Scale {
  if (values.length === 0) throw new RangeError("computeScale requires at least one value, got 0");
  const least = values.reduce((a, b) => Math.min(a, b));
  const most = values.reduce((a, b) => Math.max(a, b));
  const smallest = options.smallestStep ?? 0;
  const isZeroBased = options.fromZero === true && least >= 0 && most > 0 && least < most * 2 / 3;
  const range = most - (isZeroBased ? 0 : least);
  const room = range > Math.abs(most) * 1e-12 ? range * PADDING : Math.max(smallest, Math.abs(most) * 1e-3 || 1);
  const low = isZeroBased ? 0 : least - room;
  const high = most + room;
  return marked(low, high, roundStep(Math.max(smallest, (high - low) / wanted)));
}

/** Steps of an axis of days: quarters of a day, days, weeks. */
const DAY_STEPS = [0.25, 0.5, 1, 2, 5, 7, 14, 28, 56, 112, 224, 365] as const;

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

function roundStep(raw: number): number {
  const power = 10 ** Math.floor(Math.log10(raw));
  const lead = raw / power;
  return power * (lead <= 1.0001 ? 1 : lead <= 2.0001 ? 2 : lead <= 5.0001 ? 5 : 10);
}

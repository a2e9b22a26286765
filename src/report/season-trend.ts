import { kendall, linearFit, slopeInterval, theilSen, type LinearFit } from "../statistics/index.js";

/** Fewer batches than this show no trend, whatever they look like (recommendation for small series). */
export const LEAST_FOR_TREND = 6;

/** Beyond so many batches one odd one hardly moves the fitted line either. */
const MOST_FOR_ROBUST = 30;

/** One thing against another over a season's batches, fitted and tested. */
export interface Trend {
  readonly n: number;
  readonly fit: LinearFit;
  readonly slope: number;
  /** 95 % interval of the slope, by least squares. */
  readonly low: number;
  readonly high: number;
  /** Kendall, two-sided. */
  readonly p: number;
  readonly exact: boolean;
  /** Theil–Sen, with its interval where so few batches allow one; of small seasons only. */
  readonly robust?: { readonly slope: number; readonly low?: number; readonly high?: number };
}

/**
 * Fits a line and tests the order. The line and its interval say how much, Kendall's test says
 * whether: it needs no straight line and one odd batch hardly moves it.
 *
 * @returns undefined under six points, and where all x or all y are equal: there is no slope to speak of
 */
export function trendOf(x: readonly number[], y: readonly number[]): Trend | undefined {
  if (x.length < LEAST_FOR_TREND || new Set(x).size < 2 || new Set(y).size < 2) return undefined;
  const fit = linearFit(x, y);
  const { p, exact } = kendall(x, y);
  const found = { n: x.length, fit, slope: fit.slope, ...slopeInterval(fit), p, exact };
  if (x.length > MOST_FOR_ROBUST) return found;
  const robust = theilSen(x, y);
  return { ...found, robust: { slope: robust.slope, ...robust.interval } };
}

import { requireCount, requireFinite } from "../numerics/arguments.js";
import { mean } from "../samples/sample.js";

/** d2 for ranges of two: mean moving range over sigma. */
const divisors = { exact: 2 / Math.sqrt(Math.PI), rounded: 1.128 } as const;
/** 1 + 3·d3/d2 for ranges of two. */
const rangeLimitFactor = 1 + 3 * Math.sqrt(Math.PI / 2 - 1);
const runLength = 8;
/** Common practice: fewer baseline points give no limits, or provisional ones. */
const leastForLimits = 8;
const leastForSettledLimits = 15;

export interface ChartSignal {
  /** Position of the point from 0; of the run's last point for a run. */
  readonly index: number;
  readonly rule: "beyond-limit" | "run-of-eight";
  readonly side: "above" | "below";
}

export interface IndividualsChart {
  readonly center: number;
  readonly sigma: number;
  readonly upper: number;
  readonly lower: number;
  /** One fewer than the values. */
  readonly movingRanges: readonly number[];
  /** Of the baseline. */
  readonly meanMovingRange: number;
  readonly movingRangeUpper: number;
  /** The d2 used: 2/√π = 1.12838, or the printed 1.128. */
  readonly divisor: number;
  /** "none" below 8 baseline points (the limits are then not to be drawn), "provisional" below 15. */
  readonly standing: "none" | "provisional" | "set";
  /** Empty while the standing is "none". */
  readonly signals: readonly ChartSignal[];
}

export interface ChartOptions {
  /** Limits come from this many first points; all of them unless said. */
  readonly baseline?: number;
  readonly divisor?: keyof typeof divisors;
}

/**
 * Individuals and moving-range chart: limits at mean ± 3 × (mean moving range / d2). The moving
 * range, not the overall scatter, sets them: drift would widen those. Signals: a point beyond a
 * limit, and eight in a row on one side of the centre; other run rules cost false alarms
 * (all four of Western Electric: one in 92 points, against one in 370).
 *
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2; Western Electric, Statistical Quality Control
 * Handbook (1956) for the run of eight. Published. The handbook prints with d2 = 1.128;
 * the exact constant is the default here and moves its limits by 0.002.
 *
 * @param values in order of time, at least 2
 */
export function individualsChart(values: readonly number[], options: ChartOptions = {}): IndividualsChart {
  requireFinite("individualsChart", values, 2);
  const baseline = options.baseline ?? values.length;
  requireCount("individualsChart", "baseline", baseline, 2, values.length);
  const divisor = divisors[options.divisor ?? "exact"];
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - (values[i] ?? 0)));
  const meanMovingRange = mean(movingRanges.slice(0, baseline - 1));
  const center = mean(values.slice(0, baseline));
  const sigma = meanMovingRange / divisor;
  const limits = { upper: center + 3 * sigma, lower: center - 3 * sigma };
  const standing = baseline < leastForLimits ? "none" : baseline < leastForSettledLimits ? "provisional" : "set";
  return {
    center,
    sigma,
    ...limits,
    movingRanges,
    meanMovingRange,
    movingRangeUpper: rangeLimitFactor * meanMovingRange,
    divisor,
    standing,
    signals: standing === "none" ? [] : findSignals(values, center, limits),
  };
}

function findSignals(values: readonly number[], center: number, limits: { readonly upper: number; readonly lower: number }): ChartSignal[] {
  return values.flatMap((value, index) => {
    const signals: ChartSignal[] = [];
    const side = value > center ? "above" : "below";
    if (value > limits.upper || value < limits.lower) signals.push({ index, rule: "beyond-limit", side });
    if (endsRun(values, index, center)) signals.push({ index, rule: "run-of-eight", side });
    return signals;
  });
}

/** A point on the centre line belongs to neither side and ends a run. */
function endsRun(values: readonly number[], index: number, center: number): boolean {
  if (index + 1 < runLength) return false;
  const sides = values.slice(index + 1 - runLength, index + 1).map((value) => Math.sign(value - center));
  return sides.every((side) => side === 1) || sides.every((side) => side === -1);
}

import type { StyleRow } from "../../report/index.js";

/** Where the marks of a style's band stand, in px of a sketch 120 px wide. */
export interface BandSketch {
  readonly bandFrom: number;
  readonly bandTo: number;
  readonly point?: number;
  readonly interval?: readonly [number, number];
}

const WIDTH = 120;
const EDGE = 4;

/** Lays out the style's range and the batch's interval on one scale that holds both with a little air. */
export function bandSketch({ low, high, value, plusMinus = 0 }: StyleRow): BandSketch {
  const ends = value === undefined ? [low, high] : [low, high, value - plusMinus, value + plusMinus];
  const from = Math.min(...ends);
  const span = Math.max(...ends) - from || 1;
  const air = (high - low) * 0.15;
  const place = (at: number): number =>
    Math.round((EDGE + ((at - from + air) / (span + 2 * air)) * (WIDTH - 2 * EDGE)) * 10) / 10;
  return {
    bandFrom: place(low), bandTo: place(high),
    ...(value === undefined ? {} : { point: place(value), interval: [place(value - plusMinus), place(value + plusMinus)] as const }),
  };
}

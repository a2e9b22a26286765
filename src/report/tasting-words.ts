import { formatNumber } from "../units/index.js";

/**
 * Numbers of tastings in words: counts, shares, chances, and how far a score moved.
 * They follow one rule: the count, the exact p and the interval, never a star.
 */

/** Where no interval says how many decimals a score bears: tasters score in steps of about half a point. */
const SCORE_STEP = 0.5;

/** 0.667 → `67 %` */
export function shareText(share: number): string {
  return `${formatNumber(100 * share, "count").value} %`;
}

/** `43 to 95 %` */
export function shareSpan({ low, high }: { readonly low: number; readonly high: number }): string {
  return `${formatNumber(100 * low, "count").value} to ${shareText(high)}`;
}

/** A chance to two digits: `0.0039`, `under 0.001`. */
export function chanceText(p: number): string {
  if (p < 0.001) return "under 0.001";
  return p > 0.999 ? "over 0.999" : `${Number(p.toPrecision(2))}`;
}

/** How far a score moved: `+1.6 (0.5 to 2.7)`, rounded to what the interval supports. */
export function movedText(lift: number, low?: number, high?: number): string {
  const halfWidth = low === undefined || high === undefined ? undefined : (high - low) / 2;
  const text = scoreText(lift, halfWidth);
  const signed = Number(text) > 0 ? `+${text}` : text;
  return low === undefined || high === undefined ? signed
    : `${signed} (${scoreText(low, halfWidth)} to ${scoreText(high, halfWidth)})`;
}

/** A score on the scale from 0 to 10, or a distance on it. */
export function scoreText(score: number, halfWidth?: number): string {
  return formatNumber(score, "points", halfWidth === undefined || halfWidth === 0 ? SCORE_STEP : halfWidth).value;
}

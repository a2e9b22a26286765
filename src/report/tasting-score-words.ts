import { formatNumber } from "../units/index.js";

/** Where no interval says how many decimals a score bears: tasters score in steps of about half a point. */
const SCORE_STEP = 0.5;

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

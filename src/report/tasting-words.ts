import { formatNumber } from "../units/index.js";

/**
 * Numbers of tastings in words: counts, shares, chances, and how far a score moved.
 * They follow one rule: the count, the exact p and the interval, never a star.
 */

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

import { decimalsFor, formatNumber } from "../units/index.js";

/** `19.0 ± 0.1 L`, rounded to what the half-width supports. */
export function quantityText(value: number, unit: string, plusMinus?: number): string {
  const text = formatNumber(value, unit, plusMinus);
  const number = text.plusMinus === undefined ? text.value : `${text.value} ± ${text.plusMinus}`;
  return withUnit(number, text.unit);
}

/** A number and its unit, where it has one. */
export function withUnit(number: string, unit: string): string {
  return unit === "" ? number : `${number} ${unit}`;
}

/** Beyond so many decimals a change for each step is of no use to a brewer. */
const MOST_DECIMALS = 6;

/**
 * A change for each step of something else. How the trade writes the quantity itself says nothing of
 * how small such a change may be, so only its interval decides the decimals.
 *
 * @param halfWidth of the interval at 95 %; 0 where it has none
 */
export function rateText(rate: number, halfWidth: number): string {
  const text = halfWidth > 0 ? Math.abs(rate).toFixed(Math.min(MOST_DECIMALS, decimalsFor(halfWidth))) : `${Number(Math.abs(rate).toPrecision(3))}`;
  return rate < 0 && Number(text) !== 0 ? `−${text}` : text;
}

import { formatNumber } from "../units/index.js";

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

import { printedNumber, printedUnit, usualDecimals } from "./print-number.js";
import { US_UNIT } from "./us-units.js";

/** Which units come first on a page; the other system follows in brackets. */
export type UnitSystem = "metric" | "us";

/** A number ready to print. */
export interface FormattedNumber {
  /** The value with a true minus sign, rounded to what its uncertainty supports: `5.09`. */
  readonly value: string;
  /** The half-width at 95 %, to the same decimals: `0.21`; absent when not known. */
  readonly plusMinus?: string;
  /** The unit as printed: `°C`, `g/L`; empty for specific gravity and counts. */
  readonly unit: string;
}

/**
 * Decimals that an uncertainty supports: its half-width keeps two digits when
 * they begin with 1 or 2, else one (GUM 7.2.6 allows at most two).
 *
 * @param plusMinus half-width, greater than 0
 */
export function decimalsFor(plusMinus: number): number {
  const exponent = Math.floor(Math.log10(plusMinus));
  const leading = plusMinus / 10 ** exponent;
  return Math.max(0, (leading < 2.95 ? 1 : 0) - exponent);
}

/**
 * Rounds a value to what its uncertainty supports and names its unit for print,
 * with at most one decimal more than the trade writes: a half-width that
 * vanishes there isn't printed.
 *
 * @param value in `unit`
 * @param unit the unit of a figure, as in the figures table
 * @param plusMinus half-width at 95 %, same unit; 0 or undefined when not known
 */
export function formatNumber(value: number, unit: string, plusMinus?: number): FormattedNumber {
  const usual = usualDecimals(unit) + (plusMinus === undefined && isHalfPoint(value, unit) ? 1 : 0);
  const decimals = plusMinus !== undefined && plusMinus > 0 ? Math.min(usual + 1, decimalsFor(plusMinus)) : usual;
  const halfWidth = printedNumber(plusMinus ?? 0, decimals);
  return { value: printedNumber(value, decimals), unit: printedUnit(unit), ...(Number(halfWidth) > 0 ? { plusMinus: halfWidth } : {}) };
}

/** Gravity is written to half a point by those who read it so: 1.0105 isn't 1.010. */
function isHalfPoint(value: number, unit: string): boolean {
  return unit === "SG" && Math.abs(Math.abs((value * 1000) % 1) - 0.5) < 1e-6;
}

/** The same figure in US units, or undefined where the trade writes it alike everywhere. */
export function inUsUnits(value: number, unit: string, plusMinus?: number): FormattedNumber | undefined {
  const pairing = US_UNIT[unit];
  if (pairing === undefined) return undefined;
  return formatNumber(pairing.convert(value), pairing.us, plusMinus === undefined ? undefined : pairing.convertDifference(plusMinus));
}

/** A difference (not a point on a scale) in US units: 2 °C apart is 3.6 °F apart. */
export function differenceInUsUnits(difference: number, unit: string, plusMinus?: number): FormattedNumber | undefined {
  const pairing = US_UNIT[unit];
  if (pairing === undefined) return undefined;
  return formatNumber(pairing.convertDifference(difference), pairing.us, plusMinus === undefined ? undefined : pairing.convertDifference(plusMinus));
}

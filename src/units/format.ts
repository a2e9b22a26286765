import { differenceFromOwnUnit, fromOwnUnit } from "./unit-table.js";

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

interface Pairing {
  readonly us: string;
  /** From the table of units, or a scale for units that exist on pages only. */
  readonly convert: (value: number) => number;
  readonly convertDifference: (difference: number) => number;
}

const byTable = (unit: string): Pairing => ({
  us: unit,
  convert: (value) => fromOwnUnit(value, unit),
  convertDifference: (difference) => differenceFromOwnUnit(difference, unit),
});
const byScale = (us: string, scale: number): Pairing => ({
  us, convert: (value) => value * scale, convertDifference: (difference) => difference * scale,
});

const KILOCALORIE_KJ = 4.184; // thermochemical calorie, exact by definition
const TWELVE_FLUID_OUNCES_ML = 354.8823549;

/** The US unit shown beside a figure's own; figures without an entry are written alike everywhere. */
const US_UNIT: Readonly<Record<string, Pairing>> = {
  g: byTable("oz"),
  kg: byScale("lb", 1 / 0.45359237),
  L: byTable("gal"),
  C: byTable("F"),
  kPa: byTable("psi"),
  "g/L": byTable("oz/gal"),
  EBC: byTable("SRM"),
  "L/h": byTable("gal/h"),
  m: byTable("ft"),
  "C/h": byScale("F/h", 9 / 5),
  "kJ/100mL": byScale("kcal/12 fl oz", TWELVE_FLUID_OUNCES_ML / 100 / KILOCALORIE_KJ),
};

const PRINTED: Readonly<Record<string, string>> = {
  SG: "", C: "°C", F: "°F", "C/h": "°C/h", "F/h": "°F/h", P: "°P", Bx: "°Bx", "kJ/100mL": "kJ/100 mL",
  "mL/100g": "mL/100 g", "count": "",
};

/** Decimals where no uncertainty says how many: what the trade writes. */
const DECIMALS: Readonly<Record<string, number>> = {
  SG: 3, P: 1, "%": 1, IBU: 0, EBC: 0, SRM: 0, L: 1, gal: 2, g: 0, oz: 2, kg: 2, lb: 2, C: 1, F: 0, h: 0, d: 1,
  kPa: 0, psi: 1, vol: 2, "g/L": 1, "oz/gal": 2, "mL/hL": 1, "mg/L": 2, "C/h": 1, "F/h": 1, "L/h": 1, "gal/h": 2,
  "kJ/100mL": 0, "kcal/12 fl oz": 0, count: 0, pH: 2, m: 0, ft: 0,
};

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
  const usual = DECIMALS[unit] ?? 2;
  const decimals = plusMinus !== undefined && plusMinus > 0 ? Math.min(usual + 1, decimalsFor(plusMinus)) : usual;
  const halfWidth = toFixed(plusMinus ?? 0, decimals);
  return { value: toFixed(value, decimals), unit: printedUnit(unit), ...(Number(halfWidth) > 0 ? { plusMinus: halfWidth } : {}) };
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

/** How a unit is written on a page: `C` → `°C`. */
export function printedUnit(unit: string): string {
  return PRINTED[unit] ?? unit;
}

function toFixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const isZero = Number(text) === 0;
  return value < 0 && !isZero ? `−${text}` : text;
}

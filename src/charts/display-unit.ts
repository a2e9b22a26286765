import { differenceFromOwnUnit, formatNumber, fromOwnUnit, printedUnit, UNITS, type UnitSystem } from "../units/index.js";

/** A figure's unit as a chart shows it, with the conversion into it. */
export interface DisplayUnit {
  /** As printed: "°C"; empty for specific gravity and counts. */
  readonly label: string;
  readonly convert: (value: number) => number;
  /** Rounded to what its uncertainty supports, with the unit: "19.0 ± 0.1 L". */
  readonly format: (value: number, plusMinus?: number) => string;
  /** The same without the unit, for tables and axes. */
  readonly formatValue: (value: number, plusMinus?: number) => string;
  readonly convertDifference: (difference: number) => number;
}

/** Units with a US counterpart that charts draw in; the rest are written alike everywhere. */
const US: Readonly<Record<string, string>> = { C: "F", L: "gal", g: "oz", "g/L": "oz/gal", kPa: "psi", EBC: "SRM", "L/h": "gal/h", m: "ft" };

/** How a value of the figures table is drawn: in its own unit, or in the US one where the club puts those first. */
export function displayUnit(unit: string, system: UnitSystem = "metric"): DisplayUnit {
  const us = system === "us" ? US[unit] : undefined;
  const code = us !== undefined && UNITS[us] !== undefined ? us : unit;
  const convert = (value: number): number => code === unit ? value : fromOwnUnit(value, code);
  const convertDifference = (difference: number): number => code === unit ? difference : differenceFromOwnUnit(difference, code);
  const formatValue = (value: number, plusMinus?: number): string => {
    const text = formatNumber(convert(value), code, plusMinus === undefined ? undefined : convertDifference(plusMinus));
    return text.plusMinus === undefined ? text.value : `${text.value} ± ${text.plusMinus}`;
  };
  const label = printedUnit(code);
  const spaced = label === "" ? "" : label === "%" ? " %" : ` ${label}`;
  return { label, convert, convertDifference, formatValue, format: (value, plusMinus) => formatValue(value, plusMinus) + spaced };
}

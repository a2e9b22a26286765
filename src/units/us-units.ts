import { differenceFromOwnUnit, fromOwnUnit } from "./unit-table.js";

/** The US unit written beside a metric one. */
export interface UsUnit {
  readonly us: string;
  /** From the table of units, or a scale for units that exist on pages only. */
  readonly convert: (value: number) => number;
  readonly convertDifference: (difference: number) => number;
}

const byTable = (unit: string): UsUnit => ({
  us: unit,
  convert: (value) => fromOwnUnit(value, unit),
  convertDifference: (difference) => differenceFromOwnUnit(difference, unit),
});
const byScale = (us: string, scale: number): UsUnit => ({
  us, convert: (value) => value * scale, convertDifference: (difference) => difference * scale,
});

const KILOCALORIE_KJ = 4.184; // thermochemical calorie, exact by definition
const FLUID_OUNCE_ML = 29.5735295625;
const POUND_KG = 0.45359237;
const GALLON_L = 3.785411784;
const INCH_MM = 25.4;
const PSI_BAR = 0.06894757293168361;

/** By the metric unit, as figures and sentences name it; a unit without an entry is written alike everywhere. */
export const US_UNIT: Readonly<Record<string, UsUnit>> = {
  g: byTable("oz"),
  kg: byScale("lb", 1 / POUND_KG),
  L: byTable("gal"),
  mL: byScale("fl oz", 1 / FLUID_OUNCE_ML),
  C: byTable("F"),
  kPa: byTable("psi"),
  bar: byScale("psi", 1 / PSI_BAR),
  "g/L": byTable("oz/gal"),
  "L/kg": byScale("gal/lb", POUND_KG / GALLON_L),
  EBC: byTable("SRM"),
  "L/h": byTable("gal/h"),
  m: byTable("ft"),
  cm: byScale("in", 10 / INCH_MM),
  mm: byScale("in", 1 / INCH_MM),
  "mm/h": byScale("in/h", 1 / INCH_MM),
  "C/h": byScale("F/h", 9 / 5),
  "kJ/100mL": byScale("kcal/12 fl oz", 12 * FLUID_OUNCE_ML / 100 / KILOCALORIE_KJ),
};

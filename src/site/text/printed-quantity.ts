import { formatNumber, inUsUnits, printedUnit, type FormattedNumber, type UnitSystem } from "../../units/index.js";

const NO_BREAK = "\u00A0";
/** From here on, hours are also told in days: nobody counts 238 hours. */
const HOURS_TOLD_IN_DAYS = 72;

/** A quantity to print: one value, or a band where `low` and `high` are given. */
export interface PrintableQuantity {
  readonly value: number;
  readonly unit: string;
  readonly plusMinus?: number;
  readonly low?: number;
  readonly high?: number;
  /** Where neither an uncertainty nor the unit's own habit should say: scores, shares of a panel. */
  readonly decimals?: number;
  /** For lists: the ± and the other units are left out, the rounding stays. */
  readonly brief?: boolean;
}

/** What stands first, and the same in other units for the brackets. */
export interface PrintedQuantity {
  readonly first: string;
  readonly other?: string;
}

/** Rounds to what the uncertainty supports and puts the club's unit system first. */
export function printedQuantity(quantity: PrintableQuantity, units: UnitSystem): PrintedQuantity {
  const metric = inWords(quantity, formatNumber);
  const us = usUnits(quantity);
  if (quantity.brief === true) return { first: units === "us" ? us ?? metric : metric };
  if (us !== undefined) return units === "us" ? { first: us, other: metric } : { first: metric, other: us };
  return quantity.unit === "h" && quantity.value >= HOURS_TOLD_IN_DAYS
    ? { first: metric, other: joined(formatNumber(quantity.value / 24, "d")) }
    : { first: metric };
}

/** A probability: two digits that matter, never a row of noughts. */
export function printedProbability(p: number): string {
  if (p < 0.001) return "under 0.001";
  return p > 0.999 ? "over 0.999" : String(Number(p.toPrecision(2)));
}

type Formatter = (value: number, unit: string, plusMinus?: number) => FormattedNumber;

function inWords(quantity: PrintableQuantity, ownFormat: Formatter): string {
  const { decimals } = quantity;
  const format = decimals === undefined ? ownFormat : fixedDecimals(decimals);
  if (quantity.low === undefined || quantity.high === undefined || quantity.low === quantity.high) {
    return joined(format(quantity.value, quantity.unit, quantity.plusMinus), quantity.brief);
  }
  const low = format(quantity.low, quantity.unit);
  return `${low.value}${NO_BREAK}to${NO_BREAK}${joined(format(quantity.high, quantity.unit))}`;
}

function fixedDecimals(decimals: number): Formatter {
  return (value, unit) => ({ value: value.toFixed(decimals).replace(/^-(?=.*[1-9])/u, "−").replace(/^-/u, ""), unit: printedUnit(unit) });
}

function usUnits(quantity: PrintableQuantity): string | undefined {
  if (quantity.decimals !== undefined || inUsUnits(quantity.value, quantity.unit) === undefined) return undefined;
  return inWords(quantity, (value, unit, plusMinus) => inUsUnits(value, unit, plusMinus) ?? formatNumber(value, unit, plusMinus));
}

function joined({ value, plusMinus, unit }: FormattedNumber, brief = false): string {
  const number = plusMinus === undefined || brief ? value : `${value}${NO_BREAK}±${NO_BREAK}${plusMinus}`;
  return unit === "" ? number : `${number}${NO_BREAK}${unit}`;
}

import type { UnitSystem } from "./format.js";
import { formatNumber } from "./format.js";
import { printedNumber, printedUnit, usualDecimals } from "./print-number.js";
import { OWN_UNIT, toOwnUnit, UNITS } from "./unit-table.js";
import { US_UNIT, type UsUnit } from "./us-units.js";

const NUMBER = String.raw`[−-]?\d+(?:\.\d+)?`;
const GAP = "[ \u00A0]?";
/** Units as sentences print them, longest first, with the name they have in the tables. */
const NAMES: Readonly<Record<string, string>> = {
  "kJ/100 mL": "kJ/100mL", "kJ/100\u00A0mL": "kJ/100mL", "°C/h": "C/h", "mm/h": "mm/h", "g/L": "g/L", "L/kg": "L/kg", "L/h": "L/h",
  "oz/gal": "oz/gal", "fl oz": "fl oz", "°C": "C", "°F": "F", kPa: "kPa", bar: "bar", psi: "psi", EBC: "EBC", SRM: "SRM",
  gal: "gal", kg: "kg", lb: "lb", oz: "oz", qt: "qt", mL: "mL", mm: "mm", cm: "cm", ft: "ft", g: "g", L: "L", m: "m",
};
const UNIT = Object.keys(NAMES).join("|");

/** `4.0 °C`, `4.0 ± 0.3 °C`, `4 to 22 °C`, `4 °C to 22 °C`; not a part of a longer number, name or unit. */
const QUANTITY = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/_−-])(?:(?<low>${NUMBER})(?:${GAP}(?<lowUnit>${UNIT}))?[ \u00A0]to[ \u00A0])?(?<value>${NUMBER})(?:[ \u00A0]±[ \u00A0](?<plusMinus>${NUMBER}))?${GAP}(?<unit>${UNIT})(?![\p{L}\p{N}/])`,
  "gu",
);
/** Words around a number of degrees that make it a difference, which has no zero to shift. */
const DIFFERENCE_BEFORE = /(?:±|\bwithin|\bby|\beach|\bevery|\bper)[ \u00A0]*$/iu;
const DIFFERENCE_AFTER = /^[ \u00A0](?:above|below|warmer|colder|higher|lower|apart|of the)\b/u;

/** Behind a US quantity: these words have been converted before. */
const IN_BRACKETS = new RegExp(String.raw`(?:${Object.values(US_UNIT).map(({ us }) => printedUnit(us)).join("|")}) \($`, "u");

interface Found {
  readonly value: string;
  readonly unit: string;
  readonly low?: string;
  readonly lowUnit?: string;
  readonly plusMinus?: string;
}

/**
 * Generated sentences with the quantities a club puts first: `4.0 °C` → `39.2 °F (4.0 °C)`. Sentences are
 * written in metric units; where those come first they stay as they are. Applied twice it changes nothing more.
 *
 * @param brief for labels without room: the club's unit alone
 */
export function wordsInUnits(text: string, system: UnitSystem, brief = false): string {
  if (system === "metric") return text;
  return text.replaceAll(QUANTITY, (whole: string, ...rest: readonly unknown[]) => {
    const [place, all, found] = rest.slice(-3) as [number, string, Found];
    const [before, after] = [all.slice(0, place), all.slice(place + whole.length)];
    if (IN_BRACKETS.test(before) && after.startsWith(")")) return whole;
    const us = US_UNIT[NAMES[found.unit] ?? ""];
    if (us === undefined) return brief || after.startsWith(" (") ? whole : `${whole} (${metricOf(found)})`;
    if (found.lowUnit !== undefined && found.lowUnit !== found.unit) return whole;
    const isDifference = DIFFERENCE_BEFORE.test(before) || DIFFERENCE_AFTER.test(after);
    const first = inUs(found, us, isDifference);
    return brief ? first : `${first} (${whole})`;
  });
}

/** As fine as the metric number was, and never coarser than the trade writes. */
function inUs({ low, value, plusMinus }: Found, us: UsUnit, isDifference: boolean): string {
  const written = Math.max(...[low, value, plusMinus].map((text) => (text?.split(".")[1] ?? "").length));
  const step = Math.abs(us.convertDifference(10 ** -written));
  const decimals = plusMinus === undefined
    ? Math.max(usualDecimals(us.us), Math.ceil(-Math.log10(step) - Math.log10(2)))
    : Math.max(0, Math.ceil(-Math.log10(step) - Math.log10(2)));
  const print = (text: string): string => printedNumber((isDifference ? us.convertDifference : us.convert)(numberOf(text)), decimals);
  const halfWidth = plusMinus === undefined ? "" : ` ± ${printedNumber(us.convertDifference(numberOf(plusMinus)), decimals)}`;
  return `${low === undefined ? "" : `${print(low)} to `}${print(value)}${halfWidth} ${printedUnit(us.us)}`;
}

const GRAMS_TOLD_IN_KG = 1000;

/** What a record wrote in US units, in metric for the brackets. */
function metricOf({ low, value, unit }: Found): string {
  const name = NAMES[unit] ?? "";
  const own = OWN_UNIT[UNITS[name]?.kind ?? "mass"];
  const print = (text: string): string => {
    const number = toOwnUnit(numberOf(text), name);
    const isHeavy = own === "g" && number >= GRAMS_TOLD_IN_KG;
    const { value: printed, unit: as } = isHeavy ? formatNumber(number / GRAMS_TOLD_IN_KG, "kg") : formatNumber(number, own);
    return `${printed} ${as}`;
  };
  return low === undefined ? print(value) : `${print(low)} to ${print(value)}`;
}

function numberOf(text: string): number {
  return Number(text.replace("−", "-"));
}

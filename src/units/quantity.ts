import { unitNamed, type QuantityKind, type Unit } from "./unit-table.js";

/**
 * What a brewer wrote, and what it is worth.
 *
 * `value` is in the kind's own unit (see OWN_UNIT), save for gravity, which
 * stays in the unit written (SG, P or Bx).
 */
export interface Quantity<K extends QuantityKind = QuantityKind> {
  readonly kind: K;
  readonly value: number;
  /** The unit as written; "SG" for a bare gravity. */
  readonly unit: string;
  /** As written, without surrounding space. */
  readonly text: string;
  /** The reading's own ± limit, in the unit of `value`. */
  readonly limit?: number;
  /** The temperature the volume or gravity was read at. */
  readonly atC?: number;
}

/** Why a text isn't the quantity asked for. */
export type QuantityFault =
  | { readonly reason: "unit-missing"; readonly number: string }
  | { readonly reason: "unit-wrong-kind"; readonly unit: string; readonly kind: QuantityKind }
  | { readonly reason: "unit-unknown"; readonly unit: string }
  | { readonly reason: "decimal-comma"; readonly repaired: string }
  | { readonly reason: "gravity-without-point"; readonly repaired: string }
  | { readonly reason: "out-of-range"; readonly low: number; readonly high: number; readonly unit: string }
  | { readonly reason: "negative" }
  | { readonly reason: "temperature-not-allowed" }
  | { readonly reason: "not-a-quantity" };

export type ParsedQuantity<K extends QuantityKind> =
  | { readonly ok: true; readonly quantity: Quantity<K> }
  | { readonly ok: false; readonly fault: QuantityFault };

const NUMBER = String.raw`[+-]?(?:\d+(?:\.\d+)?|\.\d+)`;
const MEASURE = new RegExp(`^(${NUMBER})\\s*(\\D.*)?$`, "u");
const DECIMAL_COMMA = /(\d),(\d)/u;
/** `+/-` for keyboards without the sign. */
const PLUS_MINUS = /\s*(?:±|\+\/-)\s*/u;
/** Kinds for which the trade writes values below zero. */
const SIGNED: ReadonlySet<QuantityKind> = new Set(["temperature", "length"]);
/** Kinds that are read at a temperature: `19 L at 3 C`. */
const READ_AT: ReadonlySet<QuantityKind> = new Set(["volume", "gravity"]);
const ABSOLUTE_ZERO_C = -273.15;
/** Where 1.3546 L − 0.76 crosses zero, rounded up. */
const PALEST_LOVIBOND = 0.57;

/**
 * Reads `42 g`, `19.0 L at 2 C ± 0.1 L` or a bare gravity.
 *
 * @param text what the record holds; a YAML number comes as its text
 * @param kind the kind of quantity the field asks for
 */
export function parseQuantity<K extends QuantityKind>(text: string, kind: K): ParsedQuantity<K> {
  const trimmed = text.trim();
  if (DECIMAL_COMMA.test(trimmed)) {
    return fault({ reason: "decimal-comma", repaired: trimmed.replaceAll(/(\d),(\d)/gu, "$1.$2") });
  }
  const [measure = "", limit, secondLimit] = trimmed.split(PLUS_MINUS);
  const [main = "", at, secondAt] = measure.split(/\s+at\s+/u);
  if (secondLimit !== undefined || secondAt !== undefined) return fault({ reason: "not-a-quantity" });
  const value = parseMeasure(main, kind);
  if ("reason" in value) return fault(value);
  const atC = at === undefined ? undefined : parseMeasure(at, "temperature");
  if (atC !== undefined && !READ_AT.has(kind)) return fault({ reason: "temperature-not-allowed" });
  if (atC !== undefined && "reason" in atC) return fault(atC);
  const ownLimit = limit === undefined ? undefined : parseLimit(limit, kind, value.unit);
  if (ownLimit !== undefined && typeof ownLimit !== "number") return fault(ownLimit);
  return {
    ok: true,
    quantity: {
      kind, value: value.value, unit: value.unit, text: trimmed,
      ...(ownLimit === undefined ? {} : { limit: ownLimit }),
      ...(atC === undefined ? {} : { atC: atC.value }),
    },
  };
}

/**
 * Reads a difference or a limit, `0.3 C` or a bare `0.001` of gravity: its value is a width, so a
 * temperature's zero plays no part (1 F is 5/9 of a degree Celsius).
 */
export function parseDifference<K extends QuantityKind>(text: string, kind: K): ParsedQuantity<K> {
  const trimmed = text.trim();
  if (DECIMAL_COMMA.test(trimmed)) {
    return fault({ reason: "decimal-comma", repaired: trimmed.replaceAll(/(\d),(\d)/gu, "$1.$2") });
  }
  const parts = readParts(trimmed, kind);
  if ("reason" in parts) return fault(parts);
  const value = differenceOf(parts);
  if (value < 0) return fault({ reason: "negative" });
  return { ok: true, quantity: { kind, value, unit: parts.name, text: trimmed } };
}

interface Parts {
  readonly number: number;
  readonly name: string;
  readonly unit: Unit;
}

interface Measure {
  readonly value: number;
  readonly unit: string;
}

/** A number and its unit, known to be of the kind asked for. */
function readParts(text: string, kind: QuantityKind): Parts | QuantityFault {
  const match = MEASURE.exec(text.trim());
  if (match === null) return { reason: "not-a-quantity" };
  const [, digits = "", unitText] = match;
  const name = unitText?.trim() ?? (kind === "gravity" ? "SG" : undefined);
  if (name === undefined) return { reason: "unit-missing", number: digits };
  const unit = unitNamed(name, kind);
  if (unit === undefined) return { reason: "unit-unknown", unit: name };
  if (unit.kind !== kind) return { reason: "unit-wrong-kind", unit: name, kind: unit.kind };
  const number = Number(digits);
  return Number.isFinite(number) ? { number, name, unit } : { reason: "not-a-quantity" };
}

function parseMeasure(text: string, kind: QuantityKind): Measure | QuantityFault {
  const parts = readParts(text, kind);
  if ("reason" in parts) return parts;
  const { number, name, unit } = parts;
  const value = kind === "gravity" ? number : number * unit.factor + (unit.offset ?? 0);
  // The relation of degrees Lovibond goes under zero for the palest: what was written wasn't negative.
  if (name === "Lovibond" && value < 0 && number >= 0) return { reason: "out-of-range", low: PALEST_LOVIBOND, high: 1000, unit: name };
  return rangeFault(value, kind, name) ?? { value, unit: name };
}

function rangeFault(value: number, kind: QuantityKind, unit: string): QuantityFault | undefined {
  if (kind === "gravity") return gravityFault(value, unit);
  if (kind === "temperature" && value < ABSOLUTE_ZERO_C) {
    return { reason: "out-of-range", low: ABSOLUTE_ZERO_C, high: 1000, unit: "C" };
  }
  return value < 0 && !SIGNED.has(kind) ? { reason: "negative" } : undefined;
}

/** 1048 → `1.048`, 1049.5 → `1.0495`. */
function withPoint(value: number): string {
  return (value / 1000).toFixed(4).replace(/0$/u, "");
}

function gravityFault(value: number, unit: string): QuantityFault | undefined {
  if (unit === "SG") {
    if (value >= 980 && value <= 1200) return { reason: "gravity-without-point", repaired: withPoint(value) };
    return value < 0.98 || value > 1.2 ? { reason: "out-of-range", low: 0.98, high: 1.2, unit: "SG" } : undefined;
  }
  return value < -5 || value > 45 ? { reason: "out-of-range", low: -5, high: 45, unit } : undefined;
}

function parseLimit(text: string, kind: QuantityKind, unitOfValue: string): number | QuantityFault {
  const parts = readParts(text, kind);
  if ("reason" in parts) return parts;
  // A limit of a gravity in another unit than the gravity's would need a relation to bring it over.
  if (kind === "gravity" && parts.name !== unitOfValue) return { reason: "unit-wrong-kind", unit: parts.name, kind };
  const limit = differenceOf(parts);
  return limit < 0 ? { reason: "negative" } : limit;
}

function differenceOf({ number, unit }: Parts): number {
  return unit.kind === "gravity" ? number : number * unit.factor;
}

function fault(value: QuantityFault): { readonly ok: false; readonly fault: QuantityFault } {
  return { ok: false, fault: value };
}

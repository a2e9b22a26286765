import { differenceToOwnUnit, toOwnUnit, UNITS, type QuantityKind } from "./unit-table.js";

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
/** Kinds for which the trade writes values below zero. */
const SIGNED: ReadonlySet<QuantityKind> = new Set(["temperature", "length"]);
/** Kinds that are read at a temperature: `19 L at 3 C`. */
const READ_AT: ReadonlySet<QuantityKind> = new Set(["volume", "gravity"]);
const ABSOLUTE_ZERO_C = -273.15;

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
  const [measure = "", limit] = trimmed.split(/\s*±\s*/u);
  const [main = "", at] = measure.split(/\s+at\s+/u);
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

interface Measure {
  readonly value: number;
  readonly unit: string;
}

function parseMeasure(text: string, kind: QuantityKind): Measure | QuantityFault {
  const match = MEASURE.exec(text.trim());
  if (match === null) return { reason: "not-a-quantity" };
  const [, digits = "", unitText] = match;
  const number = Number(digits);
  const unit = unitText?.trim() ?? (kind === "gravity" ? "SG" : undefined);
  if (unit === undefined) return { reason: "unit-missing", number: digits };
  const known = Object.hasOwn(UNITS, unit) ? UNITS[unit] : undefined;
  if (known === undefined) return { reason: "unit-unknown", unit };
  if (known.kind !== kind) return { reason: "unit-wrong-kind", unit, kind: known.kind };
  const value = kind === "gravity" ? number : toOwnUnit(number, unit);
  return rangeFault(value, kind, unit) ?? { value, unit };
}

function rangeFault(value: number, kind: QuantityKind, unit: string): QuantityFault | undefined {
  if (kind === "gravity") return gravityFault(value, unit);
  if (kind === "temperature" && value < ABSOLUTE_ZERO_C) {
    return { reason: "out-of-range", low: ABSOLUTE_ZERO_C, high: 1000, unit: "C" };
  }
  return value < 0 && !SIGNED.has(kind) ? { reason: "negative" } : undefined;
}

function gravityFault(value: number, unit: string): QuantityFault | undefined {
  if (unit === "SG") {
    if (value >= 980 && value <= 1200) return { reason: "gravity-without-point", repaired: (value / 1000).toFixed(3) };
    return value < 0.98 || value > 1.2 ? { reason: "out-of-range", low: 0.98, high: 1.2, unit: "SG" } : undefined;
  }
  return value < -5 || value > 45 ? { reason: "out-of-range", low: -5, high: 45, unit } : undefined;
}

function parseLimit(text: string, kind: QuantityKind, unitOfValue: string): number | QuantityFault {
  const match = MEASURE.exec(text.trim());
  if (match === null) return { reason: "not-a-quantity" };
  const [, digits = "", unitText] = match;
  const unit = unitText?.trim() ?? (kind === "gravity" ? "SG" : undefined);
  if (unit === undefined) return { reason: "unit-missing", number: digits };
  const known = Object.hasOwn(UNITS, unit) ? UNITS[unit] : undefined;
  if (known === undefined) return { reason: "unit-unknown", unit };
  if (known.kind !== kind || (kind === "gravity" && unit !== unitOfValue)) {
    return { reason: "unit-wrong-kind", unit, kind: known.kind };
  }
  const limit = kind === "gravity" ? Number(digits) : differenceToOwnUnit(Number(digits), unit);
  return limit < 0 ? { reason: "negative" } : limit;
}

function fault(value: QuantityFault): { readonly ok: false; readonly fault: QuantityFault } {
  return { ok: false, fault: value };
}

/**
 * Every unit a record may use and every conversion factor of the project, once.
 *
 * Factors are exact by definition unless a comment says otherwise
 * (international yard and pound agreement 1959; US gallon = 231 cubic inches;
 * UK Weights and Measures Act 1985 for the imperial gallon).
 */

export const QUANTITY_KINDS = [
  "mass", "volume", "temperature", "gravity", "time", "pressure", "carbonation",
  "color", "dose", "concentration", "rate", "length", "oil", "share",
] as const;

export type QuantityKind = (typeof QUANTITY_KINDS)[number];

export interface Unit {
  readonly kind: QuantityKind;
  /** Multiply a value in this unit by `factor`, then add `offset`, to get the kind's own unit. */
  readonly factor: number;
  readonly offset?: number;
}

const POUND_G = 453.59237;
const OUNCE_G = POUND_G / 16;
const US_GALLON_L = 3.785411784;
const IMPERIAL_GALLON_L = 4.54609;
const BEER_BARREL_L = 31 * US_GALLON_L;
const PSI_KPA = 6.894757293168361; // lbf/in²: POUND_G/1000 × 9.80665 N over 0.0254² m²

/** What one volume of gas per volume of beer weighs: 1.977 g/L at 0 °C and 1 atm (real gas; from memory). */
export const CO2_GRAMS_PER_VOLUME = 1.977;

/** EBC per SRM: 25 A430 over 12.7 A430 (published: ASBC and EBC colour definitions). */
export const EBC_PER_SRM = 25 / 12.7;

/** The unit each kind is computed in, and how it is printed. */
export const OWN_UNIT: Readonly<Record<QuantityKind, string>> = {
  mass: "g", volume: "L", temperature: "C", gravity: "SG", time: "h", pressure: "kPa", carbonation: "vol",
  color: "EBC", dose: "g/L", concentration: "mg/L", rate: "L/h", length: "m", oil: "mL/100g", share: "%",
};

/**
 * Gravity keeps the number and unit it was written in: going from degrees Plato
 * or Brix to specific gravity is a relation with a source, and lives in science.
 */
export const UNITS: Readonly<Record<string, Unit>> = {
  mg: { kind: "mass", factor: 0.001 },
  g: { kind: "mass", factor: 1 },
  kg: { kind: "mass", factor: 1000 },
  oz: { kind: "mass", factor: OUNCE_G },
  lb: { kind: "mass", factor: POUND_G },
  mL: { kind: "volume", factor: 0.001 },
  L: { kind: "volume", factor: 1 },
  hL: { kind: "volume", factor: 100 },
  "fl oz": { kind: "volume", factor: US_GALLON_L / 128 },
  qt: { kind: "volume", factor: US_GALLON_L / 4 },
  gal: { kind: "volume", factor: US_GALLON_L },
  bbl: { kind: "volume", factor: BEER_BARREL_L },
  "imp gal": { kind: "volume", factor: IMPERIAL_GALLON_L },
  C: { kind: "temperature", factor: 1 },
  "°C": { kind: "temperature", factor: 1 },
  F: { kind: "temperature", factor: 5 / 9, offset: -160 / 9 },
  "°F": { kind: "temperature", factor: 5 / 9, offset: -160 / 9 },
  K: { kind: "temperature", factor: 1, offset: -273.15 },
  SG: { kind: "gravity", factor: 1 },
  P: { kind: "gravity", factor: 1 },
  Bx: { kind: "gravity", factor: 1 },
  s: { kind: "time", factor: 1 / 3600 },
  min: { kind: "time", factor: 1 / 60 },
  h: { kind: "time", factor: 1 },
  d: { kind: "time", factor: 24 },
  wk: { kind: "time", factor: 168 },
  kPa: { kind: "pressure", factor: 1 },
  bar: { kind: "pressure", factor: 100 },
  psi: { kind: "pressure", factor: PSI_KPA },
  vol: { kind: "carbonation", factor: 1 },
  EBC: { kind: "color", factor: 1 },
  SRM: { kind: "color", factor: EBC_PER_SRM },
  // Malt colour: SRM = 1.3546 L − 0.76 (from memory); below 0.6 °L the relation goes under zero and is refused when read.
  Lovibond: { kind: "color", factor: 1.3546 * EBC_PER_SRM, offset: -0.76 * EBC_PER_SRM },
  "g/L": { kind: "dose", factor: 1 },
  "g/hL": { kind: "dose", factor: 0.01 },
  "oz/gal": { kind: "dose", factor: OUNCE_G / US_GALLON_L },
  "lb/bbl": { kind: "dose", factor: POUND_G / BEER_BARREL_L },
  "mg/L": { kind: "concentration", factor: 1 },
  ppm: { kind: "concentration", factor: 1 }, // by trade usage in water and beer
  "L/h": { kind: "rate", factor: 1 },
  "gal/h": { kind: "rate", factor: US_GALLON_L },
  m: { kind: "length", factor: 1 },
  ft: { kind: "length", factor: 0.3048 },
  "mL/100g": { kind: "oil", factor: 1 },
  "%": { kind: "share", factor: 1 },
};

/** Units whose name also means another kind: carbonation may be written as the weight of gas in a litre. */
const SHARED_NAMES: Partial<Record<QuantityKind, Readonly<Record<string, Unit>>>> = {
  carbonation: { "g/L": { kind: "carbonation", factor: 1 / CO2_GRAMS_PER_VOLUME } },
};

/** The units a record may write for a kind, in the order they are suggested. */
export function unitsOf(kind: QuantityKind): string[] {
  const own = Object.keys(UNITS).filter((name) => UNITS[name]?.kind === kind);
  return [...own, ...Object.keys(SHARED_NAMES[kind] ?? {})];
}

/** What a unit's name means where a kind is asked for; of another kind if the name has no meaning in this one. */
export function unitNamed(name: string, kind: QuantityKind): Unit | undefined {
  const shared = SHARED_NAMES[kind] ?? {};
  if (Object.hasOwn(shared, name)) return shared[name];
  return Object.hasOwn(UNITS, name) ? UNITS[name] : undefined;
}

/**
 * A value in `unit` brought to the unit its kind is computed in.
 *
 * @throws RangeError for a unit that isn't in the table
 */
export function toOwnUnit(value: number, unit: string): number {
  const { factor, offset = 0 } = knownUnit(unit);
  return value * factor + offset;
}

/** A value in its kind's own unit, expressed in `unit`. Throws RangeError for an unknown unit. */
export function fromOwnUnit(value: number, unit: string): number {
  const { factor, offset = 0 } = knownUnit(unit);
  return (value - offset) / factor;
}

/** A difference or limit in `unit` brought to the kind's own unit: the scale alone, no zero shift. */
export function differenceToOwnUnit(difference: number, unit: string): number {
  return difference * knownUnit(unit).factor;
}

/** A difference in the kind's own unit, expressed in `unit`. */
export function differenceFromOwnUnit(difference: number, unit: string): number {
  return difference / knownUnit(unit).factor;
}

function knownUnit(name: string): Unit {
  const unit = UNITS[name];
  if (unit === undefined) throw new RangeError(`no unit is called "${name}"`);
  return unit;
}

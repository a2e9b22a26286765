import { at, type Corners, type Fields } from "./bench-batch.js";

/** How a brewery writes its quantities. */
export type Write = (kind: "L" | "g" | "kg" | "C" | "kPa" | "g/L" | "EBC", value: number) => string;

/** By exact definition: the international avoirdupois ounce and pound, the US gallon of 231 cubic inches, the pound-force per square inch (NIST SP 811), SRM = EBC × 12.7/25 (ASBC Beer-10). */
const GRAMS_PER_OUNCE = 28.349523125;
const LITRES_PER_GALLON = 3.785411784;
const KPA_PER_PSI = 6.894757293168361;
const POUNDS_PER_KG = 1000 / (16 * GRAMS_PER_OUNCE);

export const inMetric: Write = (kind, value) => `${digits(value)} ${kind}`;

export const inUs: Write = (kind, value) => {
  switch (kind) {
    case "L": return `${digits(value / LITRES_PER_GALLON)} gal`;
    case "g": return `${digits(value / GRAMS_PER_OUNCE)} oz`;
    case "kg": return `${digits(value * POUNDS_PER_KG)} lb`;
    case "C": return `${digits(value * 1.8 + 32)} F`;
    case "kPa": return `${digits(value / KPA_PER_PSI)} psi`;
    case "g/L": return `${digits((value / GRAMS_PER_OUNCE) * LITRES_PER_GALLON)} oz/gal`;
    case "EBC": return `${digits((value * 12.7) / 25)} SRM`;
  }
};

/** Plain decimals, more than any instrument reads. */
function digits(value: number): string {
  return Number(value.toPrecision(14)).toFixed(12).replace(/\.?0+$/u, "");
}

/** What a whole record holds; every number in the metric unit of its name. */
export interface WholeBatch {
  readonly fermenterL: number;
  readonly sampleL: number;
  readonly dumpL: number;
  readonly leftL: number;
  readonly packagedL: number;
  readonly hopsG: number;
  readonly paleKg: number;
  readonly coldC: number;
  readonly servedC: number;
  readonly carbonationVol: number;
}

export const USUAL: WholeBatch = {
  fermenterL: 21, sampleL: 0.5, dumpL: 0.4, leftL: 1, packagedL: 18.4, hopsG: 110, paleKg: 4.4, coldC: 2, servedC: 4, carbonationVol: 2.4,
};

/** Every reading a batch can have, so that each figure has what it needs. */
export function wholeFields(batch: WholeBatch, write: Write): Fields {
  return {
    plan: `{original_gravity: 1.050, final_gravity: 1.011, fermenter: ${write("L", 21)}, dry_hop: ${write("g/L", 5)}, dry_hop_temperature: ${write("C", 12)} to ${write("C", 20)}, dry_hop_for: 4 d, crash: ${write("C", 2)}, crash_for: 2 d, package: ${write("L", 19)}, carbonation: 2.4 vol}`,
    grist: `[{malt: Pale malt, amount: ${write("kg", batch.paleKg)}, extract: 80 %, color: ${write("EBC", 6)}}, {malt: Crystal malt, amount: ${write("g", 400)}, extract: 75 %, color: ${write("EBC", 120)}}]`,
    boil: `{for: 60 min, before: {volume: ${write("L", 26)} at ${write("C", 70)}, gravity: 1.042}, after: {volume: ${write("L", 22.8)} at ${write("C", 98)}, gravity: 1.048 at ${write("C", 25)}}}`,
    hops: `[{hop: Chinook, amount: ${write("g", 20)}, alpha: 10 %, boil: 60 min}, {hop: Cascade, amount: ${write("g", 30)}, alpha: 6 %, stand: 20 min, temperature: ${write("C", 80)}}]`,
    fermenter: `{volume: ${write("L", batch.fermenterL)}, gravity: 1.048, temperature: ${write("C", 18)}}`,
    fermentation: `{log: fermentation.csv, pressure: ${write("kPa", 10)}, readings: [{at: ${at(60)}, gravity: 1.011, ph: 4.4}, {at: ${at(119)}, gravity: 1.0105, temperature: ${write("C", 20)}, diacetyl: clear}, {at: ${at(220)}, gravity: 1.010, ph: 4.5, diacetyl: clear}]}`,
    additions: "[]",
    samples: `[{at: ${at(119)}, volume: ${write("L", batch.sampleL)}, kept: control}]`,
    dry_hops: `[{hop: Cascade, form: pellet, amount: ${write("g", batch.hopsG)}, alpha: 6 %, oil: 1.2 mL/100g, added: ${at(120)}}]`,
    crash: `{set: ${write("C", batch.coldC)}, from: ${at(216)}, vent: sealed}`,
    dumps: `[{at: ${at(240)}, volume: ${write("L", batch.dumpL)}}]`,
    transfer: `{at: ${at(270)}, volume: ${write("L", batch.packagedL + 0.2)} at ${write("C", batch.coldC)}, left: ${write("L", batch.leftL)}, sanitised: true}`,
    package: `[{date: ${at(272)}, into: keg, volume: ${write("L", batch.packagedL - 2)}, vessel: {volume: ${write("L", 19)}, limit: ${write("kPa", 400)}}, purge: {by: cycles, cycles: 6, pressure: ${write("kPa", 200)}}, carbonation: ${digits(batch.carbonationVol)} vol, temperature: ${write("C", batch.servedC)}}, {date: ${at(272)}, into: bottles, count: 6, volume: ${write("L", 2)}, carbonation: 2.4 vol, priming: {sugar: sucrose}}]`,
  };
}

/** The beer's temperature of a whole batch, °C. */
export function wholeTemperature(coldC: number): Corners {
  return [[0, 18], [24, 20], [120, 20], [130, 14], [216, 14], [222, coldC], [272, coldC]];
}

/** The bench of the whole batch, in either system: a difference of temperature has no zero. */
export function wholeEquipment(system: "metric" | "us"): string {
  const write = system === "us" ? inUs : inMetric;
  const [thermometer, calibrated] = system === "us" ? [`${digits(0.3 * 1.8)} F`, "68 F"] : ["0.3 C", "20 C"];
  return `bench:
  fermenter: {shape: conical, volume: ${write("L", 30)}, sealed: true, vacuum: ${write("kPa", 20)}}
  boil_off: ${system === "us" ? `${digits(3 / LITRES_PER_GALLON)} gal/h` : "3 L/h"}
  readings:
    hydrometer: {within: 0.001, calibrated: ${calibrated}}
    thermometer: {within: ${thermometer}}
    scale: {within: ${write("g", 1)}}
    volume: {within: ${write("L", 0.25)}}
    ph: {within: 0.05}
`;
}

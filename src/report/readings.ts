import { gravityFromPlato, hydrometerCorrection, platoFromGravity, refractometerFinalGravity, refractometerWort, volumeAt20 } from "../science/index.js";
import type { Quantity } from "../units/index.js";
import type { Instruments } from "./instruments.js";
import { apply, assumed, isMissing, missing, readingOf, type Result } from "./known.js";

/**
 * A sample or a dump is read in a jug, not on the vessel's marks: common
 * practice, a tenth of it, and never more than the marks can be off by.
 */
const SMALL_VOLUME_SHARE = 0.1;

/** A volume brought to 20 °C, with its own limit, else that of the vessel's marks or of a smaller measure. */
export function volumeReading(instruments: Instruments, field: string, volume: Quantity<"volume"> | undefined): Result {
  if (volume === undefined) return missing(`${field} isn't recorded`);
  const read = readingOf(field, volume.value, "L", volume.limit ?? Math.min(instruments.volumeL, SMALL_VOLUME_SHARE * volume.value), volume.text);
  if (volume.atC === undefined) return read;
  const temperature = readingOf(`${field} at`, volume.atC, "C", instruments.thermometerC, volume.text);
  return apply(volumeAt20, read, temperature);
}

/** A mass in grams, with the scale's limit or its own. */
export function massReading(instruments: Instruments, field: string, mass: Quantity<"mass"> | undefined): Result {
  if (mass === undefined) return missing(`${field} isn't recorded`);
  return readingOf(field, mass.value, "g", mass.limit ?? instruments.scaleG, mass.text);
}

/** A quantity read without an instrument whose limit is known: its own limit, or none. */
export function statedReading(field: string, quantity: Quantity | undefined, unit: string): Result {
  if (quantity === undefined) return missing(`${field} isn't recorded`);
  return readingOf(field, quantity.value, unit, quantity.limit, quantity.text);
}

/**
 * A gravity brought to specific gravity 20/20.
 *
 * @param originalGravity needed for a refractometer reading of beer: alcohol bends light too
 */
export function gravityReading(
  instruments: Instruments, field: string, gravity: Quantity<"gravity"> | undefined, originalGravity?: () => Result,
): Result {
  if (gravity === undefined) return missing(`${field} isn't recorded`);
  switch (gravity.unit) {
    case "P": return apply(gravityFromPlato, readingOf(field, gravity.value, "P", gravity.limit ?? hydrometerLimitP(instruments), gravity.text));
    case "Bx": return refractometerReading(instruments, field, gravity, originalGravity);
    default: return hydrometerReading(instruments, field, gravity);
  }
}

function hydrometerReading(instruments: Instruments, field: string, gravity: Quantity<"gravity">): Result {
  const read = readingOf(field, gravity.value, "SG", gravity.limit ?? instruments.hydrometerSg, gravity.text);
  if (gravity.atC === undefined) return read;
  const calibration = assumed("hydrometer calibration", instruments.hydrometerCalibrationC, "C", "From the equipment, else 20 °C.");
  return apply(hydrometerCorrection, read, readingOf(`${field} at`, gravity.atC, "C", instruments.thermometerC, gravity.text), calibration);
}

function refractometerReading(
  instruments: Instruments, field: string, gravity: Quantity<"gravity">, originalGravity: (() => Result) | undefined,
): Result {
  const read = readingOf(field, gravity.value, "Bx", gravity.limit ?? instruments.refractometerBx, gravity.text);
  const factor = assumed("refractometer factor", instruments.refractometerFactor, "", "From the equipment, else the customary 1.04.");
  if (originalGravity === undefined) return apply(gravityFromPlato, apply(refractometerWort, read, factor));
  const original = originalGravity();
  if (isMissing(original)) {
    return missing(`${field} is a refractometer reading of beer: it needs an original gravity (${original.missing})`);
  }
  return apply(refractometerFinalGravity, apply(platoFromGravity, original), read, factor);
}

/** What the hydrometer's limit is worth on a Plato scale: the same instrument, other marks. */
function hydrometerLimitP(instruments: Instruments): number {
  const MIDDLE_SG = 1.03;
  return platoFromGravity(MIDDLE_SG + instruments.hydrometerSg) - platoFromGravity(MIDDLE_SG);
}

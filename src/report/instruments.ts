import type { Equipment } from "../records/index.js";

/** Limits (±) each instrument can be trusted to, in the units named. */
export interface Instruments {
  readonly hydrometerSg: number;
  readonly hydrometerCalibrationC: number;
  readonly refractometerBx: number;
  readonly refractometerFactor: number;
  readonly thermometerC: number;
  readonly scaleG: number;
  readonly volumeL: number;
  readonly ph: number;
  /** Which limits were taken from common practice, as sentences for the page. */
  readonly assumptions: readonly string[];
}

/** Common practice for homebrew instruments; science holds no better source than habit for these. */
const COMMON = {
  hydrometerSg: 0.001,
  hydrometerCalibrationC: 20,
  refractometerBx: 0.2,
  refractometerFactor: 1.04,
  thermometerC: 0.5,
  scaleG: 1,
  volumeL: 0.25,
  ph: 0.05,
};

/** The instruments of an equipment entry, common limits standing in for what it leaves out. */
export function instrumentsOf(setup: Equipment | undefined): Instruments {
  if (setup === undefined) return { ...COMMON, assumptions: [NO_EQUIPMENT] };
  const { hydrometer, refractometer, thermometer, scale, volume, ph } = setup.readings ?? {};
  const found = {
    hydrometerSg: hydrometer?.within?.value,
    refractometerBx: refractometer?.within?.value,
    thermometerC: thermometer?.within?.value,
    scaleG: scale?.within?.value,
    volumeL: volume?.within?.value,
    ph: ph?.within,
  };
  const settings = definedOnly({ hydrometerCalibrationC: hydrometer?.calibrated?.value, refractometerFactor: refractometer?.factor });
  return { ...COMMON, ...definedOnly(found), ...settings, assumptions: missingLimits(found) };
}

const NO_EQUIPMENT =
  "No equipment is named, so common instrument limits are used: hydrometer ± 0.001, refractometer ± 0.2 °Bx, thermometer ± 0.5 °C, scale ± 1 g, volumes ± 0.25 L (a tenth of what is read in a jug), pH ± 0.05.";

const COMMON_TEXT: Readonly<Record<string, string>> = {
  hydrometerSg: "hydrometer ± 0.001",
  refractometerBx: "refractometer ± 0.2 °Bx",
  thermometerC: "thermometer ± 0.5 °C",
  scaleG: "scale ± 1 g",
  volumeL: "volumes ± 0.25 L",
  ph: "pH ± 0.05",
};

function missingLimits(found: Readonly<Record<string, number | undefined>>): string[] {
  const names = Object.keys(found).filter((name) => found[name] === undefined).map((name) => COMMON_TEXT[name] ?? name);
  return names.length === 0 ? [] : [`The equipment gives no limit for some instruments, so common ones are used: ${names.join(", ")}.`];
}

function definedOnly<T extends Record<string, number | undefined>>(values: T): { [K in keyof T]?: number } {
  const kept: { [K in keyof T]?: number } = {};
  for (const key of Object.keys(values) as (keyof T)[]) {
    const value = values[key];
    if (value !== undefined) kept[key] = value;
  }
  return kept;
}

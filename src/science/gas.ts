/** Molar gas constant, kPa L / (mol K) (CODATA 2018, exact to the digits given). */
export const gasConstant = 8.314462618;

/** The standard atmosphere, kPa, exact by definition. */
export const standardAtmosphereKPa = 101.325;

/** Absolute temperature, K. */
export function kelvin(temperatureC: number): number {
  return temperatureC + 273.15;
}

/** Moles in a volume of ideal gas; pressure absolute. */
export function molesOfGas(pressureKPa: number, volumeL: number, temperatureC: number): number {
  return (pressureKPa * volumeL) / (gasConstant * kelvin(temperatureC));
}

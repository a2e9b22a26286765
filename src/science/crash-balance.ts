import { co2GramsPerLitreKPa } from "./co2-solubility.js";
import { molesOfGas } from "./gas.js";
import { input } from "./input.js";
import { type MethodInput } from "./method-about.js";
import { waterDensity } from "./water-density.js";

const co2GramsPerMole = 44.0095;

const leastInVesselL = 0.001;

/** What every cooling balance starts from, in the order its methods take it. */
export const coolingInputs: readonly MethodInput[] = [
  input.volume("Vg", "space over the beer while warm"),
  input.volume("Vb", "beer in the vessel while warm"),
  input.temperature("t1", "temperature before cooling", { high: 60 }),
  input.temperature("t2", "temperature after cooling", { high: 60 }),
];

/** Cooling warms nothing, and something must be there to cool. */
export function coolingRule(headspaceL: number, beerL: number, warmC: number, coldC: number): string | undefined {
  if (headspaceL + beerL < leastInVesselL) return "there must be beer in the vessel, or gas over it";
  return coldC > warmC ? "temperature after cooling must not be above the one before" : undefined;
}

/** The space over the beer once cold, L: the beer shrinks (as water does) and the vessel doesn't. */
export function coldHeadspaceL(headspaceL: number, beerL: number, warmC: number, coldC: number): number {
  return headspaceL + beerL * (1 - waterDensity(warmC) / waterDensity(coldC));
}

/** Moles of carbon dioxide that beer and the gas over it hold together, for each kPa of it. */
export function co2CapacityPerKPa(headspaceL: number, beerL: number, temperatureC: number): number {
  return (beerL * co2GramsPerLitreKPa(temperatureC)) / co2GramsPerMole + molesOfGas(1, headspaceL, temperatureC);
}

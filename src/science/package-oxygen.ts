import { molesOfGas, standardAtmosphereKPa } from "./gas.js";
import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

const oxygenGramsPerMole = 31.998;

/** Share of oxygen in dry air, by volume. */
export const oxygenInAir = 0.2095;

/** Oxygen in a gas, over the beer it could dissolve in. */
export const packageOxygen = defineMethod(
  {
    id: "package-oxygen",
    title: "Oxygen from the gas over the beer",
    subject: "oxygen",
    says: "An upper bound: all the oxygen in the gas a purge left, taken as dissolved in the beer. Oxygen in the beer before, in hoses and through seals comes on top.",
    inputs: [
      { symbol: "x", meaning: "share of oxygen in the gas", unit: "", low: 0, high: 1 },
      input.volume("Vg", "volume of the gas"),
      input.volume("Vb", "beer", { low: leastAmount }),
      input.temperature("t", "temperature of the gas", { high: 50 }),
      input.atmosphericPressure("pa", "pressure of the gas"),
    ],
    output: { symbol: "O", unit: "mg/L" },
    formula: "O = 31.998 × 1000 x pa Vg / (8.3145 (t + 273.15)) / Vb",
    range: "ideal gas",
    source: "ideal gas, molar mass of oxygen",
    status: "published",
    checks: [
      { given: [1, 0.001, 1, 0, standardAtmosphereKPa], gives: 1.4276, within: 0.002, source: "31.998 g over the molar volume 22.414 L at 0 °C: mg of oxygen in 1 mL" },
      { given: [0.2095, 1, 18.9, 20, standardAtmosphereKPa], gives: 14.7, within: 0.1, source: "by hand: 209.5 mL of oxygen in a litre of air at 1.330 mg/mL over 18.9 L" },
      { given: [0.001, 1, 18.9, 20, standardAtmosphereKPa], gives: 0.07, within: 0.001, source: "by hand: 1 mL of oxygen at 1.330 mg/mL over 18.9 L" },
    ],
  },
  (oxygenFraction: number, gasL: number, beerL: number, temperatureC: number, atmosphericKPa: number) =>
    (oxygenGramsPerMole * 1000 * oxygenFraction * molesOfGas(atmosphericKPa, gasL, temperatureC)) / beerL,
);

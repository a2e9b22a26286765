import { kelvin } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Pressure in a sealed vessel once cold, if no gas dissolves. */
export const sealedVesselPressureGas = defineMethod(
  {
    id: "sealed-vessel-pressure-gas",
    title: "Pressure in a sealed vessel, at most",
    subject: "cooling",
    says: "The absolute pressure in a sealed vessel after cooling if none of the gas dissolves. The real pressure lies between this and the one with the gas taken up.",
    inputs: [
      input.temperature("t1", "temperature before cooling", { high: 60 }),
      input.temperature("t2", "temperature after cooling", { high: 60 }),
      input.gaugePressure("p", "pressure over the beer before cooling"),
      input.atmosphericPressure("pa", "pressure of the air"),
    ],
    output: { symbol: "p2", unit: "kPa absolute" },
    formula: "p2 = (p + pa) (t2 + 273.15) / (t1 + 273.15)",
    range: "ideal gas in a rigid, tight vessel; the beer's own shrinkage lowers it by a little more",
    source: "ideal gas at constant volume",
    status: "published",
    checks: [{ given: [20, 3, 0, 101.3], gives: 95.4, within: 0.1, source: "ideal gas by hand: 1.013 bar times 276.15/293.15" }],
  },
  (warmC: number, coldC: number, gaugeKPa: number, atmosphericKPa: number) => ((gaugeKPa + atmosphericKPa) * kelvin(coldC)) / kelvin(warmC),
  (warmC, coldC) => (coldC > warmC ? "temperature after cooling must not be above the one before" : undefined),
);

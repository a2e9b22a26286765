import { kelvin } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const cold = { temperatureC: 6, mPaS: 2.42 };
const warm = { temperatureC: 20, mPaS: 1.55 };
const slopeKelvin = Math.log(cold.mPaS / warm.mPaS) / (1 / kelvin(cold.temperatureC) - 1 / kelvin(warm.temperatureC));

/** How thick beer is. */
export const beerViscosity = defineMethod(
  {
    id: "beer-viscosity",
    title: "Viscosity of beer",
    subject: "cooling",
    says: "How thick an ordinary pale beer is at a temperature, for estimates of settling.",
    inputs: [input.temperature("t", "temperature", { high: 30 })],
    output: { symbol: "μ", unit: "mPa.s" },
    formula: "μ = 1.55 e^(2604 (1/(t + 273.15) - 1/293.15))",
    range: "a lager of ordinary strength; two points joined by the usual law",
    source: "2.42 mPa.s at 6 °C measured in a lager, Liger-Belair 2021; 1.55 at 20 °C from memory",
    status: "from memory",
    checks: [
      { given: [6], gives: 2.42, within: 0.03, source: "Liger-Belair 2021: a lager at 6 °C" },
      { given: [20], gives: 1.55, within: 0.05, source: "from memory: beer at 20 °C" },
    ],
  },
  (temperatureC: number) => warm.mPaS * Math.exp(slopeKelvin * (1 / kelvin(temperatureC) - 1 / kelvin(warm.temperatureC))),
);

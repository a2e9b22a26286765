import { kelvin } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const table = "EN 25814, table of air-saturated water at 101.325 kPa";

/** Oxygen in water that stands open to the air. */
export const oxygenSaturation = defineMethod(
  {
    id: "oxygen-saturation",
    title: "Oxygen in water open to the air",
    subject: "oxygen",
    says: "The most oxygen that water open to the air dissolves: what splashing could put into beer, about.",
    inputs: [input.temperature("t", "temperature", { low: 0, high: 40 })],
    output: { symbol: "O", unit: "mg/L" },
    formula: "O = e^(-139.34411 + 1.575701e5/T - 6.642308e7/T^2 + 1.2438e10/T^3 - 8.621949e11/T^4), with T = t + 273.15",
    range: "fresh water at sea level, 0 to 40 °C; beer takes up a little less",
    source: "Benson & Krause, in the form of APHA's Standard Methods",
    status: "published",
    checks: [
      { given: [0], gives: 14.6, within: 0.05, source: table },
      { given: [10], gives: 11.3, within: 0.05, source: table },
      { given: [20], gives: 9.09, within: 0.05, source: table },
      { given: [30], gives: 7.56, within: 0.05, source: table },
    ],
  },
  (temperatureC: number) => {
    const perKelvin = 1 / kelvin(temperatureC);
    return Math.exp(-139.34411 + perKelvin * (1.575701e5 + perKelvin * (-6.642308e7 + perKelvin * (1.2438e10 - perKelvin * 8.621949e11))));
  },
);

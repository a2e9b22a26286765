import { kelvin } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const malowicki = "Malowicki & Shellhammer, J. Agric. Food Chem. 53:4434 (2005): relation worked out apart";

/** How fast alpha acids isomerise. */
export const isomerisationRate = defineMethod(
  {
    id: "isomerisation-rate",
    title: "Isomerisation rate",
    subject: "bitterness",
    says: "The share of alpha acids that turn into iso-alpha acids each minute in hot wort: half of them in 55 minutes at 100 °C, six times slower at 80 °C.",
    inputs: [input.temperature("t", "temperature", { low: 60, high: 130 })],
    output: { symbol: "k", unit: "1/min" },
    formula: "k = 7.9e11 e^(-11858 / (t + 273.15))",
    range: "measured in model wort of pH 5.2 at 90 to 130 °C; carried on down to 60 °C, where it was not measured",
    source: "Malowicki & Shellhammer, J. Agric. Food Chem. 53:4434 (2005), first-order rate of isomerisation",
    status: "published",
    checks: [
      { given: [100], gives: 0.01249, within: 0.00012, source: malowicki },
      { given: [90], gives: 0.005206, within: 0.000052, source: malowicki },
      { given: [120], gives: 0.0629, within: 0.00063, source: malowicki },
    ],
  },
  (temperatureC: number) => 7.9e11 * Math.exp(-11858 / kelvin(temperatureC)),
);

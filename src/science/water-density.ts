import { input } from "./input.js";
import { defineMethod } from "./method.js";

const kell = "Kell 1975 as given by Jones & Harris, J. Res. NIST 97:335 (1992), denominator corrected; worked out apart, the value agrees with common tables of water";

/** Density of air-free water at 1 atm. */
export const waterDensity = defineMethod(
  {
    id: "water-density",
    title: "Density of water",
    subject: "gravity",
    says: "How heavy a cubic metre of water is at a temperature. Wort and beer are taken to expand as water does.",
    inputs: [input.temperature("t", "temperature", { high: 150 })],
    output: { symbol: "ρ", unit: "kg/m3" },
    formula: "ρ = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - 46.170461e-6 t^3 + 105.56302e-9 t^4 - 280.54253e-12 t^5) / (1 + 16.879850e-3 t)",
    range: "0 to 150 °C; carried on to -5 °C for cold beer that hasn't frozen",
    source: "Kell 1975, as given by Jones & Harris, J. Res. NIST 97:335 (1992); the denominator there is printed with two digits swapped (16.897850) and corrected here: the swapped form gives 997.94 at 20 °C instead of 998.20",
    status: "published",
    checks: [
      { given: [4], gives: 999.972, within: 0.01, source: kell },
      { given: [20], gives: 998.203, within: 0.002, source: "Jones & Harris 1992, their own ITS-90 quartic at 20 °C: another set of coefficients" },
      { given: [30], gives: 995.647, within: 0.01, source: kell },
      { given: [100], gives: 958.36, within: 0.01, source: kell },
    ],
  },
  (temperatureC: number) => {
    const t = temperatureC;
    const numerator = 999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return numerator / (1 + 16.87985e-3 * t);
  },
);

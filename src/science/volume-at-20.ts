import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { waterDensity } from "./water-density.js";

/** A volume read warm or cold, brought to 20 °C. */
export const volumeAt20 = defineMethod(
  {
    id: "volume-at-20",
    title: "Volume at 20 °C",
    subject: "gravity",
    says: "What a volume measured at another temperature would be at 20 °C. Kettle-hot wort shrinks by 4 %.",
    inputs: [input.volume("V", "volume as read"), input.temperature("t", "temperature it was read at")],
    output: { symbol: "V20", unit: "L" },
    formula: "V20 = V ρ(t) / ρ(20), with the density of water",
    range: "wort and beer of 0 to 20 P from -5 to 110 °C; the vessel's own expansion (under 0.4 % to boiling for steel) is left out",
    source: "ratio of water densities, Kell 1975",
    status: "published",
    checks: [
      { given: [25, 100], gives: 24.0, within: 0.02, source: "water densities 958.36 and 998.20 kg/m3 (Kell 1975): ratio 0.9601" },
      { given: [100, 4], gives: 100.177, within: 0.005, source: "expansion of water from 4 to 20 °C, 0.177 % (Kell 1975)" },
      { given: [19, 20], gives: 19, within: 1e-9, source: "identity: 20 °C is the reference" },
    ],
  },
  (volumeL: number, temperatureC: number) => (volumeL * waterDensity(temperatureC)) / waterDensity(20),
);

import { input } from "./input.js";
import { type SourceStatus } from "./method-about.js";
import { defineMethod } from "./method.js";

/** Water that spent grain keeps, litres a kilogram of grist. One experimenter reports 1.2 to 1.75. */
export const grainAbsorption: { readonly lowLPerKg: number; readonly highLPerKg: number; readonly source: string; readonly status: SourceStatus } = {
  lowLPerKg: 0.8,
  highLPerKg: 1.1,
  source: "common practice: 0.8 to 1.1 L/kg (0.10 to 0.13 US gallons a pound)",
  status: "common practice",
};

/** Water for mash and sparge together. */
export const waterNeeded = defineMethod(
  {
    id: "water-needed",
    title: "Water for the mash",
    subject: "brewhouse",
    says: "All the water for mash and sparge: the wort wanted in the kettle and what the grain keeps.",
    inputs: [
      input.volume("V1", "volume before the boil"),
      input.massKg("m", "mass of the grist"),
      { symbol: "a", meaning: "water the grain keeps", unit: "L/kg", low: 0, high: 3 },
    ],
    output: { symbol: "W", unit: "L" },
    formula: "W = V1 + a m",
    range: "losses in mash vessel and pipes come on top",
    source: "balance of water; the extract's own volume is left out, so it reads a little high",
    status: "common practice",
    checks: [{ given: [27, 5, 1], gives: 32, within: 1e-9, source: "common practice: 5 kg of grist at 1 L/kg keep 5 L" }],
  },
  (beforeBoilL: number, grainKg: number, absorptionLPerKg: number) => beforeBoilL + grainKg * absorptionLPerKg,
);

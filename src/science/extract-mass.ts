import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { platoFromGravity } from "./plato-from-gravity.js";

/** Density of water at 20 °C, kg/L (Kell 1975): what a specific gravity 20/20 multiplies. */
export const waterKgPerL = 0.998204;

const beerBarrelL = 117.347765; // L in a US beer barrel of 31 gallons

/** Dry extract in a volume of wort. */
export const extractMass = defineMethod(
  {
    id: "extract-mass",
    title: "Extract in the wort",
    subject: "brewhouse",
    says: "The mass of dry extract dissolved in a volume of wort, from its gravity.",
    inputs: [input.gravity("S", "gravity of the wort", { low: 1 }), input.volume("V", "volume at 20 °C")],
    output: { symbol: "E", unit: "kg" },
    formula: "E = 0.998204 V S P(S) / 100, with P from plato-from-gravity",
    range: "wort of 0 to 40 P",
    source: "definition of % by weight, with the density of water at 20 °C",
    status: "published",
    checks: [
      { given: [1.04837, beerBarrelL], gives: 14.734, within: 0.005, source: "Mallett, Malt (2014), quoting ASBC tables: 12 P holds 32.45 lb a US barrel, weighed in air; 14.719 kg, plus 0.105 % for the air's lift" },
    ],
  },
  (gravitySg: number, volumeL: number) => (waterKgPerL * volumeL * gravitySg * platoFromGravity(gravitySg)) / 100,
);

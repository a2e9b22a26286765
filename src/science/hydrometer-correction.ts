import { toOwnUnit } from "../units/index.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { waterDensity } from "./water-density.js";

const byDensity = "water-density ratio (Kell 1975) worked out apart; wort taken to expand as water";

/** A hydrometer read in a sample that isn't at the instrument's temperature. */
export const hydrometerCorrection = defineMethod(
  {
    id: "hydrometer-correction",
    title: "Hydrometer reading to 20 °C",
    subject: "gravity",
    says: "The specific gravity 20/20 behind a hydrometer reading taken in a warm or cold sample. An instrument marked for 60 °F or 15.6 °C is allowed for.",
    inputs: [
      { symbol: "R", meaning: "hydrometer reading", unit: "SG", low: 0.98, high: 1.2 },
      input.temperature("t", "temperature of the sample", { high: 70 }),
      input.temperature("tc", "temperature the hydrometer is marked for", { low: 0, high: 40 }),
    ],
    output: { symbol: "S", unit: "SG" },
    formula: "S = R ρ(tc) / ρ(t), with the density of water. At the sample's own temperature the instrument shows R ρ(tc); wort that expands as water does weighs ρ(20)/ρ(t) times that at 20 °C, and is then held against water at 20 °C",
    range: "5 to 60 °C, 1.000 to 1.100; about ±0.0005 near the marked temperature, ±0.002 beyond 45 °C (common practice). The glass's own expansion, 0.0025 % a degree, is left out",
    source: "ratio of water densities, Kell 1975",
    status: "published",
    checks: [
      { given: [1.01, 30, 20], gives: 1.0126, within: 0.0003, source: byDensity },
      { given: [1.05, 10, 20], gives: 1.0484, within: 0.0003, source: byDensity },
      { given: [1.05, 25, 20], gives: 1.0512, within: 0.0003, source: byDensity },
      { given: [1.05, toOwnUnit(100, "F"), toOwnUnit(60, "F")], gives: 1.056, within: 0.0004, source: "a brewer's cubic of 1992 in °F gives +0.0060 at 100 °F for a 60 °F instrument (from memory)" },
    ],
  },
  (readingSg: number, sampleC: number, calibrationC: number) => (readingSg * waterDensity(calibrationC)) / waterDensity(sampleC),
);

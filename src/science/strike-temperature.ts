import { toOwnUnit } from "../units/index.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Heat capacity of malt as litres of water a kilogram: 0.2 US quarts a pound. Metric texts round it to 0.41. */
const maltAsWaterLPerKg = toOwnUnit(0.2, "qt") / toOwnUnit(0.001, "lb");

/** Temperature of the water that brings the mash to its rest. */
export const strikeTemperature = defineMethod(
  {
    id: "strike-temperature",
    title: "Strike temperature",
    subject: "brewhouse",
    says: "How hot the mash water must be so that, mixed with the grain, it rests at the temperature wanted. A cold vessel takes heat too: warm it first. Hot liquor scalds.",
    inputs: [
      { symbol: "r", meaning: "water to grain", unit: "L/kg", low: 1, high: 15 },
      input.temperature("Tg", "temperature of the grain", { low: -20, high: 60 }),
      input.temperature("Tm", "temperature wanted in the mash", { low: 20, high: 85 }),
    ],
    output: { symbol: "Tw", unit: "C" },
    formula: "Tw = (0.417 / r) (Tm - Tg) + Tm",
    range: "a single infusion into a warmed vessel",
    source: "Palmer, How to Brew, infusion equation; from memory",
    status: "from memory",
    checks: [
      { given: [toOwnUnit(1.25, "qt") / toOwnUnit(0.001, "lb"), toOwnUnit(70, "F"), toOwnUnit(152, "F")], gives: toOwnUnit(165.1, "F"), within: 0.06, source: "Palmer's equation in US units by hand: 0.2 / 1.25 × 82 °F + 152 °F = 165.1 °F; from memory" },
    ],
  },
  (ratioLPerKg: number, grainC: number, targetC: number) => (maltAsWaterLPerKg / ratioLPerKg) * (targetC - grainC) + targetC,
  (_ratio, grainC, targetC) => (grainC > targetC ? "grain must not be warmer than the mash" : undefined),
);

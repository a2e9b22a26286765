import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";
import { oxygenInAir } from "./package-oxygen.js";

/** Oxygen left after liquid is pushed out with gas. */
export const purgeLiquid = defineMethod(
  {
    id: "purge-liquid",
    title: "Oxygen left by a liquid purge",
    subject: "oxygen",
    says: "The share of oxygen in a vessel filled to the top and emptied with carbon dioxide: what the pocket of air that couldn't be filled makes of the whole.",
    inputs: [input.volume("Va", "air the liquid left"), input.volume("V", "volume of the vessel", { low: leastAmount })],
    output: { symbol: "x", unit: "share" },
    formula: "x = 0.2095 Va / V",
    range: "oxygen dissolved in the liquid and in the carbon dioxide itself comes on top",
    source: "dilution; oxygen is 20.95 % of dry air",
    status: "published",
    checks: [{ given: [0.1, 19], gives: 1103e-6, within: 1e-6, source: "by hand: a tenth of a litre of air in 19 L" }],
  },
  (leftL: number, vesselL: number) => (oxygenInAir * leftL) / vesselL,
  (leftL, vesselL) => (leftL > vesselL ? "air left must not be more than the vessel holds" : undefined),
);

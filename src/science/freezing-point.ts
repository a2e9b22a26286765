import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Where beer begins to freeze. */
export const freezingPoint = defineMethod(
  {
    id: "freezing-point",
    title: "Freezing point",
    subject: "cooling",
    says: "About where beer of this strength begins to freeze. Keep a crash a degree or more above it: ice takes up water first and can burst what holds it.",
    inputs: [input.percent("A", "alcohol by weight", { high: 15 }), input.extract("OE", "original extract", { low: 0, high: 30 })],
    output: { symbol: "tf", unit: "C" },
    formula: "tf = -(0.42 A + 0.04 OE + 0.2)",
    range: "ordinary beers; good to about half a degree",
    source: "a brewing textbook rule, from memory",
    status: "from memory",
    checks: [
      { given: [8.01, 0], gives: -4, within: 0.5, source: "an engineering table of ethanol and water: 10 % by volume freezes at -4 °C (25 °F, rounded); alcohol alone, no extract" },
    ],
  },
  (byWeightPercent: number, originalP: number) => -(0.42 * byWeightPercent + 0.04 * originalP + 0.2),
);

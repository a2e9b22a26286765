import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Beer that hops keep. */
export const beerLostToHops = defineMethod(
  {
    id: "beer-lost-to-hops",
    title: "Beer lost to hops",
    subject: "dry hop",
    says: "The beer that stays in the hops when it is drawn off: their mass times what a kilogram keeps. Take it as a range.",
    inputs: [input.massG("m", "mass of hops"), { symbol: "a", meaning: "beer a kilogram of hops keeps", unit: "L/kg", low: 0, high: 30 }],
    output: { symbol: "L", unit: "L" },
    formula: "L = m a / 1000",
    range: "pellets 7 to 8.35 L/kg, cones 10 to 15 undrained, concentrated pellets about half; hops in dumps and left behind are counted in",
    source: "an equipment vendor's article for pellets, common practice for the rest",
    status: "common practice",
    checks: [
      { given: [250, 8], gives: 2, within: 0.5, source: "vendor's article: 250 g/hL pellets cost 2 % of the volume, so 2 L of 100 L" },
      { given: [2000, 7], gives: 14, within: 1, source: "vendor's article: 2000 g/hL pellets cost 14 % of the volume, so 14 L of 100 L" },
    ],
  },
  (massG: number, lossLPerKg: number) => (massG / 1000) * lossLPerKg,
);

import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

const byHand = "worked by hand: grams a hectolitre times oil in 100 g, over 100";

/** Oil added with the hops. */
export const dryHopOil = defineMethod(
  {
    id: "dry-hop-oil",
    title: "Hop oil added",
    subject: "dry hop",
    says: "Essential oil that went in with the hops, from the oil content stated for them. About half of it or less ends up in the beer.",
    inputs: [
      input.massG("m", "mass of hops"),
      { symbol: "o", meaning: "oil content", unit: "mL/100g", low: 0, high: 10 },
      input.volume("V", "beer in the vessel at 20 °C", { low: leastAmount }),
    ],
    output: { symbol: "O", unit: "mL/hL" },
    formula: "O = m o / V",
    range: "oil content falls in storage; a supplier suggests 2 mL/hL to start from",
    source: "definition; spent hops kept 51 % (pilot) and 33 % (brewery) of their oil in Hauser, Lafontaine & Shellhammer 2019",
    status: "published",
    checks: [
      { given: [400, 1.2, 100], gives: 4.8, within: 0.001, source: byHand },
      { given: [800, 2.83, 100], gives: 22.6, within: 0.05, source: byHand },
      { given: [167, 1.2, 100], gives: 2.0, within: 0.01, source: "a hop supplier's suggested starting point of 2 mL/hL, as 167 g/hL of hops with 1.2 mL/100 g" },
    ],
  },
  (massG: number, oilMlPer100g: number, volumeL: number) => (massG * oilMlPer100g) / volumeL,
);

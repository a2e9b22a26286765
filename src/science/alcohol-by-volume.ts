import { input } from "./input.js";
import { defineMethod } from "./method.js";

const ethanolGravity = 0.7907; // 20/20, from memory; a maltster's page rounds it to 0.791

/** Alcohol by volume at 20 °C. */
export const alcoholByVolume = defineMethod(
  {
    id: "alcohol-by-volume",
    title: "Alcohol by volume",
    subject: "alcohol",
    says: "Alcohol in % by volume at 20 °C, from % by weight and the beer's own gravity.",
    inputs: [input.percent("A", "alcohol by weight", { high: 25 }), input.gravity("FG", "final gravity")],
    output: { symbol: "ABV", unit: "%" },
    formula: "ABV = A FG / 0.7907",
    range: "beers up to about 15 % by volume",
    source: "definition, with the specific gravity of ethanol 20/20; 0.7907 from memory, 0.791 on a maltster's page of brewing calculations",
    status: "published",
    model: { limit: 0.17, as: "absolute", source: "0.13 % by weight, the largest deviation from measured means in Cutaia, Reid & Speers 2009, over 0.79" },
    checks: [
      { given: [4.016, 1.0098], gives: 5.13, within: 0.01, source: "A FG / 0.791 by hand, the maltster's constant: 5.127" },
      { given: [0, 1.05], gives: 0, within: 1e-9, source: "identity: no alcohol by weight is none by volume" },
    ],
  },
  (byWeightPercent: number, finalSg: number) => (byWeightPercent * finalSg) / ethanolGravity,
);

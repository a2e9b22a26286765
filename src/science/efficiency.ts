import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

/** Share of the potential extract that was won. */
export const efficiency = defineMethod(
  {
    id: "efficiency",
    title: "Efficiency",
    subject: "brewhouse",
    says: "The extract found over the extract the grist could give: in the kettle before the boil it is the mash's efficiency, in the fermenter the brewhouse's.",
    inputs: [input.massKg("E", "extract in the wort"), input.massKg("E0", "potential extract", { low: leastAmount })],
    output: { symbol: "η", unit: "%" },
    formula: "η = 100 E / E0",
    range: "above 100 % means a reading or the malt's yield is wrong",
    source: "a brewing supplier's catalogue (2021), p. 105: extract in the fermenter over laboratory yields",
    status: "common practice",
    checks: [
      { given: [2.5985, (5 * 37) / 46.214], gives: 64.8, within: 0.2, source: "points worked by hand: 20 L at 1.050 from 5 kg at 37 points a pound and gallon (1544 litre-degrees)" },
    ],
  },
  (extractKg: number, potentialKg: number) => (100 * extractKg) / potentialKg,
);

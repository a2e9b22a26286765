import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Extract a malt can give. */
export const potentialExtract = defineMethod(
  {
    id: "potential-extract",
    title: "Potential extract",
    subject: "brewhouse",
    says: "The dry extract a malt could give in a laboratory mash: its dry mass times its fine-grind yield on dry basis.",
    inputs: [
      input.massKg("m", "mass as weighed"),
      input.percent("e", "extract, fine grind, dry basis", { high: 105 }),
      input.percent("w", "moisture"),
    ],
    output: { symbol: "E0", unit: "kg" },
    formula: "E0 = m (1 - w/100) e/100",
    range: "malt, grain, sugar and syrup with a stated yield",
    source: "definition, as maltsters' analyses and brewers' yield tables use it",
    status: "common practice",
    checks: [
      { given: [1, 79, 4], gives: 0.7584, within: 0.0001, source: "a question-and-answer page prints 35.049 points a pound and gallon for this malt; over 46.214 for pure sugar" },
      { given: [1, 80, 0], gives: 37 / 46.214, within: 0.011, source: "Palmer, How to Brew, Table 9: 80 % yield, 37 points a pound and gallon (rounded)" },
    ],
  },
  (massKg: number, extractPercent: number, moisturePercent: number) => massKg * (1 - moisturePercent / 100) * (extractPercent / 100),
);

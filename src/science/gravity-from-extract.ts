import { extractMass } from "./extract-mass.js";
import { input, leastAmount } from "./input.js";
import { invertRising } from "./invert-rising.js";
import { defineMethod } from "./method.js";

const bounds = { low: 1.0001, high: 1.1786 };

/** Gravity of wort that holds a mass of extract. */
export const gravityFromExtract = defineMethod(
  {
    id: "gravity-from-extract",
    title: "Gravity from extract",
    subject: "brewhouse",
    says: "The gravity of a volume of wort that holds this much extract: what a recipe and an efficiency predict.",
    inputs: [input.massKg("E", "extract in the wort"), input.volume("V", "volume at 20 °C", { low: leastAmount })],
    output: { symbol: "S", unit: "SG" },
    formula: "the S for which extract-mass gives E",
    range: "wort of 0.1 to 39 P",
    source: "definition of % by weight; ASBC and NBS cubics",
    status: "published",
    checks: [
      { given: [2.5985, 24], gives: 1.0417, within: 0.0002, source: "20 L at 1.050 (12.388 P by the ASBC cubic: 2.597 kg) made up to 24 L; the points rule 50 × 20 / 24 gives 41.7" },
    ],
  },
  (extractKg: number, volumeL: number) => invertRising((sg) => extractMass(sg, volumeL), extractKg, bounds),
  (extractKg, volumeL) => {
    const inside = extractKg >= extractMass(bounds.low, volumeL) && extractKg <= extractMass(bounds.high, volumeL);
    return inside ? undefined : "this much extract in this volume isn't a wort of 0.1 to 39 P";
  },
);

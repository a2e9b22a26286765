import { input } from "./input.js";
import { defineMethod } from "./method.js";

const cutaia = "Cutaia, Reid & Speers, J. Inst. Brew. 115:318 (2009), Table III: mean of a data set of measured beers; agrees within the bias said above";

/** Extract really left in the beer. */
export const realExtract = defineMethod(
  {
    id: "real-extract",
    title: "Real extract",
    subject: "alcohol",
    says: "The extract left in the beer once the lightness of alcohol is allowed for, from the extract before and the apparent extract after fermentation: the two constants usually put under Balling's name.",
    inputs: [input.extract("OE", "original extract", { low: 0 }), input.extract("AE", "apparent extract")],
    output: { symbol: "RE", unit: "P" },
    formula: "RE = 0.1808 OE + 0.8192 AE",
    range: "beers of 5 to 25 P; reads 0.1 to 0.2 P low against measured beers",
    source: "Balling, constants as De Clerck gives them; from memory",
    status: "from memory",
    model: { limit: 0.2, as: "absolute", source: "largest deviation from the means of three measured data sets, Cutaia, Reid & Speers 2009, Table III" },
    checks: [
      { given: [14.08, 3.11], gives: 5.28, within: 0.2, source: cutaia },
      { given: [11.34, 2.01], gives: 3.8, within: 0.2, source: cutaia },
      { given: [12.75, 2.79], gives: 4.74, within: 0.2, source: cutaia },
    ],
  },
  (originalP: number, apparentP: number) => 0.1808 * originalP + 0.8192 * apparentP,
  (originalP, apparentP) => (apparentP > originalP ? "apparent extract must not be above original extract" : undefined),
);

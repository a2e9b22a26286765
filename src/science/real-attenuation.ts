import { input } from "./input.js";
import { defineMethod } from "./method.js";

const rounding = 1e-9;

/** Share of the extract that was really fermented. */
export const realAttenuation = defineMethod(
  {
    id: "real-attenuation",
    title: "Real attenuation",
    subject: "alcohol",
    says: "The part of the extract that was really fermented, with the shrinking of the beer's mass by lost carbon dioxide allowed for.",
    inputs: [input.extract("OE", "original extract", { low: 0.5 }), input.extract("RE", "real extract")],
    output: { symbol: "RDF", unit: "%" },
    formula: "RDF = 100 (OE - RE) / OE / (1 - 0.005161 RE)",
    range: "beers of 5 to 25 P",
    source: "real degree of fermentation, ASBC Beer-6 as given by Speers 2015",
    status: "published",
    checks: [
      { given: [12, 4.218], gives: 66.3, within: 0.02, source: "ASBC Beer-6 form (Speers 2015) by hand: 64.85 / 0.97823" },
      { given: [12, 0], gives: 100, within: 1e-9, source: "identity: all extract fermented" },
    ],
  },
  // Real extract of unfermented wort comes out a rounding above the original.
  (originalP: number, realP: number) => (100 * Math.max(0, originalP - realP)) / originalP / (1 - 0.005161 * realP),
  (originalP, realP) => (realP > originalP + rounding ? "real extract must not be above original extract" : undefined),
);

import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Share of the extract that seems fermented, alcohol ignored. */
export const apparentAttenuation = defineMethod(
  {
    id: "apparent-attenuation",
    title: "Apparent attenuation",
    subject: "alcohol",
    says: "The part of the extract that seems to have gone, as the hydrometer shows it: alcohol's lightness makes it look like more than it is. On extract, not on gravity points.",
    inputs: [input.extract("OE", "original extract", { low: 0.5 }), input.extract("AE", "apparent extract")],
    output: { symbol: "ADF", unit: "%" },
    formula: "ADF = 100 (OE - AE) / OE",
    range: "any beer; above 100 % when the beer reads below water",
    source: "apparent degree of fermentation, ASBC Beer-6 as given by Speers 2015",
    status: "published",
    checks: [{ given: [12, 2.5], gives: 79.167, within: 0.01, source: "definition by hand: 9.5 of 12.0 P" }],
  },
  (originalP: number, apparentP: number) => (100 * (originalP - apparentP)) / originalP,
  (originalP, apparentP) => (apparentP > originalP ? "apparent extract must not be above original extract" : undefined),
);

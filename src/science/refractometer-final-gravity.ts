import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { platoFromGravity } from "./plato-from-gravity.js";
import { realAttenuation } from "./real-attenuation.js";
import { realExtract } from "./real-extract.js";

const terrill = "Terrill 2011, cubic fitted to 68 sets of readings; worked out apart, checks the arithmetic";
/** The fit's author leaves out beers less fermented than this, % real degree of fermentation. */
const leastFermentedPercent = 50;

/** Gravity of fermented beer from a refractometer. */
export const refractometerFinalGravity = defineMethod(
  {
    id: "refractometer-final-gravity",
    title: "Refractometer reading of fermented beer",
    subject: "gravity",
    says: "The specific gravity of fermented beer from a refractometer, which alcohol throws off: a fit to hydrometer and refractometer readings of 68 beers. A hydrometer is the better instrument here.",
    inputs: [
      input.extract("Ri", "original extract", { low: 5, high: 30 }),
      { symbol: "B", meaning: "refractometer reading of the beer", unit: "Bx", low: 0, high: 30 },
      { symbol: "f", meaning: "factor of instrument and wort", unit: "", low: 0.9, high: 1.2 },
    ],
    output: { symbol: "S", unit: "SG" },
    formula: "S = 1.0000 - 0.0044993 Ri + 0.011774 Rf + 0.00027581 Ri^2 - 0.0012717 Rf^2 - 0.0000072800 Ri^3 + 0.000063293 Rf^3, with Rf = B / f",
    range: "beer of at least 50 % real degree of fermentation; refused for wort and beer less fermented",
    source: "Terrill 2011, an article for brewers, not peer reviewed; n = 68",
    status: "published",
    model: { limit: 0.005, as: "absolute", source: "an independent author states about ±0.005; ±0.002 to ±0.005 in practice" },
    checks: [
      { given: [12 / 1.04, 6, 1.04], gives: 1.0114, within: 0.0001, source: terrill },
      { given: [18 / 1.04, 9, 1.04], gives: 1.0147, within: 0.0001, source: terrill },
      { given: [13, 6.5, 1], gives: 1.0116, within: 0.005, source: "the same author's linear form, on other coefficients; agrees within what the fit is worth" },
    ],
  },
  terrillCubic,
  (originalExtractP: number, readingBx: number, factor: number) => {
    const apparentP = platoFromGravity(Math.min(Math.max(terrillCubic(originalExtractP, readingBx, factor), 0.98), 1.17));
    const fermented = apparentP < originalExtractP ? fermentedPercent(originalExtractP, apparentP) : 0;
    return fermented < leastFermentedPercent ? `beer must be at least ${leastFermentedPercent} % fermented for the fit to hold` : undefined;
  },
);

function terrillCubic(ri: number, readingBx: number, factor: number): number {
  const rf = readingBx / factor;
  return 1 + ri * (-0.0044993 + ri * (0.00027581 - ri * 0.00000728)) + rf * (0.011774 + rf * (-0.0012717 + rf * 0.000063293));
}

function fermentedPercent(originalP: number, apparentP: number): number {
  return realAttenuation(originalP, Math.max(0, realExtract(originalP, apparentP)));
}

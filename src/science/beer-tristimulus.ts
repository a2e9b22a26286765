import { EBC_PER_SRM } from "../units/index.js";
import { beerTransmission } from "./beer-transmission.js";
import { cie1931, type SpectralRow } from "./cie-1931.js";
import { outsideDomain } from "./domain.js";
import { input } from "./input.js";
import { type MethodInput } from "./method-about.js";
import { defineRelation } from "./relation.js";

/** CIE 1931 tristimulus values; the light itself has Y = 1. */
export interface Tristimulus {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** What the colour of beer in a glass depends on. */
export const glassInputs: readonly MethodInput[] = [
  input.color("C", "colour of the beer"),
  { symbol: "d", meaning: "width of the glass", unit: "cm", low: 0, high: 20 },
];

/** Luminance of the light itself, in the table's own unit. */
const whiteY = cie1931.reduce((total, [, , yBar, , daylight]) => total + yBar * daylight, 0);

const worked = "average spectrum (coefficients from memory) summed apart with the CIE 1931 2° observer and D65";
const luminance = (srm: number, pathCm: number, y: number) =>
  ({ given: [srm * EBC_PER_SRM, pathCm], part: "y", gives: y, within: 0.002, source: worked });

/** Colour of beer in a glass, as the standard eye sees it by daylight. */
export const beerTristimulus = defineRelation(
  {
    id: "beer-tristimulus",
    title: "Beer seen by daylight",
    subject: "color",
    says: "What the standard eye sees of daylight that has passed through a width of beer: every wavelength's share, weighed by the eye and the light.",
    inputs: glassInputs,
    output: { symbol: "X, Y, Z", unit: "share of the light" },
    formula: "X = Σ T D x̄ / Σ D ȳ, Y and Z alike, over 380 to 780 nm by 5 nm, with T from beer-transmission",
    range: "clear beer before a white ground",
    source: "CIE 1931 2° observer, illuminant D65 (ISO/CIE 11664); the brewers' own method uses illuminant C and 10° and differs a little",
    status: "published",
    checks: [luminance(4, 1, 0.8458), luminance(10, 1, 0.6666), luminance(10, 5, 0.1783)],
  },
  (colorEbc: number, pathCm: number): Tristimulus => {
    const sum = (power: (row: SpectralRow) => number) =>
      cie1931.reduce((total, row) => total + power(row) * beerTransmission(row[0], colorEbc, pathCm), 0) / whiteY;
    return {
      x: sum(([, xBar, , , daylight]) => xBar * daylight),
      y: sum(([, , yBar, , daylight]) => yBar * daylight),
      z: sum(([, , , zBar, daylight]) => zBar * daylight),
    };
  },
  {
    refuses: (colorEbc, pathCm) => outsideDomain(glassInputs, [colorEbc, pathCm]),
    read: ([colorEbc = NaN, pathCm = NaN]) => [colorEbc, pathCm],
  },
);

import { EBC_PER_SRM } from "../units/index.js";
import { beerTristimulus, glassInputs, type Tristimulus } from "./beer-tristimulus.js";
import { defineRelation } from "./relation.js";

/** sRGB, whole numbers from 0 to 255. */
export interface ScreenColor {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

const worked = "average spectrum (coefficients from memory), CIE 1931 2°, D65 and IEC 61966-2-1 worked out apart; two steps of 255 allowed";
const channel = (srm: number, pathCm: number, part: "r" | "g" | "b", gives: number) =>
  ({ given: [srm * EBC_PER_SRM, pathCm], part, gives, within: 2, source: worked });

/** Colour of beer in a glass, for a screen. */
export const beerColor = defineRelation(
  {
    id: "beer-color",
    title: "Colour on a screen",
    subject: "color",
    says: "The screen colour of a glass of beer of this width, before white by daylight. Screens can't show the deepest ambers; what they can't show is cut off at their edge.",
    inputs: glassInputs,
    output: { symbol: "r, g, b", unit: "0 to 255" },
    formula: "sRGB of X, Y, Z from beer-tristimulus, clipped to what sRGB holds",
    range: "an impression, not a measurement: screens and rooms differ",
    source: "sRGB, IEC 61966-2-1",
    status: "published",
    checks: [
      channel(4, 1, "r", 251), channel(4, 1, "g", 236), channel(4, 1, "b", 195),
      channel(10, 5, "r", 186), channel(10, 5, "g", 91), channel(10, 5, "b", 0),
    ],
  },
  (colorEbc: number, pathCm: number): ScreenColor => screenColor(beerTristimulus(colorEbc, pathCm)),
  {
    refuses: (colorEbc, pathCm) => beerTristimulus.refuses(colorEbc, pathCm),
    read: ([colorEbc = NaN, pathCm = NaN]) => [colorEbc, pathCm],
  },
);

function screenColor({ x, y, z }: Tristimulus): ScreenColor {
  return {
    r: encoded(3.2406 * x - 1.5372 * y - 0.4986 * z),
    g: encoded(-0.9689 * x + 1.8758 * y + 0.0415 * z),
    b: encoded(0.0557 * x - 0.204 * y + 1.057 * z),
  };
}

function encoded(linear: number): number {
  const clipped = Math.min(1, Math.max(0, linear));
  const shown = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * clipped ** (1 / 2.4) - 0.055;
  return Math.round(255 * shown);
}

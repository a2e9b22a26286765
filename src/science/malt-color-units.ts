import { fromOwnUnit } from "../units/index.js";
import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

/** EBC below which the malt colour scale, which has its zero off zero, is drawn straight to none. */
const straightBelowEbc = 1;

/** What one malt adds to the colour of a wort, before the fit. */
export const maltColorUnits = defineMethod(
  {
    id: "malt-color-units",
    title: "Malt colour units",
    subject: "color",
    says: "Mass times malt colour over volume, in the pounds, degrees Lovibond and US gallons the fit was made in. Add up over the malts.",
    inputs: [
      input.massKg("m", "mass of the malt"),
      { symbol: "C", meaning: "colour of the malt", unit: "EBC", low: 0, high: 2500 },
      input.volume("V", "volume of the wort at 20 °C", { low: leastAmount }),
    ],
    output: { symbol: "MCU", unit: "MCU" },
    formula: "MCU = (m/0.45359) L / (V/3.78541), with degrees Lovibond L = (C/1.9685 + 0.76) / 1.3546, and below 1 EBC in a straight line to L = 0",
    range: "malt colours as maltsters state them",
    source: "sum of pounds times Lovibond over US gallons, as in Morey, Brewing Techniques; the malt colour line SRM = 1.3546 L - 0.76 is from memory",
    status: "published",
    checks: [
      { given: [0.45359237, 23.6585, 3.785411784], gives: 9.433, within: 0.01, source: "one pound in one gallon is the malt's own degrees Lovibond; 12.018 SRM by the malt colour line, from memory" },
      { given: [1, 0, 20], gives: 0, within: 1e-9, source: "identity: sugar without colour adds none" },
    ],
  },
  (massKg: number, colorEbc: number, volumeL: number) => {
    const pounds = fromOwnUnit(massKg * 1000, "lb");
    return (pounds * lovibond(colorEbc)) / fromOwnUnit(volumeL, "gal");
  },
);

function lovibond(colorEbc: number): number {
  const share = Math.min(1, colorEbc / straightBelowEbc);
  return share * fromOwnUnit(Math.max(colorEbc, straightBelowEbc), "Lovibond");
}

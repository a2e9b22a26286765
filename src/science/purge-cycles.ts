import { toOwnUnit } from "../units/index.js";
import { standardAtmosphereKPa } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { oxygenInAir } from "./package-oxygen.js";

const dilution = "dilution by hand: 0.2095 (14.696/(14.696 + psi))^n";

/** Oxygen left after filling with gas and venting, over and over. */
export const purgeCycles = defineMethod(
  {
    id: "purge-cycles",
    title: "Oxygen left by purge cycles",
    subject: "oxygen",
    says: "The share of oxygen left in a vessel of air that is filled with carbon dioxide to a pressure and vented, a number of times. Each cycle thins what the last one left. Mind the vessel's limit, and air the room.",
    inputs: [
      { symbol: "n", meaning: "cycles", unit: "", low: 0, high: 100 },
      input.gaugePressure("p", "pressure filled to", { low: 0 }),
      input.atmosphericPressure("pa", "pressure of the air"),
    ],
    output: { symbol: "x", unit: "share" },
    formula: "x = 0.2095 (pa / (pa + p))^n",
    range: "gas well mixed at each filling; oxygen in the carbon dioxide itself (some 10 to 30 ppm in drinks gas, from memory) comes on top",
    source: "dilution of an ideal gas; a forum post of 2015 prints the same relation with worked values",
    status: "published",
    checks: [
      { given: [4.808, toOwnUnit(30, "psi"), toOwnUnit(14.7, "psi")], gives: 0.001, within: 0.00001, source: "forum post of 2015: 4.808 cycles at 30 psi reach 0.1 % (from 21 %)" },
      { given: [5, toOwnUnit(30, "psi"), standardAtmosphereKPa], gives: 805e-6, within: 8e-6, source: dilution },
      { given: [10, toOwnUnit(15, "psi"), standardAtmosphereKPa], gives: 184.6e-6, within: 1.9e-6, source: dilution },
    ],
  },
  (cycles: number, gaugeKPa: number, atmosphericKPa: number) => oxygenInAir * (atmosphericKPa / (atmosphericKPa + gaugeKPa)) ** cycles,
);

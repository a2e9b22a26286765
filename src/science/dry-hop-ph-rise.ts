import { toOwnUnit } from "../units/index.js";
import { defineMethod } from "./method.js";

const risePerPoundABarrel = 0.14;

/** How far a dry hop lifts the beer's pH. */
export const dryHopPhRise = defineMethod(
  {
    id: "dry-hop-ph-rise",
    title: "Rise of pH by the dry hop",
    subject: "dry hop",
    says: "How far leaf matter lifts the beer's pH, in proportion to the dose.",
    inputs: [{ symbol: "d", meaning: "dose", unit: "g/L", low: 0, high: 20 }],
    output: { symbol: "ΔpH", unit: "pH" },
    formula: "ΔpH = 0.14 d / 3.8654",
    range: "tested in a straight line from 2 to 8 g/L of pellets; carried on outside",
    source: "hop supplier's study, Brauwelt item 622246 (2017): 0.14 for each pound a US barrel",
    status: "published",
    checks: [
      { given: [toOwnUnit(1, "lb/bbl")], gives: 0.14, within: 0.03, source: "Brauwelt item 622246 (2017)" },
      { given: [8], gives: 0.29, within: 0.06, source: "0.14 by 2.07 lb a barrel" },
    ],
  },
  (doseGPerL: number) => (risePerPoundABarrel * doseGPerL) / toOwnUnit(1, "lb/bbl"),
);

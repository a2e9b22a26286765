import { type MethodInput } from "./method-about.js";
import { defineMethod } from "./method.js";

const kolbach = "Kolbach's relation worked by hand: hardness as CaCO3 over 3.5 and 7";
const ion = (symbol: string, meaning: string): MethodInput => ({ symbol, meaning, unit: "mg/L", low: 0, high: 5000 });

/** Alkalinity left once calcium and magnesium have done their work. */
export const residualAlkalinity = defineMethod(
  {
    id: "residual-alkalinity",
    title: "Residual alkalinity",
    subject: "brewhouse",
    says: "The water's alkalinity less what its calcium and magnesium undo in the mash, as calcium carbonate. Calcium and magnesium are given as ions.",
    inputs: [
      { symbol: "Alk", meaning: "alkalinity as CaCO3", unit: "mg/L", low: 0, high: 2000 },
      ion("Ca", "calcium"),
      ion("Mg", "magnesium"),
    ],
    output: { symbol: "RA", unit: "mg/L" },
    formula: "RA = Alk - Ca/1.4 - Mg/1.7",
    range: "describes wort at knock-out; a 2015 ASBC paper finds that mash pH needs other parameters",
    source: "Kolbach; 1/3.5 and 1/7 hold for hardness as CaCO3, 1/1.4 and 1/1.7 for mg/L of the ion",
    status: "published",
    checks: [
      { given: [100, 50, 10], gives: 58.4, within: 0.2, source: kolbach },
      { given: [250, 80, 20], gives: 181.2, within: 0.4, source: kolbach },
    ],
  },
  (alkalinityMgL: number, calciumMgL: number, magnesiumMgL: number) => alkalinityMgL - calciumMgL / 1.4 - magnesiumMgL / 1.7,
);

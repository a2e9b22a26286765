import { co2CapacityPerKPa, coldHeadspaceL, coolingInputs, coolingRule } from "./crash-balance.js";
import { defineMethod } from "./method.js";

/** Air drawn in when cold beer takes up carbon dioxide from over it. */
export const crashAirMost = defineMethod(
  {
    id: "crash-air-most",
    title: "Air drawn in, at most",
    subject: "cooling",
    says: "What a vessel open to the air draws in when the cold beer takes up all it can of the carbon dioxide over it: air fills what the gas leaves. Far less than a vessel fed with carbon dioxide draws, and all of it harmful.",
    inputs: coolingInputs,
    output: { symbol: "ΔV", unit: "L" },
    formula: "ΔV = Vg' (1 - K1/K2), at the cold temperature and the air's pressure, with K = Vb H(t) + V/(R T) the moles of carbon dioxide that beer and gas space hold per kPa, warm and cold, and Vg' the space once the beer has shrunk",
    range: "beer at equilibrium before and after, nothing but carbon dioxide over it at first, no head pressure; the little nitrogen that dissolves is left out",
    source: "mass balance of ideal gas and Henry's law with the solubility of co2-solubility",
    status: "common practice",
    checks: [
      { given: [4, 19, 20, 3], gives: 1.52, within: 0.08, source: "by hand from the sealed vessel of the same size, which falls from 1.013 to 0.631 bar: air makes up 0.382/1.013 of 4.03 L" },
    ],
  },
  (headspaceL: number, beerL: number, warmC: number, coldC: number) => {
    const coldSpaceL = coldHeadspaceL(headspaceL, beerL, warmC, coldC);
    const left = co2CapacityPerKPa(headspaceL, beerL, warmC) / co2CapacityPerKPa(coldSpaceL, beerL, coldC);
    return coldSpaceL * (1 - left);
  },
  coolingRule,
);

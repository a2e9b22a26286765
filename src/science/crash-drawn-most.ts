import { co2CapacityPerKPa, coldHeadspaceL, coolingInputs, coolingRule } from "./crash-balance.js";
import { gasConstant, kelvin } from "./gas.js";
import { defineMethod } from "./method.js";

/** Carbon dioxide drawn in when cold beer takes up all it can. */
export const crashDrawnMost = defineMethod(
  {
    id: "crash-drawn-most",
    title: "Gas drawn in, at most",
    subject: "cooling",
    says: "What a vessel fed with carbon dioxide draws in when the cold beer takes up all it can at the pressure held. It takes days to weeks, so a crash lies between contraction alone and this.",
    inputs: coolingInputs,
    output: { symbol: "ΔV", unit: "L" },
    formula: "ΔV = R T2 (Vb (H(t2) - H(t1)) + Vg'/(R T2) - Vg/(R T1)), at the cold temperature and the pressure held, with H the moles a litre of beer holds per kPa (co2-solubility) and Vg' the space once the beer has shrunk. The pressure falls out, as gas and solubility both rise with it",
    range: "beer at equilibrium before and after, nothing but carbon dioxide over it, pressure the same before and after. If air comes in instead, far less is drawn: see crash-air-most",
    source: "mass balance of ideal gas and Henry's law with the solubility of co2-solubility",
    status: "common practice",
    checks: [
      { given: [4, 19, 20, 3], gives: 12.1, within: 0.3, source: "by hand: 19 L take up 2.873 - 1.658 g/L = 23.1 g at 1.013 bar and the gas space 0.5 g more; 0.536 mol at 3 °C are 12.1 L" },
    ],
  },
  (headspaceL: number, beerL: number, warmC: number, coldC: number) => {
    const coldSpaceL = coldHeadspaceL(headspaceL, beerL, warmC, coldC);
    const molesPerKPa = co2CapacityPerKPa(coldSpaceL, beerL, coldC) - co2CapacityPerKPa(headspaceL, beerL, warmC);
    return molesPerKPa * gasConstant * kelvin(coldC);
  },
  coolingRule,
);

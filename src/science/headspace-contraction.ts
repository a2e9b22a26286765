import { coldHeadspaceL, coolingInputs, coolingRule } from "./crash-balance.js";
import { kelvin } from "./gas.js";
import { defineMethod } from "./method.js";

/** Gas drawn in by contraction alone. */
export const headspaceContraction = defineMethod(
  {
    id: "headspace-contraction",
    title: "Gas drawn in by contraction alone",
    subject: "cooling",
    says: "What a vessel draws in when it is cooled with the pressure held and no gas dissolves: the gas over the beer contracts and the beer shrinks. The least it can be.",
    inputs: coolingInputs,
    output: { symbol: "ΔV", unit: "L" },
    formula: "ΔV = Vg (1 - (t2 + 273.15)/(t1 + 273.15)) + Vb (1 - ρ(t1)/ρ(t2)), at the cold temperature",
    range: "ideal gas; beer shrinks as water does, which near 4 °C is a little less than beer",
    source: "ideal gas at constant pressure; density of water by Kell 1975",
    status: "published",
    checks: [
      { given: [4, 0, 20, 3], gives: 0.232, within: 0.002, source: "ideal gas by hand: 4 L times 1 - 276.15/293.15" },
      { given: [0, 19, 20, 3], gives: 0.033, within: 0.003, source: "densities of water 998.20 and 999.97 kg/m3: 0.18 % of 19 L" },
    ],
  },
  (headspaceL: number, beerL: number, warmC: number, coldC: number) =>
    coldHeadspaceL(headspaceL, beerL, warmC, coldC) - headspaceL * (kelvin(coldC) / kelvin(warmC)),
  coolingRule,
);

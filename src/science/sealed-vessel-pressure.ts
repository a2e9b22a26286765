import { co2CapacityPerKPa, coldHeadspaceL, coolingInputs, coolingRule } from "./crash-balance.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Pressure in a sealed vessel once its beer is cold and has taken up gas. */
export const sealedVesselPressure = defineMethod(
  {
    id: "sealed-vessel-pressure",
    title: "Pressure in a sealed vessel, at least",
    subject: "cooling",
    says: "The absolute pressure a sealed vessel falls to when it is cooled and the beer takes up carbon dioxide from the gas over it. Below the air's pressure the vessel is sucked inwards: thin walls collapse. Hold against what its maker rates it for.",
    inputs: [...coolingInputs, input.gaugePressure("p", "pressure over the beer before cooling"), input.atmosphericPressure("pa", "pressure of the air")],
    output: { symbol: "p2", unit: "kPa absolute" },
    formula: "p2 = (p + pa) K1/K2, with K = Vb H(t) + V/(R T) the moles of carbon dioxide that beer and gas space hold per kPa, warm and cold",
    range: "a rigid, tight vessel with nothing but carbon dioxide over the beer, at equilibrium before and after; vapour left out. Reached over days, not at once",
    source: "mass balance of ideal gas and Henry's law with the solubility of co2-solubility",
    status: "common practice",
    checks: [
      { given: [4, 19, 20, 3, 0, 101.3], gives: 63.1, within: 2, source: "by hand: 31.5 g dissolved and 7.3 g over the beer at 1.013 bar; at 3 °C the two hold 61.6 g a bar" },
    ],
  },
  (headspaceL: number, beerL: number, warmC: number, coldC: number, gaugeKPa: number, atmosphericKPa: number) => {
    const coldSpaceL = coldHeadspaceL(headspaceL, beerL, warmC, coldC);
    const left = co2CapacityPerKPa(headspaceL, beerL, warmC) / co2CapacityPerKPa(coldSpaceL, beerL, coldC);
    return (gaugeKPa + atmosphericKPa) * left;
  },
  coolingRule,
);

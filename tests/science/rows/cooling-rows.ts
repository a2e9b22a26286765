import { beerViscosity, co2Solubility, headspaceContraction, oxygenDrawn, residualCo2, sealedVesselPressure, settlingVelocity, standardAtmosphereKPa } from "../../../src/science/index.js";
import { CO2_GRAMS_PER_VOLUME } from "../../../src/units/index.js";
import { named, numberAt, type RowComputations } from "./reading.js";

const barKPa = 100;
const gramsPerLitre = (inputs: string) =>
  CO2_GRAMS_PER_VOLUME * co2Solubility(named(inputs, "T"), named(inputs, "p") * barKPa, 1.013 * barKPa);

export const coolingRows: RowComputations = {
  "residual CO2 at 1 atm (printed)": (inputs) => residualCo2(numberAt(inputs, 0), 0, standardAtmosphereKPa),
  "CO2 g/L = (p+1.013)*10*exp(-10.73797+2617.25/T)": gramsPerLitre,
  "CO2 g/L printed chart": gramsPerLitre,
  "Henry constant lager 6 C": () => CO2_GRAMS_PER_VOLUME * co2Solubility(6, 0, barKPa),
  "headspace contraction at constant pressure": (inputs) => headspaceContraction(100, 0, numberAt(inputs, 0), numberAt(inputs, 1)),
  "suck-back volume": (inputs) => headspaceContraction(numberAt(inputs, 0), 0, numberAt(inputs, 1), numberAt(inputs, 2)),
  "beer contraction": (inputs) => 1000 * headspaceContraction(0, numberAt(inputs, 0), numberAt(inputs, 1), numberAt(inputs, 2)),
  "sealed vessel equilibrium with CO2 dissolution": (inputs) => {
    const [beerL, headspaceL, bar, warmC, coldC] = [0, 1, 2, 3, 4].map((index) => numberAt(inputs, index)) as [number, number, number, number, number];
    return sealedVesselPressure(headspaceL, beerL, warmC, coldC, 0, bar * barKPa) / barKPa;
  },
  "oxygen if suck-back is air": (inputs) => oxygenDrawn(numberAt(inputs, 0), numberAt(inputs, 1), 20, standardAtmosphereKPa),
  "Stokes settling": (inputs) => settlingVelocity(named(inputs, "d"), named(inputs, "d_rho"), named(inputs, "mu")),
  "beer viscosity": (inputs) => beerViscosity(numberAt(inputs, 0)),
};

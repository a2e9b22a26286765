import { carbonationAt, oxygenInAir, oxygenSaturation, packageOxygen, primingSugar, primingSugars, purgeCycles, residualCo2, standardAtmosphereKPa, type SugarKind } from "../../../src/science/index.js";
import { CO2_GRAMS_PER_VOLUME, toOwnUnit } from "../../../src/units/index.js";
import { named, numberAt, type RowComputations } from "./reading.js";

const carbonationOf = (inputs: string) =>
  carbonationAt(toOwnUnit(numberAt(inputs, 1), "psi"), toOwnUnit(numberAt(inputs, 0), "F"), standardAtmosphereKPa);
const sugarNamed = (inputs: string): SugarKind => (inputs === "glucose anhydrous" ? "dextrose anhydrous" : (inputs as SugarKind));

/** Cycles after which the oxygen is down to a share of air's, by halving. */
function cyclesTo(shareOfAir: number, gaugePsi: number): number {
  let [low, high] = [0, 100];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (purgeCycles(middle, toOwnUnit(gaugePsi, "psi"), toOwnUnit(14.7, "psi")) / oxygenInAir > shareOfAir) low = middle;
    else high = middle;
  }
  return high;
}

export const packagingRows: RowComputations = {
  "volumes CO2 (printed chart)": carbonationOf,
  "volumes by (P+14.695)(0.01821+0.090115exp(-(F-32)/43.11))-0.003342": carbonationOf,
  "CO2 g/L per volume": () => CO2_GRAMS_PER_VOLUME,
  "stoichiometric CO2 yield": (inputs) => CO2_GRAMS_PER_VOLUME / primingSugars[sugarNamed(inputs)],
  "priming sugar per volume CO2 (1.977 g/L)": (inputs) => primingSugar(1, 1, 0, primingSugars[sugarNamed(inputs)]),
  "monohydrate dry-solids factor": () => primingSugars["dextrose anhydrous"] / primingSugars["dextrose monohydrate"],
  "priming dose": (inputs) =>
    primingSugar(numberAt(inputs, 0), numberAt(inputs, 2), residualCo2(numberAt(inputs, 1), 0, standardAtmosphereKPa), primingSugars["dextrose monohydrate"]),
  // The printed relation starts from 21 % oxygen.
  "purge cycles N=ln(C/0.21)/ln(14.7/44.7)": (inputs) => cyclesTo(numberAt(inputs.replace("O2", ""), 0) / 0.21, numberAt(inputs.replace("O2", ""), 1)),
  "residual O2 after n cycles": (inputs) => 1e6 * purgeCycles(named(inputs, "n"), toOwnUnit(numberAt(inputs.replace(/n=\d+, /u, ""), 0), "psi"), standardAtmosphereKPa),
  "headspace O2 contribution": (inputs) => packageOxygen(oxygenInAir, numberAt(inputs, 0), numberAt(inputs, 1), 20, standardAtmosphereKPa),
  "O2 mass per mL": (inputs) => packageOxygen(1, 0.001, 1, numberAt(inputs, 0), standardAtmosphereKPa),
  "air-saturated water DO (printed)": (inputs) => oxygenSaturation(numberAt(inputs, 0)),
  "50 F in C": () => toOwnUnit(50, "F"),
};

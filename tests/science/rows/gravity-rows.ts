import { extractMass, gravityFromPlato, hydrometerCorrection, platoFromGravity, refractometerFinalGravity, refractometerWort, waterDensity } from "../../../src/science/index.js";
import { fromOwnUnit, toOwnUnit } from "../../../src/units/index.js";
import { named, numberAt, weighedInAir, type RowComputations } from "./reading.js";

const waterKgPerL = 0.998204; // at 20 °C, Kell 1975
const finalGravity = (inputs: string) => {
  const factor = named(inputs, "WCF");
  return refractometerFinalGravity(refractometerWort(named(inputs, "RIi"), factor), named(inputs, "RIf"), factor);
};

export const gravityRows: RowComputations = {
  "Brix->SG 20/20 (printed table)": (inputs) => gravityFromPlato(named(inputs, "Bx")),
  "Brix->lb per US gal in air 20C (printed table)": (inputs) => {
    const kgPerL = gravityFromPlato(named(inputs, "Bx")) * waterKgPerL;
    return fromOwnUnit(1000 * weighedInAir(kgPerL * toOwnUnit(1, "gal"), kgPerL), "lb");
  },
  "SG->Plato ASBC cubic": (inputs) => platoFromGravity(named(inputs, "SG")),
  "SG->Brix NBS cubic": (inputs) => platoFromGravity(named(inputs, "SG")),
  "Plato->SG inverse ASBC cubic": (inputs) => gravityFromPlato(named(inputs, "P")),
  "extract lb per bbl in air at 12 P (printed)": (inputs) => {
    const gravitySg = gravityFromPlato(named(inputs, "P"));
    const extractKg = extractMass(gravitySg, toOwnUnit(1, "bbl"));
    return fromOwnUnit(1000 * weighedInAir(extractKg, gravitySg * waterKgPerL), "lb");
  },
  "water density Kell 1975 (denominator 1+16.879850e-3 t)": (inputs) => waterDensity(named(inputs, "T")),
  "water density Jones-Harris ITS-90": (inputs) => waterDensity(named(inputs, "T")),
  "hydrometer correction R*rho_w(20)/rho_w(T), 20C instrument": (inputs) => hydrometerCorrection(named(inputs, "R"), named(inputs, "T"), 20),
  "hydrometer correction 60F instrument": (inputs) =>
    hydrometerCorrection(named(inputs, "R"), toOwnUnit(named(inputs, "T"), "F"), toOwnUnit(60, "F")),
  "refractometer FG cubic (Terrill 2011)": finalGravity,
  "same trap in SG": (inputs) => gravityFromPlato(numberAt(inputs, 0)),
};

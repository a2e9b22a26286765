import { beerLostToHops, carbonationFromGravityFall, dryHopDose, dryHopLoss, dryHopMass, dryHopPhRise, oxygenInAir, packageOxygen, standardAtmosphereKPa } from "../../../src/science/index.js";
import { fromOwnUnit, toOwnUnit } from "../../../src/units/index.js";
import { numberAt, type RowComputations } from "./reading.js";

const gallon = toOwnUnit(1, "gal");
const ouncesInFiveGallons = (inputs: string) => fromOwnUnit(dryHopMass(numberAt(inputs, 0), 5 * gallon), "oz");
const poundsABarrel = (inputs: string) => fromOwnUnit(dryHopDose(numberAt(inputs, 0), 100), "lb/bbl");

export const dryHopRows: RowComputations = {
  "1 oz/US gal": () => dryHopDose(toOwnUnit(1, "oz"), gallon),
  "1 oz/US gal in lb/bbl": () => fromOwnUnit(dryHopDose(toOwnUnit(1, "oz"), gallon), "lb/bbl"),
  "8 g/L in lb/bbl": () => fromOwnUnit(8, "lb/bbl"),
  "8 g/L in oz/US gal": () => fromOwnUnit(8, "oz/gal"),
  "1 kg/hL in lb/bbl": () => fromOwnUnit(dryHopDose(1000, 100), "lb/bbl"),
  "386 g/hL printed as lb/bbl": poundsABarrel,
  "1592 g/hL printed as lb/bbl": poundsABarrel,
  "2 g/L printed as oz per 5 gal": ouncesInFiveGallons,
  "16 g/L printed as oz per 5 gal": ouncesInFiveGallons,
  "pH rise per dose": (inputs) => dryHopPhRise(toOwnUnit(numberAt(inputs, 0), "lb/bbl")),
  "pH rise per dose SI": (inputs) => dryHopPhRise(numberAt(inputs, 0)),
  "beer loss, industry rule": () => dryHopLoss("pellet").highLPerKg,
  // In percent of a hectolitre: the light dose kept 8 L/kg, the heavy one 7.
  "beer loss measured": (inputs) => beerLostToHops(numberAt(inputs, 0), numberAt(inputs, 0) < 1000 ? 8 : dryHopLoss("pellet").lowLPerKg),
  "beer loss computed": (inputs) => beerLostToHops(dryHopMass(numberAt(inputs, 1), numberAt(inputs, 0)), numberAt(inputs, 2)),
  "CO2 from SG drop in closed package": (inputs) => carbonationFromGravityFall(numberAt(inputs, 2), numberAt(inputs, 0), numberAt(inputs, 1)),
  "oxygen carried by pellets (illustration)": (inputs) => {
    const [grams, gramsPerMl, air, beerL] = [0, 1, 2, 3].map((index) => numberAt(inputs, index)) as [number, number, number, number];
    return packageOxygen(oxygenInAir, (grams / gramsPerMl / 1000) * air, beerL, 20, standardAtmosphereKPa);
  },
};

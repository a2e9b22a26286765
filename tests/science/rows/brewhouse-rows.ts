import { efficiency, extractMass, gravityFromExtract, potentialExtract, residualAlkalinity, strikeTemperature, volumeAt20 } from "../../../src/science/index.js";
import { fromOwnUnit, toOwnUnit } from "../../../src/units/index.js";
import { named, numberAt, type RowComputations } from "./reading.js";

/** Points a pound and gallon of a sugar that is all extract: 1 lb made up to 1 US gal. */
const pointsOfSugar = 46.214;

export const brewhouseRows: RowComputations = {
  "max yield % -> PPG (x46, rounded) printed": (inputs) => pointsOfSugar * potentialExtract(1, named(inputs, "yield"), 0),
  "PPG = 46.214*DBFG*(1-MC)": (inputs) => pointsOfSugar * potentialExtract(1, 100 * named(inputs, "DBFG"), 100 * named(inputs, "MC")),
  "wort/water shrinkage 100->20 C": (inputs) => volumeAt20(named(inputs, "V_hot"), 100),
  "brewhouse efficiency to kettle": (inputs) => {
    const [massKg, points, volumeL, gravitySg] = [0, 1, 2, 4].map((index) => numberAt(inputs.replace("20C", "20"), index)) as [number, number, number, number];
    return efficiency(extractMass(gravitySg, volumeL), (massKg * points) / pointsOfSugar);
  },
  "pre-boil gravity by conservation of points": (inputs) =>
    gravityFromExtract(extractMass(numberAt(inputs, 1), numberAt(inputs, 0)), numberAt(inputs, 2)),
  "cold volume at knock-out": (inputs) => volumeAt20(numberAt(inputs, 0), numberAt(inputs, 1)),
  "beer/water expansion 4 -> 20 C": () => volumeAt20(100, 4) - 100,
  "residual alkalinity RA=Alk-Ca/1.4-Mg/1.7": (inputs) => residualAlkalinity(named(inputs, "Alk"), named(inputs, "Ca"), named(inputs, "Mg")),
  "strike temperature 0.2/r*(T2-T1)+T2": (inputs) => {
    const ratioLPerKg = toOwnUnit(named(inputs, "r"), "qt") / toOwnUnit(0.001, "lb");
    return fromOwnUnit(strikeTemperature(ratioLPerKg, toOwnUnit(named(inputs, "T1"), "F"), toOwnUnit(named(inputs, "T2"), "F")), "F");
  },
};

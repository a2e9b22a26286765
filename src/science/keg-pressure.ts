import { toOwnUnit } from "../units/index.js";
import { chartOffsetVol, chartVolumesPerPsi } from "./carbonation-at.js";
import { standardAtmosphereKPa } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const miller = "Miller, Brewing Techniques 2(1), 1994, Table I (Zahm/ASBC chart), read backwards; agrees within 0.5 psi, what 0.06 vol come to";
const chartRow = (fahrenheit: number, vol: number, psi: number) =>
  ({ given: [vol, toOwnUnit(fahrenheit, "F"), standardAtmosphereKPa], gives: toOwnUnit(psi, "psi"), within: toOwnUnit(0.5, "psi"), source: miller });

/** Pressure to set for a carbonation. */
export const kegPressure = defineMethod(
  {
    id: "keg-pressure",
    title: "Keg pressure",
    subject: "carbonation",
    says: "The pressure to set on the regulator so that beer at this temperature comes to the carbonation asked: the printed chart's relation, read for pressure. Below zero the beer would lose gas even open. Never above what the vessel is stamped for.",
    inputs: [input.carbonation("C", "carbonation asked"), input.temperature("t", "temperature of the beer", { high: 30 }), input.atmosphericPressure("pa", "pressure of the air")],
    output: { symbol: "p", unit: "kPa gauge" },
    formula: "p = 6.8948 (C + 0.003342) / (0.01821 + 0.090115 e^(-(F - 32)/43.11)) - pa, with F = 1.8 t + 32",
    range: "chart from -1 to 16 °C; carried on to 30 °C",
    source: "deLange's curve through the Zahm/ASBC chart, constants from memory, solved for the pressure",
    status: "from memory",
    model: { limit: 3, as: "absolute", source: "twice the rms of 0.020 vol against 148 cells of the printed chart, in pressure" },
    checks: [
      chartRow(32, 2.48, 8), chartRow(38, 2.38, 10), chartRow(38, 2.75, 14), chartRow(46, 2.89, 20),
      { given: [2.5, toOwnUnit(38, "F"), standardAtmosphereKPa], gives: toOwnUnit(11.2, "psi"), within: toOwnUnit(0.1, "psi"), source: "a printed force-carbonation table on another polynomial: 38 °F, 2.5 vol, 11.2 psi" },
    ],
  },
  (carbonationVol: number, temperatureC: number, atmosphericKPa: number) =>
    toOwnUnit((carbonationVol - chartOffsetVol) / chartVolumesPerPsi(temperatureC), "psi") - atmosphericKPa,
);

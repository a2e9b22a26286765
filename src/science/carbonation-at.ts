import { fromOwnUnit, toOwnUnit } from "../units/index.js";
import { standardAtmosphereKPa } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const miller = "Miller, Brewing Techniques 2(1), 1994, Table I (Zahm/ASBC chart); agrees within 0.06 vol";
const chartRow = (fahrenheit: number, psi: number, gives: number) =>
  ({ given: [toOwnUnit(psi, "psi"), toOwnUnit(fahrenheit, "F"), standardAtmosphereKPa], gives, within: 0.06, source: miller });

/** Volumes a psi (absolute) at a temperature: the falling part of the chart's relation. */
export function chartVolumesPerPsi(temperatureC: number): number {
  return 0.01821 + 0.090115 * Math.exp(-(fromOwnUnit(temperatureC, "F") - 32) / 43.11);
}

/** Where the chart's straight lines meet the axis, vol. */
export const chartOffsetVol = -0.003342;

/** Carbonation that a pressure and a temperature lead to. */
export const carbonationAt = defineMethod(
  {
    id: "carbonation-at",
    title: "Carbonation at a pressure",
    subject: "carbonation",
    says: "The carbonation beer comes to under a pressure at a temperature, by a curve through the brewers' printed chart. It takes a week or more to get there.",
    inputs: [input.gaugePressure("p", "pressure on the gauge"), input.temperature("t", "temperature of the beer", { high: 30 }), input.atmosphericPressure("pa", "pressure of the air")],
    output: { symbol: "C", unit: "vol" },
    formula: "C = P (0.01821 + 0.090115 e^(-(F - 32)/43.11)) - 0.003342, with P = (p + pa)/6.8948 psi absolute and F = 1.8 t + 32",
    range: "chart from -1 to 16 °C, 1 to 30 psi on the gauge; carried on to 30 °C",
    source: "deLange's curve through the Zahm/ASBC chart, constants from memory; against 148 cells of the printed chart rms 0.020, at most 0.056 vol",
    status: "from memory",
    model: { limit: 0.04, as: "absolute", source: "twice the rms against 148 cells of the printed chart" },
    checks: [chartRow(32, 8, 2.48), chartRow(38, 10, 2.38), chartRow(38, 12, 2.57), chartRow(40, 12, 2.47), chartRow(46, 20, 2.89)],
  },
  (gaugeKPa: number, temperatureC: number, atmosphericKPa: number) =>
    fromOwnUnit(gaugeKPa + atmosphericKPa, "psi") * chartVolumesPerPsi(temperatureC) + chartOffsetVol,
);

import { CO2_GRAMS_PER_VOLUME } from "../units/index.js";
import { kelvin, standardAtmosphereKPa } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const chart = "a printed metric carbonation chart, g/L over 1.977; agrees within 0.06 g/L";
const barG = 100;

/** Grams of carbon dioxide that a litre of beer takes up for each kPa over it (absolute). */
export function co2GramsPerLitreKPa(temperatureC: number): number {
  return 0.1 * Math.exp(-10.73797 + 2617.25 / kelvin(temperatureC));
}

/** Carbon dioxide in beer at equilibrium. */
export const co2Solubility = defineMethod(
  {
    id: "co2-solubility",
    title: "Carbon dioxide beer can hold",
    subject: "cooling",
    says: "Carbon dioxide in beer once it has settled with the gas over it, by the curve the cooling balances rest on. Keg pressures use the printed chart's own relation instead.",
    inputs: [input.temperature("t", "temperature of the beer", { high: 45 }), input.gaugePressure("p", "pressure over the beer"), input.atmosphericPressure("pa", "pressure of the air")],
    output: { symbol: "C", unit: "vol" },
    formula: "C = 0.1 (p + pa) e^(-10.73797 + 2617.25 / (t + 273.15)) / 1.977",
    range: "-1 to 20 °C; measured in a lager at 6 °C: 2.4 g/L a bar, where this gives 2.56",
    source: "Troester, brewing wiki (2008), who traces it to a hobby calculation and not to a publication",
    status: "common practice",
    model: { limit: 0.07, as: "share", source: "Liger-Belair 2021, Table 1: Henry's constant of a lager at 6 °C is 6 % below" },
    checks: [
      { given: [0, 0, standardAtmosphereKPa], gives: 3.2 / CO2_GRAMS_PER_VOLUME, within: 0.06 / CO2_GRAMS_PER_VOLUME, source: chart },
      { given: [-1, barG, standardAtmosphereKPa], gives: 6.6 / CO2_GRAMS_PER_VOLUME, within: 0.06 / CO2_GRAMS_PER_VOLUME, source: chart },
      { given: [20, 0, standardAtmosphereKPa], gives: 1.7 / CO2_GRAMS_PER_VOLUME, within: 0.06 / CO2_GRAMS_PER_VOLUME, source: chart },
    ],
  },
  (temperatureC: number, gaugeKPa: number, atmosphericKPa: number) =>
    ((gaugeKPa + atmosphericKPa) * co2GramsPerLitreKPa(temperatureC)) / CO2_GRAMS_PER_VOLUME,
);

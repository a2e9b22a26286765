import { kelvin, standardAtmosphereKPa } from "./gas.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const hibberd = "Hibberd's table in Draper, priming article (hbd.org)";
/** Table value at 0 °C and slope of its logarithm against 1/T, fitted to the table. */
const atZeroVol = 1.7;
const slopeKelvin = 2627;

/** Carbon dioxide left in beer after fermentation. */
export const residualCo2 = defineMethod(
  {
    id: "residual-co2",
    title: "Carbon dioxide left after fermentation",
    subject: "cooling",
    says: "Carbon dioxide still dissolved after fermentation, from the warmest the beer was once it ended and the pressure over it then. On the brewers' printed table, which is the solubility in water.",
    inputs: [input.temperature("t", "warmest temperature after fermentation", { high: 45 }), input.gaugePressure("p", "pressure held over the beer"), input.atmosphericPressure("pa", "pressure of the air")],
    output: { symbol: "C", unit: "vol" },
    formula: "C = 1.7 e^(2627 (1/(t + 273.15) - 1/273.15)) (p + pa) / 101.325",
    range: "table from 0 to 22 °C, which the curve meets within 0.025 vol; carried on to -5 and 45 °C. Beer at rest under pure carbon dioxide",
    source: "Hibberd's table of beer at 1 atm as printed by Draper; the curve through it is fitted here, pressure by Henry's law",
    status: "published",
    model: { limit: 0.1, as: "absolute", source: "the table lies 0.04 to 0.1 vol above the solubility in beer that co2-solubility gives" },
    checks: [
      { given: [0, 0, standardAtmosphereKPa], gives: 1.7, within: 0.025, source: hibberd },
      { given: [10, 0, standardAtmosphereKPa], gives: 1.2, within: 0.025, source: hibberd },
      { given: [20, 0, standardAtmosphereKPa], gives: 0.88, within: 0.025, source: hibberd },
      { given: [22, 0, standardAtmosphereKPa], gives: 0.83, within: 0.025, source: hibberd },
    ],
  },
  (temperatureC: number, gaugeKPa: number, atmosphericKPa: number) => {
    const atOneAtmosphere = atZeroVol * Math.exp(slopeKelvin * (1 / kelvin(temperatureC) - 1 / kelvin(0)));
    return (atOneAtmosphere * (gaugeKPa + atmosphericKPa)) / standardAtmosphereKPa;
  },
);

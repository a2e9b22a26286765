import { toOwnUnit } from "../units/index.js";
import { standardAtmosphereKPa } from "./gas.js";
import { defineMethod } from "./method.js";

/** Usual pressure of the air at an altitude. */
export const atmosphericPressure = defineMethod(
  {
    id: "atmospheric-pressure",
    title: "Pressure of the air",
    subject: "carbonation",
    says: "The usual pressure of the air at an altitude, which a gauge doesn't show. Weather moves it by 2 or 3 kPa.",
    inputs: [{ symbol: "h", meaning: "altitude above the sea", unit: "m", low: -500, high: 5000 }],
    output: { symbol: "pa", unit: "kPa" },
    formula: "pa = 101.325 (1 - 0.0065 h / 288.15)^5.2559",
    range: "the standard atmosphere, -500 to 5000 m",
    source: "ISO 2533:1975, standard atmosphere: 15 °C and 101.325 kPa at the sea, 6.5 °C less each 1000 m",
    status: "published",
    checks: [
      { given: [0], gives: standardAtmosphereKPa, within: 0.001, source: "ISO 2533:1975, at sea level" },
      { given: [1000], gives: 89.875, within: 0.02, source: "ISO 2533:1975, table; from memory" },
      { given: [toOwnUnit(1000, "ft")], gives: standardAtmosphereKPa - toOwnUnit(0.5, "psi"), within: toOwnUnit(0.1, "psi"), source: "a brewery's carbonation chart: about 0.5 psi more on the gauge for each 1000 ft" },
    ],
  },
  (altitudeM: number) => standardAtmosphereKPa * (1 - (0.0065 * altitudeM) / 288.15) ** 5.2559,
);

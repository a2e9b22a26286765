import { standardAtmosphereKPa } from "./gas.js";
import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";
import { oxygenInAir, packageOxygen } from "./package-oxygen.js";

/** Oxygen in air that a cooling vessel draws in. */
export const oxygenDrawn = defineMethod(
  {
    id: "oxygen-drawn",
    title: "Oxygen drawn in with air",
    subject: "oxygen",
    says: "The oxygen in air that a cooling vessel draws in, if all of it dissolves in the beer. Finished beer wants less than a tenth of a milligram a litre.",
    inputs: [
      input.volume("Vg", "air drawn in"),
      input.volume("Vb", "beer", { low: leastAmount }),
      input.temperature("t", "temperature at which the air was measured", { high: 50 }),
      input.atmosphericPressure("pa", "pressure of the air"),
    ],
    output: { symbol: "O", unit: "mg/L" },
    formula: "O = package-oxygen with x = 0.2095",
    range: "dry air, ideal gas",
    source: "ideal gas; oxygen is 20.95 % of dry air",
    status: "published",
    checks: [{ given: [0.266, 19, 20, standardAtmosphereKPa], gives: 3.9, within: 0.1, source: "by hand: 266 mL of air hold 55.7 mL of oxygen at 1.330 mg/mL, over 19 L" }],
  },
  (airL: number, beerL: number, temperatureC: number, atmosphericKPa: number) => packageOxygen(oxygenInAir, airL, beerL, temperatureC, atmosphericKPa),
);

import { describe, expect, it } from "vitest";
import { alcoholByWeight, crashDrawnMost, extractMass, gravityFromPlato, kegPressure, realExtract, sealedVesselPressureGas, standardAtmosphereKPa } from "../../src/science/index.js";
import { fromOwnUnit, toOwnUnit } from "../../src/units/index.js";

/** Printed values on other relations than ours: how far apart they are is stated, and no farther. */
describe("agrees with printed tables that rest on other relations", () => {
  it.each([[6, 0.4073], [10, 0.4148], [12, 0.4187], [15, 0.4246], [20, 0.4351], [30, 0.458]])(
    "alcohol from %d P is 0.4 to 2.5 %% above Balling's printed factor %f (Eckhardt, HBD archive)",
    (originalP, factor) => {
      const apparentP = 2;
      const ours = alcoholByWeight(originalP, realExtract(originalP, apparentP)) / (originalP - apparentP);
      expect(ours / factor).toBeGreaterThan(1.004);
      expect(ours / factor).toBeLessThan(1.025);
    },
  );

  it.each([[8, 21.36], [10, 26.9], [12, 32.52], [15, 41.1], [20, 55.8]])(
    "extract of %d P is within 0.3 %% of the printed shortcut's %f lb a US barrel (a brewing supplier's catalogue, pp. 105-107)",
    (extractP, pounds) => {
      const found = fromOwnUnit(1000 * extractMass(gravityFromPlato(extractP), toOwnUnit(1, "bbl")), "lb");
      expect(Math.abs(found / pounds - 1)).toBeLessThan(0.003);
    },
  );

  it.each([[38, 2.5, 11.2], [40, 2.4, 11.2], [44, 2.6, 15.5], [32, 2.2, 5.4], [50, 2.5, 17.6]])(
    "keg pressure at %d °F for %f vol is within 0.34 psi of the printed force-carbonation table's polynomial (%f psi)",
    (fahrenheit, vol, psi) => {
      const found = fromOwnUnit(kegPressure(vol, toOwnUnit(fahrenheit, "F"), standardAtmosphereKPa), "psi");
      expect(Math.abs(found - psi)).toBeLessThan(0.34);
    },
  );

  it("a keg needs about half a psi more for each 1000 ft (a brewery's chart steps 0.2 to 0.3 psi for 500 ft)", () => {
    const inDenver = kegPressure(2.5, 4, standardAtmosphereKPa - 5 * toOwnUnit(0.5, "psi"));
    expect(fromOwnUnit(inDenver - kegPressure(2.5, 4, standardAtmosphereKPa), "psi")).toBeCloseTo(2.5, 6);
  });
});

describe("a 19 L beer under 4 L of gas, cooled from 20 to 3 °C (balance worked by hand)", () => {
  it("takes about 23 g of carbon dioxide to hold one atmosphere", () => {
    const drawnL = crashDrawnMost(4, 19, 20, 3);
    const grams = (44.01 * standardAtmosphereKPa * drawnL) / (8.3145 * 276.15);
    expect(grams).toBeGreaterThan(23);
    expect(grams).toBeLessThan(24); // 23.1 g into the beer, 0.5 g into the gas space
  });

  it("falls to 0.954 bar by the gas law alone", () => {
    expect(sealedVesselPressureGas(20, 3, 0, 101.3)).toBeCloseTo(95.4, 1);
  });
});

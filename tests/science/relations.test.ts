import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  alcoholByVolume, alcoholByWeight, apparentAttenuation, beerViscosity, bitternessStand, bitternessTinseth, boilOff, carbonationAt, carbonationFromGravityFall,
  colorMorey, crashAirMost, crashDrawnMost, dryHopDose, dryHopLoss, dryHopMass, extractMass, freezingPoint, gravityFromExtract, gravityFromPlato, headspaceContraction,
  hydrometerCorrection, kegPressure, maltColorUnits, platoFromGravity, primingSugar, purgeLiquid, realAttenuation, realExtract, refractometerFinalGravity, residualCo2,
  sealedVesselPressure, sealedVesselPressureGas, settlingAssumptions, settlingVelocity, standardAtmosphereKPa, strikeTemperature, volumeAt20, waterDensity,
} from "../../src/science/index.js";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Two numbers of a range that differ enough for floating point to tell the results apart. */
const rising = (min: number, max: number) =>
  fc.tuple(between(min, max), between(min, max)).map((pair) => pair.toSorted((a, b) => a - b)).filter(([a = 0, b = 0]) => b - a > (max - min) * 1e-9);
const warmThenCold = fc.tuple(between(5, 30), between(0.01, 1)).map(([warm, share]) => [warm, 4 + (warm - 4) * (1 - share)] as const);

/** States that a property holds for all values drawn; the property asserts, its return value says nothing. */
function holds<Values extends [unknown, ...unknown[]]>(...args: [...{ [Key in keyof Values]: fc.Arbitrary<Values[Key]> }, (...values: Values) => unknown]): void {
  const property = args.at(-1) as (...values: Values) => unknown;
  const drawn = fc.tuple(...(args.slice(0, -1) as fc.Arbitrary<unknown>[])) as unknown as fc.Arbitrary<Values>;
  fc.assert(fc.property(drawn, (values) => void property(...values)));
}

describe("gravity and extract", () => {
  it("extract rises with gravity", () => {
    holds(rising(0.98, 1.1787), ([low = 0, high = 0]) => expect(platoFromGravity(high)).toBeGreaterThan(platoFromGravity(low)));
  });

  it("extract doesn't jump where one table's cubic hands over to the other's (1.0790)", () => {
    const step = 1e-7;
    for (let sg = 1.0785; sg < 1.0795; sg += 1e-5) {
      const slope = (platoFromGravity(sg + step) - platoFromGravity(sg - step)) / (2 * step);
      expect(slope).toBeGreaterThan(225);
      expect(slope).toBeLessThan(228); // 226.6 P a unit of gravity on both cubics, by their derivatives at 1.079
    }
  });

  it("gravity to extract and back is the same gravity", () => {
    holds(between(0.981, 1.178), (sg) => expect(gravityFromPlato(platoFromGravity(sg))).toBeCloseTo(sg, 12));
  });

  it("extract of a wort and back is the same gravity, in any volume", () => {
    holds(between(1.001, 1.17), between(0.5, 5000), (sg, volumeL) => expect(gravityFromExtract(extractMass(sg, volumeL), volumeL)).toBeCloseTo(sg, 10));
  });

  it("a hydrometer at the temperature it is marked for reads true at 20 °C", () => {
    holds(between(1, 1.1), (sg) => expect(hydrometerCorrection(sg, 20, 20)).toBeCloseTo(sg, 12));
  });

  it("water is heaviest at 4 °C", () => {
    holds(between(-5, 110), (temperatureC) => expect(waterDensity(temperatureC)).toBeLessThanOrEqual(waterDensity(3.98) + 1e-3));
  });

  it("hot wort is less at 20 °C, cold beer more, in proportion to the volume", () => {
    holds(between(1, 100), (volumeL) => {
      expect(volumeAt20(volumeL, 98)).toBeLessThan(volumeL);
      expect(volumeAt20(volumeL, 2)).toBeGreaterThan(volumeL);
      expect(volumeAt20(2 * volumeL, 98)).toBeCloseTo(2 * volumeAt20(volumeL, 98), 9);
    });
  });
});

describe("alcohol", () => {
  it("more fermented is more alcohol and more attenuation", () => {
    holds(between(8, 25), rising(0, 0.95), (originalP, [dry = 0, sweet = 0]) => {
      const alcohol = (share: number) => alcoholByWeight(originalP, realExtract(originalP, originalP * share));
      expect(alcohol(dry)).toBeGreaterThan(alcohol(sweet));
      expect(apparentAttenuation(originalP, originalP * dry)).toBeGreaterThan(apparentAttenuation(originalP, originalP * sweet));
    });
  });

  it("unfermented wort has none, and isn't attenuated", () => {
    holds(between(1, 30), (originalP) => {
      const realP = realExtract(originalP, originalP);
      expect(alcoholByVolume(alcoholByWeight(originalP, realP), 1.05)).toBeCloseTo(0, 12);
      expect(realAttenuation(originalP, realP)).toBeCloseTo(0, 12);
    });
  });

  it("by volume is more than by weight in any beer lighter than 1.26 times ethanol", () => {
    holds(between(0.1, 12), between(0.99, 1.06), (byWeight, finalSg) => expect(alcoholByVolume(byWeight, finalSg)).toBeGreaterThan(byWeight));
  });
});

describe("bitterness and colour", () => {
  it("bitterness is in proportion to hops and alpha acids, and grows with time", () => {
    holds(between(1, 20), between(1, 200), rising(1, 120), (alpha, massG, [short = 0, long = 0]) => {
      expect(bitternessTinseth(alpha, 2 * massG, long, 1.05, 20)).toBeCloseTo(2 * bitternessTinseth(alpha, massG, long, 1.05, 20), 8);
      expect(bitternessTinseth(alpha, massG, long, 1.05, 20)).toBeGreaterThan(bitternessTinseth(alpha, massG, short, 1.05, 20));
    });
  });

  it("a stand gives less the cooler it is, and never more than the boil", () => {
    holds(rising(60, 100), between(1, 60), ([cool = 0, hot = 0], minutes) => {
      const boiled = bitternessTinseth(8, 50, minutes, 1.05, 20);
      expect(bitternessStand(8, 50, minutes, cool, 1.05, 20)).toBeLessThan(bitternessStand(8, 50, minutes, hot, 1.05, 20));
      expect(bitternessStand(8, 50, minutes, hot, 1.05, 20)).toBeLessThanOrEqual(boiled * (1 + 1e-12));
    });
  });

  it("darker malt and more of it make darker beer", () => {
    holds(between(0.1, 10), rising(1, 500), (massKg, [pale = 0, dark = 0]) => {
      expect(maltColorUnits(massKg, dark, 25)).toBeGreaterThan(maltColorUnits(massKg, pale, 25));
    });
    holds(rising(0.1, 167), ([less = 0, more = 0]) => expect(colorMorey(more)).toBeGreaterThan(colorMorey(less)));
  });
});

describe("dry hop", () => {
  it("dose and mass undo each other", () => {
    holds(between(0, 20), between(1, 1000), (dose, volumeL) => expect(dryHopDose(dryHopMass(dose, volumeL), volumeL)).toBeCloseTo(dose, 10));
  });

  it("loss is a range for every form, cones keep the most, concentrate the least, a bag may keep less", () => {
    const [pellet, cone, concentrate] = [dryHopLoss("pellet"), dryHopLoss("cone"), dryHopLoss("concentrate")];
    for (const range of [pellet, cone, concentrate]) expect(range.lowLPerKg).toBeLessThan(range.highLPerKg);
    expect(cone.lowLPerKg).toBeGreaterThan(pellet.highLPerKg);
    expect(concentrate.highLPerKg).toBeLessThan(pellet.lowLPerKg);
    expect(dryHopLoss("pellet", "bag")).toMatchObject({ lowLPerKg: 0.8, highLPerKg: pellet.highLPerKg, status: "common practice" });
  });
});

describe("cooling", () => {
  it("less carbon dioxide stays in warmer beer, more under pressure", () => {
    holds(rising(-1, 40), ([cold = 0, warm = 0]) => {
      expect(residualCo2(warm, 0, standardAtmosphereKPa)).toBeLessThan(residualCo2(cold, 0, standardAtmosphereKPa));
      expect(residualCo2(warm, 20, standardAtmosphereKPa)).toBeGreaterThan(residualCo2(warm, 0, standardAtmosphereKPa));
    });
  });

  // Under a headspace of a few percent the beer gives gas off into the room its own shrinking makes; left out here.
  it("what is drawn in lies in order: contraction alone, air at most, carbon dioxide at most", () => {
    holds(between(0.05, 1), between(5, 50), warmThenCold, (headspaceShare, beerL, [warmC, coldC]) => {
      const headspaceL = headspaceShare * beerL;
      const least = headspaceContraction(headspaceL, beerL, warmC, coldC);
      const air = crashAirMost(headspaceL, beerL, warmC, coldC);
      expect(least).toBeGreaterThan(0);
      expect(air).toBeGreaterThan(least);
      expect(crashDrawnMost(headspaceL, beerL, warmC, coldC)).toBeGreaterThan(air);
      expect(air).toBeLessThan(headspaceL + 0.01 * beerL); // air only takes the place of gas
    });
  });

  it("a sealed vessel ends between the gas law alone and gas taken up, both below where it began", () => {
    holds(between(0.5, 20), between(5, 50), between(0, 200), warmThenCold, (headspaceL, beerL, gaugeKPa, [warmC, coldC]) => {
      const least = sealedVesselPressure(headspaceL, beerL, warmC, coldC, gaugeKPa, standardAtmosphereKPa);
      const most = sealedVesselPressureGas(warmC, coldC, gaugeKPa, standardAtmosphereKPa);
      expect(least).toBeGreaterThan(0);
      expect(least).toBeLessThan(most);
      expect(most).toBeLessThan(gaugeKPa + standardAtmosphereKPa);
    });
  });

  it("nothing happens without cooling", () => {
    holds(between(0, 20), between(1, 50), between(0, 30), (headspaceL, beerL, temperatureC) => {
      expect(headspaceContraction(headspaceL, beerL, temperatureC, temperatureC)).toBeCloseTo(0, 12);
      expect(crashDrawnMost(headspaceL, beerL, temperatureC, temperatureC)).toBeCloseTo(0, 9);
      expect(sealedVesselPressure(headspaceL, beerL, temperatureC, temperatureC, 10, 100)).toBeCloseTo(110, 9);
    });
  });
});

describe("settling and freezing", () => {
  it("single cells sink a few millimetres an hour in cold beer, flocs two hundred (Stokes by hand: 3.6 and 243 mm/h at 6 °C)", () => {
    const { cell, floc } = settlingAssumptions;
    const sink = (particle: typeof cell | typeof floc) => settlingVelocity(particle.diameterUm, particle.densityDifferenceKgM3, beerViscosity(6));
    expect(sink(cell)).toBeCloseTo(3.63, 1);
    expect(sink(floc)).toBeCloseTo(243, 0);
  });

  it("stronger beer freezes colder; ordinary beer of 5 % at 2 to 3 degrees below zero (common practice)", () => {
    holds(rising(0, 12), ([weak = 0, strong = 0]) => expect(freezingPoint(strong, 12)).toBeLessThan(freezingPoint(weak, 12)));
    expect(freezingPoint(4, 12)).toBeLessThan(-2);
    expect(freezingPoint(4, 12)).toBeGreaterThan(-3);
  });
});

describe("carbonation", () => {
  it("pressure rises with the carbonation asked and with temperature", () => {
    holds(rising(1, 4), rising(0, 25), ([less = 0, more = 0], [cold = 0, warm = 0]) => {
      expect(kegPressure(more, cold, standardAtmosphereKPa)).toBeGreaterThan(kegPressure(less, cold, standardAtmosphereKPa));
      expect(kegPressure(more, warm, standardAtmosphereKPa)).toBeGreaterThan(kegPressure(more, cold, standardAtmosphereKPa));
    });
  });

  it("the pressure for a carbonation leads to that carbonation, at any altitude", () => {
    holds(between(1.5, 4), between(0, 20), between(70, 105), (vol, temperatureC, airKPa) => {
      expect(carbonationAt(kegPressure(vol, temperatureC, airKPa), temperatureC, airKPa)).toBeCloseTo(vol, 10);
    });
  });

  it("a larger fall in gravity adds more", () => {
    holds(rising(0, 0.01), ([less = 0, more = 0]) => {
      expect(carbonationFromGravityFall(1.05, 1.012, more)).toBeGreaterThan(carbonationFromGravityFall(1.05, 1.012, less));
    });
  });
});

describe("inputs that don't go together are refused in a sentence, and computing on them throws", () => {
  it.each([
    ["apparent extract above original", () => realExtract.refuses(10, 11), () => realExtract(10, 11)],
    ["real extract above original", () => alcoholByWeight.refuses(10, 11), () => alcoholByWeight(10, 11)],
    ["apparent extract above original, attenuation", () => apparentAttenuation.refuses(10, 11), () => apparentAttenuation(10, 11)],
    ["more after the boil than before", () => boilOff.refuses(20, 21, 1), () => boilOff(20, 21, 1)],
    ["grain warmer than the mash", () => strikeTemperature.refuses(3, 60, 50), () => strikeTemperature(3, 60, 50)],
    ["less carbonation asked than is there", () => primingSugar.refuses(19, 0.5, 0.9, 4), () => primingSugar(19, 0.5, 0.9, 4)],
    ["an empty vessel without even gas", () => crashDrawnMost.refuses(0, 0, 20, 3), () => crashDrawnMost(0, 0, 20, 3)],
    ["a vessel that warms", () => crashDrawnMost.refuses(4, 19, 3, 20), () => crashDrawnMost(4, 19, 3, 20)],
    ["more air left than the vessel holds", () => purgeLiquid.refuses(20, 19), () => purgeLiquid(20, 19)],
    ["gravity in the package above the original", () => carbonationFromGravityFall.refuses(1.04, 1.05, 0.001), () => carbonationFromGravityFall(1.04, 1.05, 0.001)],
    ["more extract than a wort can hold", () => gravityFromExtract.refuses(9, 10), () => gravityFromExtract(9, 10)],
    // Terrill's cubic would say 1.0374 for unfermented wort that reads 12 Bx.
    ["a refractometer fit for fermented beer on wort", () => refractometerFinalGravity.refuses(12 / 1.04, 12, 1.04), () => refractometerFinalGravity(12 / 1.04, 12, 1.04)],
  ])("%s", (_what, refuses, compute) => {
    expect(refuses()).toMatch(/^\p{Ll}.*[^.]$/u);
    expect(compute).toThrow(RangeError);
  });

  it("what is fine isn't refused", () => {
    expect(realExtract.refuses(12, 2.5)).toBeUndefined();
    expect(refractometerFinalGravity.refuses(12, 6, 1.04)).toBeUndefined();
  });
});

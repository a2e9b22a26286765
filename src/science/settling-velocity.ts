import { defineMethod } from "./method.js";

const gravityMS2 = 9.80665; // standard gravity, exact
const mmPerHour = 3600 * 1000;

/** Sizes and densities to estimate with: single yeast cells and a small floc of them (from memory). */
export const settlingAssumptions = {
  cell: { diameterUm: 8, densityDifferenceKgM3: 70, says: "a single yeast cell, 5 to 10 µm across and 60 to 90 kg/m³ heavier than beer" },
  floc: { diameterUm: 100, densityDifferenceKgM3: 30, says: "a small clump of cells, a tenth of a millimetre across, loosely packed" },
  source: "from memory",
} as const;

const stokes = "Stokes' law worked by hand";

/** How fast a particle sinks in still beer. */
export const settlingVelocity = defineMethod(
  {
    id: "settling-velocity",
    title: "Settling",
    subject: "cooling",
    says: "How fast a particle sinks in beer that stands still. Cold makes beer thicker and single cells slower; a crash clears beer because cells clump and the beer stops moving.",
    inputs: [
      { symbol: "d", meaning: "diameter of the particle", unit: "um", low: 0.1, high: 200 },
      { symbol: "Δρ", meaning: "density above the beer's", unit: "kg/m3", low: 0, high: 2000 },
      { symbol: "μ", meaning: "viscosity of the beer", unit: "mPa.s", low: 0.5, high: 10 },
    ],
    output: { symbol: "v", unit: "mm/h" },
    formula: "v = Δρ g d^2 / (18 μ)",
    range: "single round particles in still beer; an estimate within a factor of three or so for yeast",
    source: "Stokes 1851",
    status: "published",
    checks: [
      { given: [5, 70, 2.42], gives: 1.42, within: 0.02, source: stokes },
      { given: [8, 70, 2.42], gives: 3.63, within: 0.02, source: `${stokes}; viscosity of a lager at 6 °C, Liger-Belair 2021` },
      { given: [100, 30, 2.42], gives: 243, within: 1, source: stokes },
    ],
  },
  (diameterUm: number, densityDifferenceKgM3: number, viscosityMPaS: number) => {
    const diameterM = diameterUm * 1e-6;
    return ((densityDifferenceKgM3 * gravityMS2 * diameterM ** 2) / (18 * viscosityMPaS * 1e-3)) * mmPerHour;
  },
);

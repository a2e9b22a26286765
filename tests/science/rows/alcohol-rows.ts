import { alcoholByVolume, alcoholByWeight, apparentAttenuation, energy, gravityFromPlato, platoFromGravity, realAttenuation, realExtract } from "../../../src/science/index.js";
import { named, type RowComputations } from "./reading.js";

const kJPerKcal = 4.184;

/** Everything the chain gives, from a row that states OG and FG or OE and AE. */
function chain(inputs: string) {
  const isGravity = inputs.includes("OG=");
  const originalP = isGravity ? platoFromGravity(named(inputs, "OG")) : named(inputs, "OE");
  const apparentP = isGravity ? platoFromGravity(named(inputs, "FG")) : named(inputs, "AE");
  const finalSg = isGravity ? named(inputs, "FG") : gravityFromPlato(apparentP);
  const realP = realExtract(originalP, apparentP);
  const byWeightPercent = alcoholByWeight(originalP, realP);
  return {
    realP, byWeightPercent, finalSg,
    byVolumePercent: alcoholByVolume(byWeightPercent, finalSg),
    apparentPercent: apparentAttenuation(originalP, apparentP),
    realPercent: realAttenuation(originalP, realP),
    kcalPer100mL: energy(byWeightPercent, realP, finalSg) / kJPerKcal,
  };
}

/** The original extract for which alcohol and real extract come out as measured, by halving. */
function originalFromMeasured(alcoholPercent: number, realP: number): number {
  let [low, high] = [realP, 40];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (alcoholByWeight(middle, realP) < alcoholPercent) low = middle;
    else high = middle;
  }
  return high;
}

/** Combined standard uncertainty of alcohol by volume, both gravities known to ±0.001 (rectangular). */
function alcoholUncertainty(): number {
  const abv = (og: number, fg: number) => chain(`OG=${og}, FG=${fg}`).byVolumePercent;
  const step = 1e-6;
  const perOriginal = (abv(1.05 + step, 1.01) - abv(1.05 - step, 1.01)) / (2 * step);
  const perFinal = (abv(1.05, 1.01 + step) - abv(1.05, 1.01 - step)) / (2 * step);
  return Math.hypot(perOriginal, perFinal) * (0.001 / Math.sqrt(3));
}

export const alcoholRows: RowComputations = {
  "measured mean ABW vs Balling from OE,RE (data set means, n=36..221)": (inputs) => alcoholByWeight(named(inputs, "OE"), named(inputs, "RE")),
  "OE back-calculated by Balling from measured A,RE": (inputs) => originalFromMeasured(named(inputs, "A"), named(inputs, "RE")),
  "RE from OE,AE (0.1808/0.8192)": (inputs) => realExtract(named(inputs, "OE"), named(inputs, "AE")),
  "ABW printed OG/FG table (method tolerance)": (inputs) => chain(inputs).byWeightPercent,
  "real extract": (inputs) => chain(inputs).realP,
  ABW: (inputs) => chain(inputs).byWeightPercent,
  ABV: (inputs) => chain(inputs).byVolumePercent,
  ADF: (inputs) => chain(inputs).apparentPercent,
  RDF: (inputs) => chain(inputs).realPercent,
  "kcal per 355 mL (6.9A+4(RE-0.1))*SG*3.55": (inputs) => chain(inputs).kcalPer100mL * 3.55,
  "worked example RE": (inputs) => chain(inputs).realP,
  "worked example ABW": (inputs) => chain(inputs).byWeightPercent,
  "worked example ABV": (inputs) => chain(inputs).byVolumePercent,
  "worked example ADF": (inputs) => chain(inputs).apparentPercent,
  "worked example kcal/100 g": (inputs) => chain(inputs).kcalPer100mL / chain(inputs).finalSg,
  "worked example kcal/355 mL": (inputs) => chain(inputs).kcalPer100mL * 3.55,
  "u(ABV) Balling model (sens 135.4, -132.2)": alcoholUncertainty,
};

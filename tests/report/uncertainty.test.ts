import { describe, expect, it } from "vitest";
import { apply, asFigure, figureReport, figureWorking, isMissing, plusMinusOf, readingOf, type Known, type Result } from "../../src/report/known.js";
import {
  alcoholByVolume, alcoholByWeight, apparentAttenuation, dryHopDose, platoFromGravity, realExtract, volumeDifference,
} from "../../src/science/index.js";
import { seededUniform } from "./seeded-uniform.js";

const DRAWS = 100_000;
const LIMIT = 0.001;

function known(result: Result): Known {
  if (isMissing(result)) throw new Error(result.missing);
  return result;
}

function abvFrom(original: Result, final: Result): Result {
  const originalExtract = apply(platoFromGravity, original);
  const real = apply(realExtract, originalExtract, apply(platoFromGravity, final));
  return apply(alcoholByVolume, apply(alcoholByWeight, originalExtract, real), final);
}

function attenuationFrom(original: Result, final: Result): Result {
  return apply(apparentAttenuation, apply(platoFromGravity, original), apply(platoFromGravity, final));
}

const original = readingOf("fermenter.gravity", 1.05, "SG", LIMIT, "1.050");
const final = readingOf("fermentation.readings[0].gravity", 1.01, "SG", LIMIT, "1.010");

/** Standard deviation of a relation for draws from both hydrometer readings' rectangular limits. */
function spread(compute: (originalSg: number, finalSg: number) => number): number {
  const uniform = seededUniform(20_260_307);
  const draw = (centre: number): number => centre + (2 * uniform() - 1) * LIMIT;
  const values = Array.from({ length: DRAWS }, () => compute(draw(1.05), draw(1.01)));
  const mean = values.reduce((sum, value) => sum + value, 0) / DRAWS;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (DRAWS - 1));
}

/** The same chains on bare numbers, without any propagation. */
function plainAbv(originalSg: number, finalSg: number): number {
  const originalP = platoFromGravity(originalSg);
  return alcoholByVolume(alcoholByWeight(originalP, realExtract(originalP, platoFromGravity(finalSg))), finalSg);
}

function plainAttenuation(originalSg: number, finalSg: number): number {
  return apparentAttenuation(platoFromGravity(originalSg), platoFromGravity(finalSg));
}

describe("uncertainty carried from readings to figures", () => {
  it("gives alcohol ± 0.22 for two hydrometer readings of ± 0.001", () => {
    // GUM (JCGM 100:2008) 5.1.2 with sensitivities +135.4 and -132.2 % per SG, u = 0.001/√3 each:
    // 2 √((135.4² + 132.2²)/3) 0.001 = 0.2185. Sensitivities by hand from the Balling chain, as a brewing reference prints them.
    expect(plusMinusOf(known(abvFrom(original, final)))).toBeCloseTo(0.2185, 3);
  });

  it("agrees with a Monte Carlo of 100,000 draws for alcohol", () => {
    // JCGM 101:2008: draws from the readings' own distributions, no linearisation. The spread of a standard
    // deviation over 10⁵ draws is about 0.2 %; 1 % leaves room for what linearising costs.
    const halfWidth = plusMinusOf(known(abvFrom(original, final))) ?? 0;
    expect(halfWidth / 2 / spread(plainAbv)).toBeGreaterThan(0.99);
    expect(halfWidth / 2 / spread(plainAbv)).toBeLessThan(1.01);
  });

  it("agrees with a Monte Carlo of 100,000 draws for attenuation", () => {
    const halfWidth = plusMinusOf(known(attenuationFrom(original, final))) ?? 0;
    const ratio = halfWidth / 2 / spread(plainAttenuation);
    expect(ratio).toBeGreaterThan(0.99);
    expect(ratio).toBeLessThan(1.01);
  });

  it("counts a reading used twice once: a volume less itself is exactly nothing", () => {
    const volume = readingOf("fermenter.volume", 20, "L", 0.25, "20 L");
    expect(plusMinusOf(known(apply(volumeDifference, volume, volume)))).toBeUndefined();
  });

  it("adds independent readings as the root of their squares", () => {
    // 0.25/√3 = 0.14434 each; 2 √(2 × 0.14434²) = 0.40825
    const a = readingOf("fermenter.volume", 20, "L", 0.25, "20 L");
    const b = readingOf("transfer.volume", 18, "L", 0.25, "18 L");
    expect(plusMinusOf(known(apply(volumeDifference, a, b)))).toBeCloseTo(0.40825, 5);
  });

  it("gives 5.26 ± 0.17 g/L for 100 g ± 1 in 19 L ± 0.5", () => {
    // By hand (GUM 5.1.6, relative form): 5.263 × 2 √((1/100)² + (0.5/19)²)/√3 = 0.171.
    const dose = known(apply(dryHopDose, readingOf("dry_hops[0].amount", 100, "g", 1, "100 g"), readingOf("fermenter.volume", 19, "L", 0.5, "19 L")));
    expect(dose.value).toBeCloseTo(5.263, 3);
    expect(plusMinusOf(dose)).toBeCloseTo(0.171, 3);
  });

  it("names the figures and readings a figure rests on, and which reading to improve", () => {
    const og = asFigure("original-gravity", original);
    const fg = asFigure("final-gravity", final);
    const attenuation = asFigure("apparent-attenuation", known(attenuationFrom(og, fg)));
    expect(figureReport(attenuation).from).toEqual(["original-gravity", "final-gravity"]);
    const { shares } = figureWorking("apparent-attenuation", attenuation);
    expect(shares.map((share) => share.reading)).toEqual(["fermentation.readings[0].gravity", "fermenter.gravity"]);
    expect(shares.reduce((sum, share) => sum + share.share, 0)).toBeCloseTo(1, 9);
  });

  it("passes on why a value is missing instead of a number", () => {
    const result = attenuationFrom(original, { missing: "a gravity reading before packaging" });
    expect(result).toEqual({ missing: "a gravity reading before packaging" });
  });

  it("refuses readings a relation can't take, in a sentence", () => {
    const rising = attenuationFrom(final, original);
    expect(isMissing(rising) && rising.missing).toMatch(/can't be computed/u);
  });
});

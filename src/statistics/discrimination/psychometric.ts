import { normalCdf, normalDensity } from "../distributions/normal.js";
import { integrate } from "../numerics/quadrature.js";
import { findRoot } from "../numerics/root.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";

/** The normal density is below 1e-17 beyond this. */
const reach = 8.5;
/** Every test is answered right with a chance of 1 in double precision from here on. */
const largestDPrime = 64;

const curves: Readonly<Record<DiscriminationTest, (d: number) => number>> = {
  "two-afc": (d) => normalCdf(d / Math.SQRT2),
  "three-afc": (d) => integrate((z) => normalDensity(z) * normalCdf(z + d) ** 2, -reach, reach),
  "duo-trio": (d) => {
    const [a, b] = [normalCdf(d / Math.SQRT2), normalCdf(d / Math.sqrt(6))];
    return 1 - a - b + 2 * a * b;
  },
  triangle: (d) => {
    const shift = d * Math.sqrt(2 / 3);
    const root = (z: number): number => normalCdf(shift - z * Math.sqrt(3)) + normalCdf(-shift - z * Math.sqrt(3));
    return 2 * integrate((z) => root(z) * normalDensity(z), 0, reach);
  },
  tetrad: (d) => {
    const wrong = (z: number): number => normalCdf(z - d) * (2 * normalCdf(z) - normalCdf(z - d));
    return 1 - 2 * integrate((z) => normalDensity(z) * wrong(z), -reach, reach);
  },
};

/**
 * Chance of a right answer when the samples lie d′ standard deviations apart on one perceived
 * scale with equal scatter (Thurstone's model).
 *
 * Source: Ura 1960, David & Trivedi 1962, Ennis 1993, Ennis et al. 1998; ASTM E2262. Formulas
 * from memory; confirmed by simulation of each decision rule and against R psyphy (dprime.csv).
 *
 * @param dPrime 0 or more, without unit
 */
export function proportionCorrect(test: DiscriminationTest, dPrime: number): number {
  if (!(dPrime >= 0 && Number.isFinite(dPrime))) throw new RangeError(`proportionCorrect requires d′ of 0 or more, got ${dPrime}`);
  return Math.min(1, Math.max(guessProbability(test), curves[test](dPrime)));
}

/**
 * The d′ that makes a right answer that likely: 0 at or below chance, null (no upper bound) at 1.
 *
 * Source: inverse of `proportionCorrect`, by root finding.
 */
export function dPrimeOf(test: DiscriminationTest, proportion: number): number | null {
  if (!(proportion >= 0 && proportion <= 1)) throw new RangeError(`dPrimeOf requires a proportion from 0 to 1, got ${proportion}`);
  if (proportion <= guessProbability(test)) return 0;
  const excess = (d: number): number => proportionCorrect(test, d) - proportion;
  let above = 1;
  while (above < largestDPrime && excess(above) < 0) above *= 2;
  return proportion === 1 || excess(above) < 0 ? null : findRoot(excess, above === 1 ? 0 : above / 2, above, 1e-9);
}

import { normalCdf } from "../distributions/normal.js";
import { integrate } from "../numerics/quadrature.js";
import { findRoot } from "../numerics/root.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";

/** Of a d′ that is looked for; more digits mean nothing beside a panel's limits, and each costs an integral. */
const dPrimeTolerance = 1e-8;
/** Every test is answered right with a chance of 1 in double precision from here on. */
const largestDPrime = 64;

const curves: Readonly<Record<DiscriminationTest, (d: number) => number>> = {
  "two-afc": (d) => normalCdf(d / Math.SQRT2),
  "three-afc": (d) => normalCdf(d / Math.SQRT2) - 2 * owenT(d / Math.SQRT2, 1 / Math.sqrt(3)),
  "duo-trio": (d) => {
    const [a, b] = [normalCdf(d / Math.SQRT2), normalCdf(d / Math.sqrt(6))];
    return 1 - a - b + 2 * a * b;
  },
  triangle: (d) => 1 - 4 * owenT(d / Math.sqrt(6), Math.sqrt(3)),
  tetrad: (d) => 1 - 8 * owenT(d / Math.SQRT2, 1 / Math.sqrt(3)),
};

/**
 * Owen's T, the part of a bivariate normal distribution that Φ leaves over. The integrals of the three tests over
 * one perceived sample come down to it: the triangle's ∫ from 0 of 2 φ(z) (Φ(d√⅔ − z√3) + Φ(−d√⅔ − z√3)), the
 * tetrad's 1 − 2 ∫ φ(z) Φ(z − d) (2 Φ(z) − Φ(z − d)), the three-fold choice's ∫ φ(z) Φ(z + d)². Without Φ inside
 * they take a tenth of the time.
 *
 * Source: Owen, Annals of Mathematical Statistics 27 (1956). From memory; T(0, a) = arctan(a) / 2π gives each 1/3 at d = 0.
 */
function owenT(h: number, a: number): number {
  return integrate((x) => Math.exp(-(h * h * (1 + x * x)) / 2) / (1 + x * x), 0, a, 1e-12) / (2 * Math.PI);
}

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
  return proportion === 1 || excess(above) < 0 ? null : findRoot(excess, above === 1 ? 0 : above / 2, above, dPrimeTolerance);
}

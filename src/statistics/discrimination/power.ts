import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { findRoot } from "../numerics/root.js";
import { binomialPower, settlePower, type PowerOptions } from "./binomial-power.js";
import { criticalCount } from "./discrimination-test.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";
import { dPrimeOf, proportionCorrect } from "./psychometric.js";

/**
 * Chance that a panel of so many finds a difference of d′: exact binomial power.
 *
 * Source: ASTM E2262; Schlich 1993 (tables). From memory; checked against R (power_dprime.csv).
 */
export function discriminationPower(test: DiscriminationTest, tasters: number, dPrime: number, alpha = 0.05): number {
  requireCount("discriminationPower", "tasters", tasters, 1);
  requireOpenProbability("discriminationPower", "alpha", alpha);
  return binomialPower(guessProbability(test), proportionCorrect(test, dPrime), tasters, alpha);
}

/**
 * The d′ that a panel of so many would find with the given power; undefined when not even all
 * answers right reach alpha.
 */
export function smallestDetectable(test: DiscriminationTest, tasters: number, options: PowerOptions = {}): number | undefined {
  const { alpha, power } = settlePower("smallestDetectable", options);
  requireCount("smallestDetectable", "tasters", tasters, 1);
  const guess = guessProbability(test);
  if (criticalCount(guess, tasters, alpha) === undefined) return undefined;
  const needed = findRoot((correct) => binomialPower(guess, correct, tasters, alpha) - power, guess, 1);
  return dPrimeOf(test, needed) ?? undefined;
}

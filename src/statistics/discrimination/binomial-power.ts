import { binomialAtLeast } from "../distributions/binomial.js";
import { requireOpenProbability } from "../numerics/arguments.js";
import { criticalCount } from "./discrimination-test.js";

export interface PowerOptions {
  /** Of the test; 0.05 unless said. */
  readonly alpha?: number;
  /** Chance of finding the difference; 0.8 unless said. */
  readonly power?: number;
}

/**
 * Chance of reaching the critical number when a right answer has the chance `correct`; 0 when no
 * number is critical.
 *
 * Source: exact binomial power, textbook. From memory; checked against R (power_dprime.csv).
 */
export function binomialPower(guess: number, correct: number, tasters: number, alpha: number): number {
  const critical = criticalCount(guess, tasters, alpha);
  return critical === undefined ? 0 : binomialAtLeast(critical, tasters, correct);
}

/** The options with their defaults, checked. */
export function settlePower(caller: string, { alpha = 0.05, power = 0.8 }: PowerOptions): Required<PowerOptions> {
  requireOpenProbability(caller, "alpha", alpha);
  requireOpenProbability(caller, "power", power);
  if (power <= alpha) throw new RangeError(`${caller} requires a power above alpha, got ${power} and ${alpha}`);
  return { alpha, power };
}

import { requireOpenProbability } from "../numerics/arguments.js";
import { binomialPower, settlePower, type PowerOptions } from "./binomial-power.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";
import { proportionCorrect } from "./psychometric.js";

/** Panels above this are nothing a club will pour. */
const largestPanel = 1000;
/** The power saws up and down with a period of 2 or 3 tasters; so many good sizes in a row end the search. */
const settledAfter = 40;

export interface PanelSize {
  /** The fewest tasters that reach the power. */
  readonly first: number;
  /** The size from which the power never drops below again. */
  readonly stable: number;
}

/** Tasters needed to find a difference of d′; undefined when that is above 1000. */
export function panelSize(test: DiscriminationTest, dPrime: number, options: PowerOptions = {}): PanelSize | undefined {
  return sizeFor(guessProbability(test), proportionCorrect(test, dPrime), options);
}

/**
 * Tasters needed when a given share of people can tell and the rest guess; undefined when that is
 * above 1000.
 *
 * Source: tables of ISO 4120 and of Schlich 1993 list `first`. From memory; checked against R (panel_size_pd.csv).
 *
 * @param guess chance of a right answer by guessing
 * @param share of discriminators, between 0 and 1
 */
export function panelSizeForShare(guess: number, share: number, options: PowerOptions = {}): PanelSize | undefined {
  requireOpenProbability("panelSizeForShare", "guess", guess);
  requireOpenProbability("panelSizeForShare", "share", share);
  return sizeFor(guess, guess + (1 - guess) * share, options);
}

function sizeFor(guess: number, correct: number, options: PowerOptions): PanelSize | undefined {
  const { alpha, power } = settlePower("panelSize", options);
  let first: number | undefined;
  let stable = 1;
  for (let tasters = 1; tasters <= largestPanel + settledAfter; tasters += 1) {
    if (binomialPower(guess, correct, tasters, alpha) < power) stable = tasters + 1;
    else first ??= tasters;
    if (first !== undefined && tasters - stable >= settledAfter) break;
  }
  return first === undefined || stable > largestPanel ? undefined : { first, stable };
}

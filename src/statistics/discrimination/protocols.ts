/**
 * The tests in which a taster names, sorts or matches samples and is right or wrong.
 *
 * - triangle (ISO 4120:2021, ASTM E1885): name the odd one of three
 * - tetrad (ASTM E3009): sort four into two groups of two
 * - duo-trio (ISO 10399, ASTM E2610): which of two matches the reference
 * - two-afc, three-afc (ISO 5495, ASTM E2164, E2262): which has most of a named attribute
 *
 * All are tested one-sided here: only more right answers than guessing are evidence. For a named
 * pair that needs the direction to be fixed before tasting (ISO 5495, cl. 4).
 *
 * Source: the standards named; guess rates as published there.
 */
export type DiscriminationTest = "triangle" | "tetrad" | "duo-trio" | "two-afc" | "three-afc";

const guesses: Readonly<Record<DiscriminationTest, number>> = {
  triangle: 1 / 3,
  tetrad: 1 / 3,
  "duo-trio": 1 / 2,
  "two-afc": 1 / 2,
  "three-afc": 1 / 3,
};

/** Chance of a right answer by guessing. */
export function guessProbability(test: DiscriminationTest): number {
  return guesses[test];
}

import { binomialAtMost } from "../distributions/binomial.js";
import { requireCount, requireOpenProbability } from "../numerics/arguments.js";
import { upperProportion } from "../samples/proportion.js";
import { guessProbability, type DiscriminationTest } from "./protocols.js";

export interface SimilarityOptions {
  /** Share of discriminators still called no meaningful difference; fixed before tasting. */
  readonly largestShare: number;
  /** Chance of calling that large a share similar; 0.05 unless said. */
  readonly beta?: number;
}

export interface SimilarityResult {
  readonly similar: boolean;
  /** Most right answers still called similar; undefined when no count is. */
  readonly mostCorrect: number | undefined;
  /** Whether that count lies below what guessing gives: the panel is then too small to be used for this question. */
  readonly belowChance: boolean;
  /** One-sided upper limit (1 − beta) of the share of discriminators. */
  readonly upperShare: number;
}

/**
 * Are the samples alike enough? Only when asked before tasting, and with a panel large enough:
 * below thirty the standard advises against it. Twelve people tasting three times are not
 * thirty-six (AS 2542.2.4:2014, 6.2).
 *
 * Source: ISO 5495:2005, ISO 4120:2021, similarity tables (Annex A). Published; recomputed.
 */
export function similarityTest(test: DiscriminationTest, correct: number, tasters: number, options: SimilarityOptions): SimilarityResult {
  const { largestShare, beta = 0.05 } = options;
  requireCount("similarityTest", "tasters", tasters, 1);
  requireCount("similarityTest", "correct", correct, 0, tasters);
  requireOpenProbability("similarityTest", "largestShare", largestShare);
  requireOpenProbability("similarityTest", "beta", beta);
  const guess = guessProbability(test);
  const mostCorrect = largestSimilar(guess + (1 - guess) * largestShare, tasters, beta);
  const upper = upperProportion(correct, tasters, beta);
  return {
    similar: mostCorrect !== undefined && correct <= mostCorrect,
    mostCorrect,
    belowChance: mostCorrect !== undefined && mostCorrect < tasters * guess,
    upperShare: Math.max(0, (upper - guess) / (1 - guess)),
  };
}

function largestSimilar(chance: number, tasters: number, beta: number): number | undefined {
  let most: number | undefined;
  for (let count = 0; count <= tasters && binomialAtMost(count, tasters, chance) <= beta; count += 1) most = count;
  return most;
}

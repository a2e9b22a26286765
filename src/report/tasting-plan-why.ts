import type { Batch } from "../records/index.js";
import { rankSumDifference, similarityTest, smallestStandardisedDifference } from "../statistics/index.js";
import { LEAST_FOR_SIMILARITY, ALIKE_SHARE, DESCRIBED_ONLY } from "./tasting-limits.js";
import type { SettledTasting } from "./tasting-plan-defaults.js";
import type { RoundAsked } from "./tasting-plan-rounds.js";
import { scoreText } from "./tasting-score-words.js";
import { shareText } from "./tasting-words.js";
import type { TestOption } from "./types.js";

/** Why these tests, and what so many tasters can and can't find: to be read before anyone pours. */
export function planWhy(settled: SettledTasting, asked: readonly RoundAsked[], options: readonly TestOption[], aim: Batch["aim"]): string[] {
  const { tasters } = settled;
  return [
    ...(tasters <= DESCRIBED_ONLY ? [`With ${tasters === 1 ? "one taster" : `${tasters} tasters`} nothing can be concluded, whatever they find: the page will describe it only. Ask more people, or taste for pleasure.`] : []),
    ...(asked[0]?.kind === "ranking" ? rankingWhy(settled) : testWhy(options)),
    ...(settled.asked === "similarity" ? similarityWhy(settled) : []),
    ...(asked.some(({ attributes }) => attributes.length > 0) && tasters > DESCRIBED_ONLY ? [scoresWhy(tasters, aim)] : []),
  ];
}

function testWhy(options: readonly TestOption[]): string[] {
  const chosen = options.filter((option) => option.chosen);
  const pair = chosen.find(({ test }) => test === "pair");
  const triangle = options.find(({ test }) => test === "triangle");
  return [
    ...(pair === undefined || triangle === undefined ? [] : [
      `Asked by name which has more, the same people see far smaller differences than in a triangle: one of d′ 1 is found ${timesInTen(pair.finds.small)} instead of ${timesInTen(triangle.finds.small)}.`,
      pair.sides === 1 ? "The aim sets the direction, so only answers that way count as found." : "The aim sets no direction for it, so the answers may go either way, which takes more of them.",
    ]),
    ...(chosen.some(({ test }) => test === "tetrad") ? ["A tetrad needs no attribute named, and finds more than a triangle for one more cup. Ask for two groups of two; asked for \"the two most alike\" it loses that."] : []),
    ...chosen.filter(({ needed }) => needed === undefined).map(({ test }) => `Not even if all agree would a ${test} show a difference with so few.`),
  ];
}

function timesInTen(chance: number): string {
  const times = Math.round(chance * 10);
  return times === 0 ? "less than once in ten tastings" : times === 1 ? "once in ten tastings" : `${times} times in ten tastings`;
}

/** ISO 8587:2006, 6.2 on numbers (published); the least rank-sum difference by its formula. */
function rankingWhy({ tasters, samples }: SettledTasting): string[] {
  const least = Math.ceil(rankSumDifference(tasters, samples.length));
  const most = tasters * (samples.length - 1);
  return [
    `${samples.length} samples are put in order (ISO 8587). That shows an order, never how far apart they are.`,
    `With ${tasters} tasters the rank sums of two samples can differ by ${most} at most; ${least > most ? "that is too little to tell any two apart" : `${least} or more tells two apart, once the ranks as a whole are shown to differ`}. The standard asks for 12 to 15 trained tasters, and for 60 of a group where it is about liking.`,
  ];
}

function similarityWhy({ tasters }: SettledTasting): string[] {
  if (tasters < LEAST_FOR_SIMILARITY) return [`Whether they are alike enough can't be answered by ${tasters} tasters: standards advise ${LEAST_FOR_SIMILARITY} or more (ISO 5495), about 60 for a triangle (from memory). What will come of it is a limit: at most so many of the tasters could tell.`];
  const { mostCorrect, belowChance } = similarityTest("triangle", 0, tasters, { largestShare: ALIKE_SHARE });
  return [mostCorrect === undefined || belowChance
    ? `No number of right answers from ${tasters} tasters shows that fewer than ${shareText(ALIKE_SHARE)} can tell.`
    : `By triangle, at most ${mostCorrect} right of ${tasters} would show that fewer than ${shareText(ALIKE_SHARE)} of tasters can tell (common practice for "alike enough").`];
}

/** What an attribute's scores can show depends on how far tasters scatter, which is known only afterwards. */
function scoresWhy(tasters: number, aim: Batch["aim"]): string {
  const effect = smallestStandardisedDifference(tasters);
  const found = `Scores: ${tasters} tasters find, 8 times in 10, a mean change of ${scoreText(effect, 0.1)} times the standard deviation of their own changes`;
  const margin = aim?.margin;
  return margin === undefined || margin === 0 ? `${found}; where those scatter by 1.5 points, ${scoreText(1.5 * effect, 0.5)} points.`
    : `${found}. The aim's ${margin} points are found only if those scatter by no more than ${scoreText(margin / effect, 0.5)}; where they scatter by 1.5, it takes ${scoreText(1.5 * effect, 0.5)} points.`;
}

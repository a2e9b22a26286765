import type { Batch } from "../records/index.js";
import {
  criticalNumber, discriminationTest, guessProbability, preferenceTest, proportionCorrect, similarityTest, smallestDetectable, type DiscriminationTest,
} from "../statistics/index.js";
import { POWERS } from "./tasting-limits.js";
import type { Roles } from "./tasting-samples.js";
import type { CountReport, PairReport, TastingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];
type Pair = NonNullable<Tasting["pair"]>[number];
type Counts = Pick<TastingReport, "triangle" | "tetrad" | "duoTrio" | "pair" | "pairs">;

/** Any share will do: only the upper limit is asked of the test, and it doesn't depend on it. */
const ANY_SHARE = 0.5;

/** What the tests by count gave; a test whose count or number of tasters isn't recorded is left out. */
export function countReports(tasting: Tasting, roles: Roles, aim: Batch["aim"]): Counts {
  const triangle = counted("triangle", tasting.triangle, tasting);
  const tetrad = counted("tetrad", tasting.tetrad, tasting);
  const duoTrio = counted("duo-trio", tasting.duoTrio, tasting);
  const pairs = (tasting.pair ?? []).flatMap((pair) => pairReport(pair, roles, aim));
  const [first] = pairs;
  return {
    ...(triangle === undefined ? {} : { triangle }),
    ...(tetrad === undefined ? {} : { tetrad }),
    ...(duoTrio === undefined ? {} : { duoTrio }),
    ...(first === undefined ? {} : { pair: first, pairs }),
  };
}

function counted(test: DiscriminationTest, written: Tasting["triangle"], tasting: Tasting): CountReport | undefined {
  const tasters = written?.tasters ?? tasting.tasters;
  const correct = written?.correct;
  return correct === undefined || tasters === undefined || tasters === 0 || correct > tasters
    ? undefined : countReport(test, correct, tasters);
}

/**
 * Which of the two has more of an attribute. One-sided where the aim had fixed the direction before
 * tasting, else two-sided (ISO 5495:2005, clause 4; published).
 */
function pairReport(pair: Pair, roles: Roles, aim: Batch["aim"]): PairReport[] {
  const votes = (name: string): number => pair.counts.find(({ sample }) => sample === name)?.count ?? 0;
  const [before, after] = [votes(roles.before), votes(roles.after)];
  if (before + after === 0) return [];
  const lowers = aim?.lower?.includes(pair.attribute) ?? false;
  const directed = lowers || (aim?.raise?.includes(pair.attribute) ?? false);
  const one = countReport("two-afc", lowers ? before : after, before + after);
  const p = directed ? one.p : preferenceTest({ first: before, second: after }).p;
  return [{ ...one, p, sides: directed ? 1 : 2, attribute: pair.attribute, before, after }];
}

function countReport(test: DiscriminationTest, correct: number, tasters: number): CountReport {
  const result = discriminationTest(test, correct, tasters);
  const critical = criticalNumber(test, tasters);
  const detectable = differenceFound(test, tasters, POWERS.detectable);
  const missed = differenceFound(test, tasters, POWERS.missed);
  return {
    correct, tasters,
    p: result.p,
    share: result.proportionCorrect, low: result.proportionInterval.low, high: result.proportionInterval.high,
    chance: guessProbability(test),
    ...(critical === undefined ? {} : { critical }),
    discriminators: { share: result.discriminators, ...result.discriminatorsInterval },
    stillTelling: similarityTest(test, correct, tasters, { largestShare: ANY_SHARE }).upperShare,
    dPrime: distance(result),
    ...(detectable === undefined ? {} : { detectable }),
    ...(missed === undefined ? {} : { missed }),
  };
}

type Difference = NonNullable<CountReport["detectable"]>;
const found = new Map<string, Difference | undefined>();

/** The difference that a panel of so many finds with a given power; looked for once, since panels of one club are much of a size. */
function differenceFound(test: DiscriminationTest, tasters: number, power: number): Difference | undefined {
  const key = `${test} ${tasters} ${power}`;
  if (!found.has(key)) {
    const dPrime = smallestDetectable(test, tasters, { power });
    found.set(key, dPrime === undefined ? undefined : { dPrime, share: tellingShare(test, dPrime) });
  }
  return found.get(key);
}

/** JSON has no infinity: what has no upper bound is left out. */
function distance({ dPrime, dPrimeInterval: { low, high } }: ReturnType<typeof discriminationTest>): NonNullable<CountReport["dPrime"]> {
  return { ...(dPrime === null ? {} : { value: dPrime }), low, ...(high === null ? {} : { high }) };
}

/** The share of tasters that tell samples so far apart, were the rest to guess: (p − p0) / (1 − p0). */
function tellingShare(test: DiscriminationTest, dPrime: number): number {
  const guess = guessProbability(test);
  return (proportionCorrect(test, dPrime) - guess) / (1 - guess);
}

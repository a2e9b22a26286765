import type { Batch } from "../records/index.js";
import type { SettledTasting, Tasting } from "./tasting-plan-defaults.js";
import { neededFor, sidesOf } from "./tasting-plan-options.js";
import { tastingRoles } from "./tasting-samples.js";
import type { RoundAsked } from "./tasting-plan-rounds.js";
import type { CountedTest } from "./types.js";

/** Two are a pair; more are put in order. */
const LEAST_RANKED = 3;

/**
 * What is asked, round by round: first the test that answers the question, then scores of both samples,
 * and last which is liked better, since liking colours every answer after it.
 *
 * The record's own tests come first. Where it names none: three samples or more are ranked; for a
 * difference the attribute that decides is asked about by name, since the same people see far smaller
 * differences so; without an attribute a tetrad, which sees more than a triangle for one more cup. Whether
 * two are alike enough is asked by triangle, for which the standard has its tables.
 */
export function roundsAsked(tasting: Tasting, settled: SettledTasting, aim: Batch["aim"]): RoundAsked[] {
  const { samples, attributes } = settled;
  if (samples.length >= LEAST_RANKED) return [{ kind: "ranking", attributes, preference: false, ...(attributes[0] === undefined ? {} : { attribute: attributes[0] }) }];
  const named = namedTests(tasting);
  const tests = named.length > 0 ? named : [usualTest(settled)];
  return [...tests.map((test) => countedRound(test, settled, aim)), { kind: "scores", attributes, preference: true }];
}

interface NamedTest {
  readonly test: CountedTest;
  readonly attribute?: string;
}

function namedTests({ triangle, tetrad, duoTrio, pair = [] }: Tasting): NamedTest[] {
  const byCount = ([["triangle", triangle], ["tetrad", tetrad], ["duo-trio", duoTrio]] as const)
    .flatMap(([test, written]): NamedTest[] => (written === undefined ? [] : [{ test }]));
  return [...byCount, ...pair.map(({ attribute }): NamedTest => ({ test: "pair", attribute }))];
}

function usualTest({ asked, attributes: [attribute] }: SettledTasting): NamedTest {
  if (asked === "similarity") return { test: "triangle" };
  return attribute === undefined ? { test: "tetrad" } : { test: "pair", attribute };
}

function countedRound({ test, attribute }: NamedTest, settled: SettledTasting, aim: Batch["aim"]): RoundAsked {
  const sides = sidesOf(test, attribute, aim);
  const needed = neededFor(test, settled.tasters, sides);
  const hoped = test === "pair" && sides === 1 ? hopedSample(attribute, settled, aim) : undefined;
  return {
    kind: test, attributes: [], preference: false,
    ...(attribute === undefined ? {} : { attribute }),
    ...(needed === undefined ? {} : { needed }),
    ...(hoped === undefined ? {} : { hoped }),
  };
}

/** Raised: "after" is to have more of it; lowered: "before". */
function hopedSample(attribute: string | undefined, { samples }: SettledTasting, aim: Batch["aim"]): string | undefined {
  const { before, after } = tastingRoles({ public: true, samples: samples.map(({ name, drawnFrom }) => ({ sample: name, value: drawnFrom })) });
  return attribute !== undefined && aim?.lower?.includes(attribute) === true ? before : after;
}

import type { Batch } from "../records/index.js";
import { criticalNumber, discriminationPower, panelSize, smallestDetectable, type DiscriminationTest } from "../statistics/index.js";
import { SHOWN_AT } from "./tasting-limits.js";
import type { CountedTest, TestOption } from "./types.js";

/** What is asked, in the order of how much the same people can see with it. */
const TESTS: readonly { readonly test: CountedTest; readonly method: DiscriminationTest; readonly cups: number }[] = [
  { test: "pair", method: "two-afc", cups: 2 },
  { test: "tetrad", method: "tetrad", cups: 4 },
  { test: "triangle", method: "triangle", cups: 3 },
  { test: "duo-trio", method: "duo-trio", cups: 3 },
];

/** A difference of one and of two standard deviations of perception: hard to tell, and plain to most. */
const SMALL = 1;
const LARGE = 2;

/** Every test by count that could answer the question, with what so many tasters find with it. */
export function testOptions(tasters: number, attribute: string | undefined, aim: Batch["aim"], chosen: ReadonlySet<CountedTest>): TestOption[] {
  return TESTS.filter(({ test }) => test !== "pair" || attribute !== undefined)
    .map(({ test, method, cups }) => ({ test, cups, chosen: chosen.has(test), ...powerOf(method, tasters, sidesOf(test, attribute, aim)) }));
}

/**
 * A pair is one-sided only where the aim sets the direction before tasting (ISO 5495:2005, clause 4; published);
 * right answers are always one-sided.
 */
export function sidesOf(test: CountedTest, attribute: string | undefined, aim: Batch["aim"]): 1 | 2 {
  if (test !== "pair") return 1;
  return attribute !== undefined && [...aim?.raise ?? [], ...aim?.lower ?? []].includes(attribute) ? 1 : 2;
}

/** How many have to be right, or to agree, before a difference is shown. */
export function neededFor(test: CountedTest, tasters: number, sides: 1 | 2): number | undefined {
  const method = TESTS.find((each) => each.test === test)?.method;
  return method === undefined ? undefined : criticalNumber(method, tasters, SHOWN_AT / sides);
}

function powerOf(method: DiscriminationTest, tasters: number, sides: 1 | 2): Omit<TestOption, "test" | "cups" | "chosen"> {
  const alpha = SHOWN_AT / sides;
  const needed = criticalNumber(method, tasters, alpha);
  const detectable = smallestDetectable(method, tasters, { alpha });
  const enough = panelSize(method, SMALL, { alpha })?.stable;
  return {
    sides,
    ...(needed === undefined ? {} : { needed }),
    finds: { small: discriminationPower(method, tasters, SMALL, alpha), large: discriminationPower(method, tasters, LARGE, alpha) },
    ...(detectable === undefined ? {} : { detectable }),
    ...(enough === undefined ? {} : { enough }),
  };
}

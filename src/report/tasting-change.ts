import { hodgesLehmann, meanDifference, signFlipTest, smallestStandardisedDifference, standardisedDifference } from "../statistics/index.js";
import { DESCRIBED_ONLY, POWERS } from "./tasting-limits.js";
import type { AttributeReport } from "./types.js";

export type TasterPair = AttributeReport["pairs"][number];

/** Sign patterns are enumerated up to here; above, Student's t serves as well and is quick. */
const MOST_ENUMERATED = 34;

type Change = Pick<AttributeReport, "low" | "high" | "p" | "typical" | "standardised" | "detectable" | "missed">;

/**
 * What the differences of a panel support: interval, exact p, effect, and the least change it would
 * have found. Nothing at five tasters or fewer: those are described only.
 *
 * @param differences after less before, one a taster
 */
export function changeOf(differences: readonly number[]): Change {
  if (differences.length <= DESCRIBED_ONLY) return {};
  const { interval, standardDeviation, p: byStudent = 1 } = meanDifference(differences);
  const enumerated = differences.length <= MOST_ENUMERATED;
  const standardised = standardisedDifference(differences);
  return {
    ...interval,
    p: enumerated ? signFlipTest(differences).p : byStudent,
    ...(enumerated ? { typical: typicalOf(differences) } : {}),
    ...(standardised === undefined ? {} : { standardised: { dz: standardised.dz, ...standardised.interval } }),
    ...(interval === undefined ? {} : {
      detectable: standardDeviation * effectFound(differences.length, POWERS.detectable),
      missed: standardDeviation * effectFound(differences.length, POWERS.missed),
    }),
  };
}

function typicalOf(differences: readonly number[]): NonNullable<AttributeReport["typical"]> {
  const { estimate, interval } = hodgesLehmann(differences);
  return { value: estimate, ...interval };
}

const effects = new Map<string, number>();

/** The dz that so many tasters find with a given power; looked for once, since panels of one club are much of a size. */
function effectFound(count: number, power: number): number {
  const key = `${count} ${power}`;
  const held = effects.get(key) ?? smallestStandardisedDifference(count, { power });
  effects.set(key, held);
  return held;
}

/** Who tasted what, and what was truly there to be tasted. */

import { createRandom } from "./random.mjs";
import { hopLift } from "./tasting-scores.mjs";

/** @typedef {import("./tasting-scores.mjs").TastingPlan} TastingPlan */

/** Dry-hopped beer tastes a little more bitter than it did: points a g/L. Contact temperature and time do nothing here. */
const BITTERNESS_PER_G_PER_L = 0.04;
/** What one batch's lift differs from the next one's at the same dose (standard deviation, points). */
const BATCH_SCATTER = 0.2;

/** @param {...number} numbers @returns {string[]} T01 … */
const tasters = (...numbers) => numbers.map((number) => `T${String(number).padStart(2, "0")}`);

/**
 * Before and after one dry hop. Each attribute as [base, share of the hop lift it takes, what moved apart from the hops].
 * @param {string} file @param {string[]} panel @param {{dose: number, strength?: number}} hops @param {Record<string, number[]>} attributes
 * @returns {TastingPlan}
 */
function beforeAndAfter(file, panel, { dose, strength }, attributes) {
  const lift = hopLift(dose, strength) + createRandom(`batch ${file}`).normal(BATCH_SCATTER);
  const moved = Object.entries({ ...attributes, bitterness: [4.4, 0, BITTERNESS_PER_G_PER_L * dose] }).map(
    ([name, [base, share, apart = 0]]) => [name, { base, lifts: [0, share * lift + apart] }],
  );
  return { file, tasters: panel, samples: ["before", "after"], attributes: Object.fromEntries(moved) };
}

const AROMA = [3.2, 1];

/** @type {TastingPlan[]} */
const QUAYSIDE = [
  beforeAndAfter("batches/2025-12-tideline-2/tasting-2026-01-10.csv", tasters(1, 2, 3, 4, 5, 6, 7, 9, 10, 11), { dose: 2 }, {
    "hop aroma": AROMA, "orange peel": [2.1, 0.62], pine: [1.9, 0.22],
  }),
  beforeAndAfter("batches/2026-01-tideline-3/tasting-2026-02-22.csv", tasters(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12), { dose: 4.5 }, {
    "hop aroma": AROMA, "orange peel": [2.1, 0.62], pine: [1.8, 0.22],
  }),
  {
    file: "batches/2026-01-tideline-3/against-tp-02.csv", tasters: tasters(1, 2, 4, 5, 6, 9, 10, 12), samples: ["before", "after"],
    attributes: {
      "hop aroma": { base: 3.0, lifts: [hopLift(2) * 0.85, hopLift(4.5)] },
      "orange peel": { base: 2.0, lifts: [hopLift(2) * 0.5, hopLift(4.5) * 0.62] },
      bitterness: { base: 4.4, lifts: [0.1, 0.2] },
    },
  },
  beforeAndAfter("batches/2026-02-tideline-4/tasting-2026-03-28.csv", tasters(1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12), { dose: 6 }, {
    "hop aroma": AROMA, "orange peel": [2.2, 0.6], lemon: [1.6, 0.3],
  }),
  {
    ...beforeAndAfter("batches/2026-04-tideline-5/tasting-2026-05-09.csv", tasters(1, 3, 5, 6, 9, 11), { dose: 4.5 }, {
      "hop aroma": AROMA, "orange peel": [2.1, 0.6],
    }),
    servings: 2,
  },
  beforeAndAfter("batches/2026-05-tideline-6/tasting-2026-06-13.csv", tasters(1, 2, 3, 4, 5, 7, 8, 9, 10, 12), { dose: 8 }, {
    "hop aroma": AROMA, "orange peel": [2.2, 0.6], lemon: [1.6, 0.32],
  }),
  beforeAndAfter("batches/2026-06-tideline-7/tasting-2026-07-25.csv", tasters(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12), { dose: 12 }, {
    "hop aroma": AROMA, "orange peel": [2.2, 0.5], grassy: [1.2, 0.1, 1.6],
  }),
  beforeAndAfter("batches/2026-08-tideline-8/tasting-2026-09-26.csv", tasters(1, 2, 3, 4, 6, 7, 8, 9, 10, 11, 12), { dose: 7 }, {
    "hop aroma": AROMA, "orange peel": [2.2, 0.4], pine: [1.9, 0.5],
  }),
  beforeAndAfter("batches/2026-04-cordgrass/tasting-2026-05-30.csv", tasters(1, 2, 5, 9, 10, 12), { dose: 3 }, { "hop aroma": AROMA, floral: [2, 0.5] }),
];

/** @type {TastingPlan[]} */
const MUDLARK = [
  beforeAndAfter("batches/2026-02-spring-tide/tasting-2026-03-08.csv", tasters(2, 3, 5, 7, 8, 11, 13), { dose: 3, strength: 0.85 }, {
    "hop aroma": AROMA, "orange peel": [2, 0.55],
  }),
  beforeAndAfter("batches/2026-03-slack-water/tasting-2026-04-25.csv", tasters(2, 3, 7, 8, 11, 13), { dose: 5, strength: 0.95 }, {
    "hop aroma": AROMA, lemon: [1.7, 0.5], sweetness: [4.2, 0],
  }),
  beforeAndAfter("batches/2026-05-ebb-pale/tasting-2026-05-30.csv", tasters(2, 3, 5, 7, 8, 11, 12, 13), { dose: 3, strength: 1.6 }, {
    "hop aroma": AROMA, "orange peel": [2.1, 0.6], butter: [0.9, 0, 0.3],
  }),
  beforeAndAfter("batches/2026-08-mudbank-gold-2/tasting-2026-09-20.csv", tasters(2, 3, 4, 7, 8, 11, 13, 14), { dose: 2.5, strength: 0.85 }, {
    "hop aroma": AROMA, floral: [2, 0.55],
  }),
];

/** @type {TastingPlan[]} */
const SALTMARSH = [
  beforeAndAfter("batches/2026-01-glasswort-1/tasting-2026-02-07.csv", tasters(1, 4, 6, 7, 9, 10, 12, 14), { dose: 5 }, {
    "hop aroma": AROMA, lemon: [1.7, 0.6],
  }),
  beforeAndAfter("batches/2026-02-glasswort-2/tasting-2026-03-21.csv", tasters(1, 2, 4, 6, 7, 9, 10, 12, 14), { dose: 8 }, {
    "hop aroma": AROMA, lemon: [1.7, 0.5], "orange peel": [2, 0.4],
  }),
  beforeAndAfter("batches/2026-04-wrackline/tasting-2026-05-16.csv", tasters(1, 4, 5, 6, 9, 10, 12, 14), { dose: 10, strength: 0.6 }, {
    "hop aroma": AROMA, "orange peel": [2, 0.5], pine: [1.8, 0.3],
  }),
  beforeAndAfter("batches/2026-05-glasswort-3/tasting-2026-06-27.csv", tasters(1, 4, 6, 7, 8, 9, 10, 12, 14), { dose: 9 }, {
    "hop aroma": AROMA, lemon: [1.7, 0.55], dryness: [3.4, 0, 1.1],
  }),
  beforeAndAfter("batches/2026-07-fiddler-crab/tasting-2026-08-08.csv", tasters(1, 4, 6, 7, 9, 10, 12, 14), { dose: 6 }, {
    "hop aroma": AROMA, "orange peel": [2, 0.6],
  }),
  beforeAndAfter("batches/2026-08-kelp-line/tasting-2026-09-19.csv", tasters(1, 2, 4, 6, 7, 9, 10, 12, 13, 14), { dose: 6.9 }, {
    "hop aroma": AROMA, "orange peel": [2, 0.45], lemon: [1.7, 0.4],
  }),
];

/** @type {TastingPlan[]} */
export const SEASON_TASTINGS = [...QUAYSIDE, ...MUDLARK, ...SALTMARSH];

/** Three glasses put in order, the most hop aroma first. @type {TastingPlan} */
export const DOSE_RANKING = {
  file: "batches/2026-05-tideline-6/ranks-2026-06-13.csv", tasters: tasters(1, 2, 3, 4, 5, 7, 8, 9, 10, 12), samples: ["none", "half", "full"],
  attributes: { "hop aroma": { base: 3.2, lifts: [0, hopLift(4), hopLift(8)] } },
};

/**
 * Invented tasters. Each has a habit of scoring high or low and an own sensitivity to hops, the same
 * all season; on top of that every score has its own scatter. What hops truly do is in `hopLift`.
 */

import { createRandom } from "./random.mjs";

/**
 * @typedef {object} TastingPlan
 * @property {string} file where the table goes, from the log's root
 * @property {string[]} tasters
 * @property {string[]} samples names of the samples, as in the record
 * @property {Record<string, {base: number, lifts: number[]}>} attributes true mean of a sample: base plus its lift
 * @property {number} [servings] how often each sample was served
 */

const SCATTER = 0.9;
const HIGHEST_LIFT = 4;
const LIFT_DOSE_G_PER_L = 5;

/**
 * The truth behind every tasting: aroma rises with the dose of pellets and flattens, on the 0 to 10 scale.
 * 2 g/L gives 1.3, 4 g/L 2.2, 6 g/L 2.8, 8 g/L 3.2, 12 g/L 3.6.
 * @param {number} doseGPerL @param {number} [strength] cones 0.85, concentrate 1.6 of the same mass of pellets
 */
export function hopLift(doseGPerL, strength = 1) {
  return HIGHEST_LIFT * (1 - Math.exp((-doseGPerL * strength) / LIFT_DOSE_G_PER_L));
}

/** @param {string} taster @returns {{habit: number, sensitivity: number}} */
function tasterTraits(taster) {
  const random = createRandom(`taster ${taster}`);
  return { habit: random.normal(0.7), sensitivity: 1 + random.normal(0.22) };
}

/** Half points, kept on the scale. @param {number} score @returns {number} */
function roundScore(score) {
  return Math.min(10, Math.max(0, Math.round(score * 2) / 2));
}

/** @param {TastingPlan} plan @returns {(string | number)[][]} taster, sample, serving, attribute, score */
export function buildScores(plan) {
  const random = createRandom(`tasting ${plan.file}`);
  const rows = [];
  for (const taster of plan.tasters) {
    const { habit, sensitivity } = tasterTraits(taster);
    for (const [attribute, { base, lifts }] of Object.entries(plan.attributes)) {
      const mood = random.normal(0.35);
      plan.samples.forEach((sample, index) => {
        for (let serving = 1; serving <= (plan.servings ?? 1); serving += 1) {
          const score = base + habit + mood + lifts[index] * sensitivity + random.normal(SCATTER);
          rows.push([taster, sample, serving, attribute, roundScore(score)]);
        }
      });
    }
  }
  return rows;
}

/** @param {(string | number)[][]} rows @param {TastingPlan} plan @returns {string} */
export function formatScores(rows, plan) {
  const repeated = (plan.servings ?? 1) > 1;
  const header = repeated ? "taster,sample,serving,attribute,score" : "taster,sample,attribute,score";
  const lines = rows.map((row) => (repeated ? row : row.filter((_, column) => column !== 2)).join(","));
  return `${[header, ...lines].join("\n")}\n`;
}

/** Ranks from the scores of one attribute, best first; a taster's ties are settled by the toss of a coin, as a forced ranking is. */
export function formatRanks(name, rows, attribute) {
  const random = createRandom(`ranks ${name}`);
  const lines = ["taster,sample,rank"];
  for (const taster of new Set(rows.map((row) => row[0]))) {
    const own = random.shuffle(rows.filter((row) => row[0] === taster && row[3] === attribute));
    own.sort((one, other) => other[4] - one[4]);
    own.forEach((row, index) => lines.push(`${taster},${row[1]},${index + 1}`));
  }
  return `${lines.join("\n")}\n`;
}

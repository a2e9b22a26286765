// The exact tests of a tasting with 20 tasters: every one once in a program that has just begun, when nothing is
// compiled yet, then again when it is. Milliseconds; loading the modules is not counted.
import {
  discriminationTest, friedmanTest, hodgesLehmann, pageTest, preferenceTest, signFlipTest, signedRankTest, smallestDetectable, smallestStandardisedDifference,
} from "../dist/statistics/index.js";

const TASTERS = 20;
const WARM_ROUNDS = 20;
// Half points with ties and noughts, which enumeration finds hardest; ranks with ties.
const differences = Array.from({ length: TASTERS }, (_, taster) => ((taster * 7) % 11 - 4) / 2);
const ranks = Array.from({ length: TASTERS }, (_, taster) => [[1, 2, 3, 4], [2, 1, 4, 3], [1.5, 1.5, 3, 4]][taster % 3]);

const tests = [
  ...["triangle", "tetrad", "duo-trio", "two-afc"].flatMap((test) => [
    [`${test}, p and d′`, () => discriminationTest(test, 13, TASTERS)],
    [`${test}, least difference found`, () => smallestDetectable(test, TASTERS)],
  ]),
  ["preference", () => preferenceTest({ first: 12, second: 7, none: 1 })],
  ["sign flips", () => signFlipTest(differences)],
  ["signed ranks", () => signedRankTest(differences)],
  ["Hodges–Lehmann", () => hodgesLehmann(differences)],
  ["least mean difference found", () => smallestStandardisedDifference(TASTERS, { power: 0.8 })],
  ["Friedman", () => friedmanTest(ranks)],
  ["Page", () => pageTest(ranks)],
];

const timed = (run) => {
  const began = performance.now();
  run();
  return performance.now() - began;
};

const first = tests.map(([name, run]) => ({ name, firstMs: timed(run) }));
const results = first.map((one, index) => {
  const rounds = Array.from({ length: WARM_ROUNDS }, () => timed(tests[index][1])).sort((a, b) => a - b);
  return { ...one, warmMs: rounds[WARM_ROUNDS / 2] };
});
process.stdout.write(JSON.stringify(results));

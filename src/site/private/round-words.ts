import type { TastingRound, TestOption } from "../../report/index.js";

/** What each way of asking is called. */
export const ROUND_TITLES: Readonly<Record<TastingRound["kind"], string>> = {
  pair: "Pair", tetrad: "Tetrad", triangle: "Triangle", "duo-trio": "Duo-trio", scores: "Scores", ranking: "Ranking",
};

/** The standard that describes each test; tetrads have one of ASTM's. */
export const STANDARDS: Readonly<Record<TestOption["test"], string>> = {
  pair: "ISO 5495", tetrad: "ASTM E3009", triangle: "ISO 4120", "duo-trio": "ISO 10399",
};

/** What a taster is asked to do. Nothing in it says what is poured or what is hoped for. */
export function roundQuestion({ kind, attribute, servings }: TastingRound): string {
  const cups = servings[0]?.cups.length ?? 0;
  switch (kind) {
    case "pair": return `Taste both from left to right. Which has more ${attribute ?? "of it"}? Tick one; if you can’t tell, guess.`;
    case "tetrad": return "Taste all four from left to right. Two are of one kind and two of another. Sort them into two groups of two; if you can’t tell, guess.";
    case "triangle": return "Taste all three from left to right. Two are alike and one is different. Tick the one that is different; if you can’t tell, guess.";
    case "duo-trio": return "Taste the cup marked R first, then the other two from left to right. Tick the one that is the same as R; if you can’t tell, guess.";
    case "ranking": return `Taste all ${cups} from left to right. ${attribute === undefined ? "Write 1 beside the one you like best, 2 beside the next" : `Write 1 beside the one with the most ${attribute}, 2 beside the next`}, and so on to ${cups}. You may taste again. No two may share a number.`;
    case "scores": return "Taste from left to right.";
  }
}

import type { Problem } from "../../problems/index.js";
import type { CompetitionReport } from "./competition-types.js";
import type { CompetitionDay, SlipReport } from "./day-types.js";
import type { FigureBasis } from "./figure-types.js";
import type { ClubReport } from "./season-types.js";

/** What must not be published of one batch or competition: what its sheets on paper are made from. */
export interface PrivateReport {
  readonly kind: "batch" | "competition";
  /** As a person names it: the batch number, or the competition's folder. */
  readonly name: string;
  /** The same as a folder's name. */
  readonly slug: string;
  readonly title: string;
  readonly club: ClubReport;
  /** In the order of the record; a suggestion where it plans none. Empty for a competition. */
  readonly tastings: readonly TastingPlan[];
  /** The day of a competition. */
  readonly day?: CompetitionDay;
  /** All its results, where scores and comments don't go on the site. */
  readonly feedback?: CompetitionReport;
  /** For the bottles of a batch that enters a competition. */
  readonly slips?: readonly SlipReport[];
  /** Why sheets can't be made; then none are. */
  readonly problems?: readonly Problem[];
}

/** One tasting to come, decided before anyone pours. */
export interface TastingPlan {
  /** From 1, its place among the record's tastings. */
  readonly number: number;
  readonly name: string;
  readonly date?: string;
  /** What the record leaves open and was filled in; whole sentences. */
  readonly filledIn: readonly string[];
  readonly asked: "difference" | "similarity";
  readonly tasters: number;
  readonly samples: readonly PlannedSample[];
  /** What orders and codes are drawn from: the same again for the same text. */
  readonly seed: string;
  /** Why these tests; whole sentences. */
  readonly why: readonly string[];
  /** The tests that could answer the question, with what this many tasters find with each; empty for a ranking. */
  readonly options: readonly TestOption[];
  readonly rounds: readonly TastingRound[];
  /** What is in the beers, to be told beforehand: as recorded, each once. */
  readonly contains: readonly string[];
  readonly drink: PlannedDrink;
  readonly rules: readonly ServingRule[];
  /** How the samples come to the glass differently, as far as the record shows. */
  readonly notAlike: readonly string[];
  readonly cautions: readonly string[];
}

export interface PlannedSample {
  readonly name: string;
  /** As the record names it: "control", "keg", "TP-02/keg". */
  readonly drawnFrom: string;
}

export type CountedTest = "pair" | "tetrad" | "triangle" | "duo-trio";

/** One test by count, seen before anyone pours. */
export interface TestOption {
  readonly test: CountedTest;
  readonly chosen: boolean;
  /** Cups a taster. */
  readonly cups: number;
  /** 2 where no direction is set beforehand. */
  readonly sides: 1 | 2;
  /** Fewest right (or agreeing) answers that would show a difference; absent where not even all would. */
  readonly needed?: number;
  /** Chance of finding a difference of d′ 1 and of d′ 2. */
  readonly finds: { readonly small: number; readonly large: number };
  /** The d′ found in 8 tastings of 10; absent where none is. */
  readonly detectable?: number;
  /** Tasters who find d′ 1 in 8 tastings of 10, from which more never find less; absent above 1000. */
  readonly enough?: number;
}

/** What each taster gets at one go, and is asked. */
export interface TastingRound {
  readonly kind: CountedTest | "scores" | "ranking";
  /** The attribute of a pair or a ranking; absent where a ranking is by liking. */
  readonly attribute?: string;
  /** Attributes to score from 0 to 10, in order. */
  readonly attributes: readonly string[];
  /** Whether it is also asked which is liked better. */
  readonly preference: boolean;
  /** Whether every order is poured equally often. */
  readonly balanced: boolean;
  readonly needed?: number;
  /** The sample that must be named for the aim to be met; absent where either may be. */
  readonly hoped?: string;
  readonly servings: readonly PlannedServing[];
}

export interface PlannedServing {
  readonly taster: string;
  /** From left to right. */
  readonly cups: readonly PlannedCup[];
  /** What a right answer is, by the codes; absent where there is none to be right. */
  readonly right?: string;
}

export interface PlannedCup {
  /** "R" for the reference of a duo-trio. */
  readonly code: string;
  readonly sample: string;
}

/** What one taster drinks if nothing is spat out. */
export interface PlannedDrink {
  readonly pourMl: number;
  readonly cups: number;
  /** Of the strongest sample; absent where neither readings nor plan give it. */
  readonly abv?: { readonly percent: number; readonly batch: string; readonly basis: FigureBasis | "planned" };
  readonly alcoholG?: number;
}

/** One line of how to serve. */
export interface ServingRule {
  readonly says: string;
  /** The standard that asks for it, with the clause where known; absent where it is club practice. */
  readonly standard?: string;
}

import type { CompetitionEntry } from "./competition-types.js";
import type { StyleRow } from "./figure-types.js";

// What a brewer sees of competitions: own results, notes for an entry, which batch to enter.

/** A batch's own entry in a released competition. */
export interface BatchEntryReport {
  readonly competition: string;
  readonly competitionSlug: string;
  readonly date: string;
  readonly entry: CompetitionEntry;
  /** Where scores are public, all sections together. */
  readonly maximum: number;
  /** One sentence: place, flight, score. */
  readonly says: string;
}

/** One competition that the record's `enter` names. */
export interface EntryNote {
  readonly competition: string;
  readonly date: string;
  readonly style?: string;
  readonly styleRows: readonly StyleRow[];
  readonly declare: readonly string[];
  /** What to declare, what not, and what to look at again. Whole sentences. */
  readonly declaring: readonly string[];
  readonly allergens: readonly string[];
  /** Allergens that the recipe's own words point to and the record doesn't list. */
  readonly allergensUnlisted: readonly string[];
  readonly allergensSay: string;
  /** Whole days from packaging to the day; absent where it isn't packaged. */
  readonly daysOld?: number;
}

/** Everything for one printed page of entry notes. */
export interface EntryNotesReport {
  readonly notes: readonly EntryNote[];
  /** Factual sentences made from the record. */
  readonly ingredients: readonly string[];
  readonly serving: string;
  /** What to see to before bottles are handed in; common practice where the record doesn't say. */
  readonly checklist: readonly string[];
  readonly cautions: readonly string[];
  /** The brewer's own words. */
  readonly words?: string;
  readonly earlier: readonly string[];
}

/** One batch that could be entered. */
export interface CandidateReport {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  /** The style it is held against: as entered, else its own. */
  readonly style?: string;
  readonly styleRows: readonly StyleRow[];
  readonly outside: number;
  readonly onLine: number;
  readonly inside: number;
  readonly packaged?: string;
  /** On the day of the competition. */
  readonly daysOld?: number;
  readonly tasters: string;
  readonly earlier: readonly string[];
  /** The record's `enter` names this competition. */
  readonly entered: boolean;
  /** Why it stands before the one behind it, or last. One sentence. */
  readonly why: string;
}

/** A competition to come: the candidates of each brewer, each in an order with its reasons. */
export interface ComingReport {
  readonly name: string;
  readonly slug: string;
  readonly date: string;
  readonly brewers: readonly { readonly brewer: string; readonly candidates: readonly CandidateReport[] }[];
}

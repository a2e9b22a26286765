// What tasters found, and whether it was what the brewer meant.

export interface TastingReport {
  readonly name: string;
  readonly date?: string;
  /** Role → sample as recorded: { before: "control", after: "keg" }. */
  readonly samples: Readonly<Record<string, string>>;
  /** Nothing has come of it yet. */
  readonly planned?: true;
  readonly tasters?: number;
  readonly asked?: string;
  readonly triangle?: CountReport;
  readonly tetrad?: CountReport;
  readonly duoTrio?: CountReport;
  readonly pair?: CountReport & { readonly attribute: string; readonly before: number; readonly after: number };
  readonly preference?: PreferenceReport;
  /** Every named-attribute pair, `pair` first. */
  readonly pairs?: readonly PairReport[];
  readonly ranking?: RankingReport;
  /** Where servings repeat. */
  readonly panel?: PanelReport;
  readonly attributes: readonly AttributeReport[];
  /** Sentences on what can and can't be concluded, in order. */
  readonly says: readonly string[];
  /** Differences besides the hops, and what isn't recorded. */
  readonly differs: readonly string[];
  /** Names of the samples that "before" and "after" stand for in this report. */
  readonly roles?: { readonly before: string; readonly after: string };
  /** Whether the samples can be told apart by what is tested alone: something else differed, that isn't recorded, or nothing did. */
  readonly comparable?: "differs" | "not recorded" | "nothing else";
  /** What keeps a result from being put down to what was tested alone, as a clause; absent where nothing does. */
  readonly reservation?: string;
  /** What to be careful of; whole sentences. */
  readonly cautions?: readonly string[];
}

export type PairReport = NonNullable<TastingReport["pair"]>;

export interface PreferenceReport {
  readonly before: number;
  readonly after: number;
  /** Votes for neither: reported, never split. */
  readonly none: number;
  /** Exact, two-sided, over those who chose. */
  readonly p: number;
  /** Share of those who chose that prefer "after", with its exact 95 % interval; absent when nobody chose. */
  readonly share?: number;
  readonly low?: number;
  readonly high?: number;
}

export interface RankingReport {
  readonly tasters: number;
  /** In the order served, or of dose where the doses are ordered; a low sum is ranked first. */
  readonly sums: readonly RankSum[];
  /** Friedman; absent where too few tasters ranked to conclude from. */
  readonly p?: number;
  readonly exact?: boolean;
  /** How far apart two rank sums must be to tell two samples apart; only where the ranks as a whole are shown to differ (ISO 8587). */
  readonly leastDifference?: number;
  /** Page, two-sided, for ranks that rise or fall in the order of doses fixed beforehand. */
  readonly ordered?: { readonly p: number; readonly exact: boolean; readonly rising: boolean };
}

export interface RankSum {
  readonly sample: string;
  readonly sum: number;
  /** How many tasters gave it which rank, low ranks first; a tie stands between two. */
  readonly places: readonly { readonly rank: number; readonly tasters: number }[];
}

/** Whether tasters who were served the same cups twice repeat themselves, and agree with one another. */
export interface PanelReport {
  /** What was scored again and again: each sample with each attribute. */
  readonly cells: number;
  readonly servings: number;
  readonly tasters: readonly PanelTaster[];
  /** One taster's scores against another's: ICC(2,1), absolute agreement. Absent where it can't be computed. */
  readonly agreement?: Estimate;
  /** Kendall's W of the order of the cells, beside what it would be on average if tasters put them in any order. */
  readonly order?: { readonly w: number; readonly chanceFloor: number; readonly p?: number };
  readonly says: readonly string[];
}

export interface PanelTaster {
  readonly taster: string;
  /** Standard deviation of the taster's own scores for one cell, points. */
  readonly scatter: number;
  /** ICC(1,1) of the taster's servings: 1 repeats exactly, 0 no better than guessing the cell. Absent where all cells score alike. */
  readonly repeatability?: Estimate;
  /** Rank correlation with the mean of the others. */
  readonly withOthers?: number;
}

/** With its 95 % interval where one can be given. */
export interface Estimate {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export interface CountReport {
  readonly correct: number;
  readonly tasters: number;
  /** Chance of at least this many correct by guessing, exact. */
  readonly p: number;
  /** Share correct, with its exact 95 % interval. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly chance: number;
  /** 2 where no direction was fixed beforehand; 1 where absent. */
  readonly sides?: 1 | 2;
  /** Fewest right answers that guessing reaches in one tasting of twenty at most; absent when no count is enough. */
  readonly critical?: number;
  /** Share of tasters that really tell, cut at 0, with the exact limits carried over. */
  readonly discriminators?: { readonly share: number; readonly low: number; readonly high: number };
  /** One-sided 95 % upper limit of the share of tasters that really tell. */
  readonly stillTelling?: number;
  /** Distance of the samples in standard deviations of perception; `value` or `high` absent: no upper bound. */
  readonly dPrime?: { readonly value?: number; readonly low: number; readonly high?: number };
  /** The least difference that this many tasters find in 8 tastings of 10: as d′, and as the share of tasters that tell. */
  readonly detectable?: { readonly dPrime: number; readonly share: number };
  /** The difference that this many tasters miss as often as find; anything less is probably missed. */
  readonly missed?: { readonly dPrime: number; readonly share: number };
}

export interface AttributeReport {
  readonly attribute: string;
  readonly primary: boolean;
  readonly tasters: number;
  readonly meanBefore: number;
  readonly meanAfter: number;
  readonly lift: number;
  readonly low?: number;
  readonly high?: number;
  /** Exact sign-flip p, two-sided; above 34 tasters Student's. */
  readonly p?: number;
  /** p with the other attributes of the sheet allowed for: the primary one stands alone, the rest follow it by Holm. */
  readonly adjusted?: number;
  /** Tasters who scored "after" higher, and lower. */
  readonly raised?: number;
  readonly lowered?: number;
  /** Hodges–Lehmann estimate of the difference, with its exact 95 % interval; absent above 34 tasters. */
  readonly typical?: { readonly value: number; readonly low?: number; readonly high?: number };
  /** Mean difference over the standard deviation of the differences (dz). */
  readonly standardised?: { readonly dz: number; readonly low: number; readonly high: number };
  /** The least mean difference that this many tasters, scattering so, find in 8 tastings of 10. */
  readonly detectable?: number;
  /** The mean difference that they miss as often as find; anything less is probably missed. */
  readonly missed?: number;
  /** One pair a taster: [taster, before, after]. */
  readonly pairs: readonly (readonly [string, number, number])[];
}

export interface AimReport {
  readonly words?: string;
  readonly raise: readonly string[];
  readonly lower: readonly string[];
  readonly hold: readonly string[];
  readonly primary?: string;
  readonly margin?: number;
  /** The verdict in one sentence, or what is missing for one. */
  readonly verdict: string;
  /** Absent while nothing has been tasted. */
  readonly result?: AimResult;
  /** One verdict an attribute, the primary one first. */
  readonly attributes?: readonly AimAttribute[];
}

export type AimResult = "met" | "not met" | "can't tell";

export interface AimAttribute {
  readonly attribute: string;
  readonly want: "raise" | "lower" | "hold";
  readonly primary: boolean;
  readonly result: AimResult;
  /** What was seen, in a few words. */
  readonly seen: string;
  /** Why, in one sentence with the numbers. */
  readonly says: string;
}

/** A tasting that another batch's record tells, in which this batch was poured. */
export interface TastedElsewhere {
  /** The batch that tells it. */
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  /** From 1, its place among that batch's tastings. */
  readonly number: number;
  readonly tasting: TastingReport;
}

/** What tasters found, version after version of one beer. */
export interface SeriesTastings {
  /** Scored in two versions or more; those of most versions first. */
  readonly attributes: readonly SeriesAttribute[];
  /** Tastings that poured one version against another: the same tasters on the same day. */
  readonly against: readonly { readonly batch: string; readonly slug: string; readonly number: number; readonly name: string; readonly says: readonly string[] }[];
  readonly says: readonly string[];
}

export interface SeriesAttribute {
  readonly attribute: string;
  /** In brew order; versions that weren't scored are left out. */
  readonly versions: readonly SeriesVersion[];
}

export interface SeriesVersion {
  readonly batch: string;
  readonly slug: string;
  readonly tasters: number;
  /** Mean move from before to after, points. */
  readonly lift: number;
  readonly low?: number;
  readonly high?: number;
  /** Which way it is shown to have moved, with the rest of its sheet allowed for. */
  readonly shown?: "up" | "down";
  readonly doseGPerL?: number;
  /** What was changed since the version before. */
  readonly changed?: string;
  /** What keeps the move from being put down to the dry hop alone. */
  readonly reservation?: string;
}

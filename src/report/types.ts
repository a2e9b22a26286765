/**
 * What a report holds: plain JSON, no functions and no Date objects, so that it
 * can be diffed, tested and exported, and a page only formats it.
 *
 * Times are civil times of the club's zone as text ("2026-03-18 19:00"), beside
 * hours elapsed since pitching (or since the brew date where no pitching time is
 * recorded) for everything that is drawn or subtracted.
 */

/** A value from readings, in the unit of the figures table. */
export interface FigureReport {
  readonly value: number;
  readonly unit: string;
  /** Half-width at 95 % (k = 2) of what the readings leave open; absent where no reading carries a limit. */
  readonly plusMinus?: number;
  /** What the relation itself is worth at 95 %, stated apart, in `unit`; absent where no scatter is known. */
  readonly model?: number;
  readonly method: string;
  /** Figures and readings it was computed from, each once. */
  readonly from: readonly string[];
  /** What a reader must know: a stand-in used, a default taken. Whole sentences. */
  readonly notes?: readonly string[];
}

/** A value that the plan or the recipe predicts; no reading stands behind it. */
export interface PlannedReport {
  readonly value: number;
  readonly unit: string;
  /** Where the plan gives a band instead of one value. */
  readonly low?: number;
  readonly high?: number;
  readonly method: string;
  readonly from?: readonly string[];
  readonly notes?: readonly string[];
}

/** How a figure came about, as a tree that ends in readings and stated assumptions. */
export interface WorkingStep {
  /** Figure id, reading field ("fermenter.gravity") or a short name. */
  readonly label: string;
  readonly kind: "figure" | "reading" | "assumed" | "step";
  readonly value: number;
  readonly unit: string;
  readonly plusMinus?: number;
  /** As the record wrote it, for readings. */
  readonly written?: string;
  /** For assumptions: what was assumed and why. */
  readonly says?: string;
  readonly method?: string;
  /** The symbol this value has in the step above it. */
  readonly symbol?: string;
  readonly inputs?: readonly WorkingStep[];
}

/** One line of "which reading to improve": its share of the figure's variance, 0 to 1. */
export interface ReadingShare {
  readonly reading: string;
  readonly share: number;
}

export interface FigureWorking {
  readonly id: string;
  readonly step: WorkingStep;
  /** Largest first; empty where nothing carries a limit. */
  readonly shares: readonly ReadingShare[];
}

export type Verdict = "pass" | "watch" | "fail" | "unknown";

export interface CheckReport {
  readonly id: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** One or two plain sentences with the numbers. */
  readonly says: string;
  /** "plan" when held against the record's own plan, "common practice" otherwise. */
  readonly against: "plan" | "common practice" | "record" | "style";
  /** Figures and readings it rests on. */
  readonly from: readonly string[];
  /** What to be careful of, beside the number it concerns. */
  readonly caution?: string;
}

export type LedgerDestination = "samples" | "dumps" | "left" | "package" | "unaccounted";

/** One flow of beer, at 20 °C. The litres of all entries sum to what went in. */
export interface LedgerEntry {
  readonly to: LedgerDestination;
  readonly litres: number;
  readonly plusMinus?: number;
  /** Which of several: "keg", "6 bottles", "2026-03-23 19:00". */
  readonly what?: string;
  readonly from: readonly string[];
}

export interface LedgerReport {
  /** Fermenter volume plus additions, L at 20 °C. */
  readonly into: number;
  readonly intoPlusMinus?: number;
  readonly transferred?: number;
  readonly transferredPlusMinus?: number;
  readonly entries: readonly LedgerEntry[];
  readonly unaccountedPlusMinus?: number;
  /** Beer held by hops that common practice expects in the unaccounted and left parts, L. */
  readonly hopLoss?: { readonly low: number; readonly high: number; readonly source: string };
  /** One sentence: whether it closes, by how much not, which reading would settle it. */
  readonly says: string;
}

export type EventKind =
  | "pitch" | "addition" | "sample" | "dry-hop" | "hops-out" | "crash" | "dump" | "transfer" | "package" | "reading" | "tasting";

export interface EventReport {
  readonly kind: EventKind;
  /** Civil time as the record wrote it. */
  readonly at: string;
  /** Hours since pitching. */
  readonly hour: number;
  /** True where only a date is recorded: drawn at noon. */
  readonly dateOnly: boolean;
  /** Short, for direct labels: "110 g Cascade". */
  readonly label: string;
  /** True when it hasn't happened yet: a planned date. */
  readonly planned?: boolean;
}

export type PhaseKind = "fermentation" | "dry hop" | "crash";

export interface PhaseReport {
  readonly kind: PhaseKind;
  readonly fromHour: number;
  readonly toHour: number;
}

/** A column thinned for drawing: envelope-preserving, gaps kept as separate runs. */
export interface SeriesReport {
  readonly unit: string;
  readonly source: "log" | "hand";
  /** Runs without a gap; [hour, value]. */
  readonly runs: readonly (readonly (readonly [number, number])[])[];
}

export interface TimelineReport {
  readonly start: string;
  readonly events: readonly EventReport[];
  readonly phases: readonly PhaseReport[];
  readonly temperature?: SeriesReport;
  readonly gravity?: SeriesReport;
  /** Hand readings of gravity, SG 20/20. */
  readonly gravityReadings?: SeriesReport;
  readonly pressure?: SeriesReport;
  /** Stretches longer than two log steps and two hours with no row. */
  readonly gaps: readonly { readonly fromHour: number; readonly toHour: number }[];
  /** Set point of the crash, °C. */
  readonly crashSet?: number;
  /** One or two sentences that state the trend: the chart's description. */
  readonly says: string;
  /** What the log doesn't cover or has out of order; whole sentences. */
  readonly notes: readonly string[];
}

export interface DryHopReport {
  readonly hop: string;
  readonly slug: string;
  readonly form: string;
  readonly held?: string;
  readonly into: "fermenter" | "keg";
  readonly grams?: number;
  readonly alpha?: number;
  readonly oil?: number;
  readonly added: string;
  readonly out?: string;
  readonly contactDays?: number;
  readonly temperatureMean?: number;
  readonly temperatureLow?: number;
  readonly temperatureHigh?: number;
  /** Hours outside the planned (or common-practice) band. */
  readonly hoursOutside?: number;
  readonly dose?: number;
  readonly purged?: boolean;
  readonly notes: readonly string[];
}

export interface RecipeLine {
  readonly what: string;
  readonly amount: string;
  readonly detail: string;
  /** Share of the grist by mass, %, or of the batch; absent where it says nothing. */
  readonly share?: number;
}

export interface RecipeReport {
  readonly grist: readonly RecipeLine[];
  readonly kettleHops: readonly RecipeLine[];
  readonly dryHops: readonly RecipeLine[];
  readonly yeast?: RecipeLine;
  readonly water: readonly RecipeLine[];
  readonly mash: readonly RecipeLine[];
  readonly additions: readonly RecipeLine[];
}

/** One row of "what changed": the same thing in both batches. */
export interface ChangeRow {
  readonly part: "recipe" | "process" | "result";
  readonly what: string;
  readonly before: string;
  readonly after: string;
  /** changed: beyond the readings' uncertainty, or different text; within: a difference the readings can't tell from none. */
  readonly change: "changed" | "within" | "same" | "unknown";
}

export interface ComparisonReport {
  readonly with: string;
  readonly withSlug: string;
  readonly withTitle: string;
  readonly rows: readonly ChangeRow[];
  /** One sentence. */
  readonly says: string;
}

export interface PackageReport {
  readonly into: "keg" | "bottles" | "cask";
  readonly count: number;
  readonly date?: string;
  readonly litres?: number;
  readonly carbonationAsked?: number;
  readonly carbonationMeasured?: number;
  readonly temperatureC?: number;
  /** Gauge, kPa, for the carbonation and temperature asked. */
  readonly pressure?: FigureReport;
  readonly primingSugar?: FigureReport;
  readonly sugar?: string;
  /** Why there is no pressure, sugar or oxygen figure. */
  readonly missing: readonly string[];
  readonly oxygen?: FigureReport;
  readonly limitKPa?: number;
  readonly purge?: string;
}

export interface TastingReport {
  readonly name: string;
  readonly date?: string;
  /** Role → sample as recorded: { before: "control", after: "keg" }. */
  readonly samples: Readonly<Record<string, string>>;
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
  readonly sums: readonly { readonly sample: string; readonly sum: number }[];
  /** Friedman; absent where too few tasters ranked to conclude from. */
  readonly p?: number;
  readonly exact?: boolean;
  /** Page, two-sided, for ranks that rise or fall in the order of doses fixed beforehand. */
  readonly ordered?: { readonly p: number; readonly exact: boolean; readonly rising: boolean };
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

export interface NextStep {
  readonly step: string;
  readonly state: "due" | "overdue" | "blocked" | "later";
  readonly when?: string;
  readonly says: string;
}

/** A planned figure beside what the readings gave. */
export interface PlanRow {
  readonly figure: string;
  readonly title: string;
  readonly planned: PlannedReport;
  readonly actual?: FigureReport;
  /** Actual less planned (less the nearer end of a planned band), in the figure's unit. */
  readonly difference?: number;
  /** as planned: inside the readings' uncertainty; differs: beyond it; open: not read yet. */
  readonly verdict: "as planned" | "differs" | "open";
  readonly says: string;
}

/** Something to expect or to prepare, worked out before it happens. */
export interface OutlookLine {
  readonly id: string;
  readonly what: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  /** Whose number it is: the recipe's own, common practice, or what this brewery's batches show. */
  readonly basis: "recipe" | "common practice" | "this brewery";
  /** How many batches stand behind it. */
  readonly batches?: number;
  readonly method?: string;
  /** Where it comes from, and what it leaves out. Whole sentences. */
  readonly says: string;
  readonly caution?: string;
}

export interface PhotoReport {
  readonly file: string;
  readonly alt: string;
}

export interface SwatchReport {
  /** "#rrggbb" */
  readonly css: string;
  readonly glassCm: number;
  readonly ebc: number;
}

export interface StyleRow {
  readonly figure: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly value?: number;
  /** Readings' and relation's half-widths together. */
  readonly plusMinus?: number;
  readonly verdict: Verdict;
  readonly says: string;
}

export interface BatchReport {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly status: string;
  readonly brewed: string;
  readonly file: string;
  readonly brewer?: string;
  readonly season?: string;
  readonly seasonSlug?: string;
  readonly series?: string;
  readonly seriesSlug?: string;
  readonly style?: string;
  readonly equipment?: string;
  readonly packaged?: string;
  /** One or two sentences: what was tried and whether it worked. */
  readonly summary: string;
  readonly aim?: AimReport;
  readonly figures: Readonly<Record<string, FigureReport>>;
  readonly missing: Readonly<Record<string, string>>;
  readonly planned: Readonly<Record<string, PlannedReport>>;
  readonly checks: readonly CheckReport[];
  readonly tastings: readonly TastingReport[];
  readonly ledger: readonly LedgerEntry[];
  readonly ledgerDetail?: LedgerReport;
  readonly timeline?: TimelineReport;
  readonly dryHops: readonly DryHopReport[];
  readonly packages: readonly PackageReport[];
  readonly styleRows: readonly StyleRow[];
  readonly recipe: RecipeReport;
  readonly comparison?: ComparisonReport;
  readonly next: readonly NextStep[];
  /** Plan against actual; empty without a plan. */
  readonly planRows: readonly PlanRow[];
  /** What to prepare and expect; empty for a finished batch. */
  readonly outlook: readonly OutlookLine[];
  readonly working: readonly FigureWorking[];
  readonly photos: readonly PhotoReport[];
  /** Markdown, as written; untrusted. */
  readonly notes: string;
  /** The beer's colour as sRGB, computed from the spectrum for a stated width of glass. */
  readonly swatch?: SwatchReport;
  /** Instruments whose limits were taken from common practice, said on the page. */
  readonly assumptions: readonly string[];
}

export interface SeasonPoint {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly brewed: string;
  readonly value: number;
  readonly plusMinus?: number;
}

/** One figure over the season's batches, in brew order. */
export interface SeasonSeries {
  readonly figure: string;
  readonly title: string;
  readonly unit: string;
  readonly points: readonly SeasonPoint[];
  /** Batches without it, and why. */
  readonly without: readonly { readonly batch: string; readonly why: string }[];
  /** Of a trend over time; absent where that isn't asked: what the brewers set is told, not tested. */
  readonly claim?: Claim;
  /** The chart's description: the trend in words, or that there are too few batches. */
  readonly says: string;
}

export type Claim = "none" | "too-few" | "possible" | "shown";

export interface RelationReport {
  readonly x: string;
  readonly xTitle: string;
  readonly xUnit: string;
  readonly y: string;
  readonly yTitle: string;
  readonly yUnit: string;
  readonly n: number;
  readonly points: readonly { readonly batch: string; readonly slug: string; readonly x: number; readonly y: number }[];
  readonly slope?: number;
  readonly low?: number;
  readonly high?: number;
  readonly p?: number;
  readonly adjusted?: number;
  readonly claim: Claim;
  /** The fitted line with its 95 % interval of the mean, drawn over the data's own range. */
  readonly line?: readonly { readonly x: number; readonly y: number; readonly low: number; readonly high: number }[];
  /** Theil–Sen: the median of the slopes between all pairs of batches; its interval where so few batches allow one. */
  readonly robust?: { readonly slope: number; readonly low?: number; readonly high?: number };
  /** Other figures that moved together with `x` (variance inflation above 5); `inflation` absent: one follows exactly from the other. */
  readonly together?: readonly { readonly figure: string; readonly title: string; readonly inflation?: number }[];
  readonly says: string;
}

/** One attribute over the season's tastings. */
export interface PooledReport {
  readonly attribute: string;
  readonly tastings: readonly {
    readonly batch: string;
    readonly slug: string;
    readonly lift: number;
    readonly tasters: number;
    /** 95 % t-interval of the mean difference; absent for one taster, or where all differences are equal. */
    readonly low?: number;
    readonly high?: number;
  }[];
  /** Random effects with Knapp–Hartung interval; absent under five batches. */
  readonly estimate?: number;
  readonly low?: number;
  readonly high?: number;
  /** Standard deviation of the true lifts between batches, and the share of the scatter that is more than the tasters' own (I²). */
  readonly between?: number;
  readonly heterogeneity?: number;
  /** Where the lift of one more such batch would lie, 95 %. */
  readonly nextLow?: number;
  readonly nextHigh?: number;
  readonly says: string;
}

export interface SeasonReport {
  readonly season: string;
  readonly slug: string;
  readonly batches: readonly string[];
  readonly rows: readonly BatchSummary[];
  readonly series: readonly SeasonSeries[];
  readonly relations: readonly RelationReport[];
  /** By attribute. */
  readonly pooled: Readonly<Record<string, PooledReport>>;
  readonly summary: string;
}

/** What lists need of a batch. */
export interface BatchSummary {
  readonly batch: string;
  readonly slug: string;
  readonly title: string;
  readonly status: string;
  readonly brewed: string;
  readonly brewer?: string;
  readonly season?: string;
  readonly series?: string;
  readonly style?: string;
  readonly hops: readonly string[];
  readonly summary: string;
  readonly figures: Readonly<Record<string, FigureReport>>;
  readonly swatch?: SwatchReport;
}

export interface ClubReport {
  readonly name: string;
  readonly zone: string;
  readonly units: "metric" | "us";
  readonly url?: string;
  readonly asOf: string;
  /** Cautions the club wrote for its own place. */
  readonly cautions: readonly string[];
}

/** The whole log, computed: what charts and pages are made from. */
export interface LogReport {
  readonly club: ClubReport;
  /** Published batches, newest brew date first. */
  readonly batches: readonly BatchReport[];
  readonly seasons: readonly SeasonReport[];
  /** Series name → batch slugs in order of brew date. */
  readonly series: readonly { readonly name: string; readonly slug: string; readonly batches: readonly string[] }[];
  readonly hops: readonly { readonly name: string; readonly slug: string; readonly batches: readonly string[] }[];
  /** What the build left out, for --keep-going: file and why. */
  readonly leftOut: readonly { readonly file: string; readonly why: string }[];
}

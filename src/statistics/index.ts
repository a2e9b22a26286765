/** Statistics: plain numbers in, plain numbers out. RangeError on bad input, never NaN. */

// Uncertainty: what a value rests on, and how that travels through a function.
export { exact, reading, type Contributions, type Uncertain } from "./uncertainty/uncertain.js";
export { meanOfObservations } from "./uncertainty/mean-of-observations.js";
export { correlation, expandedUncertainty, rectangular, standardUncertainty } from "./uncertainty/standard-uncertainty.js";
export { linearCombination, propagate, sumUncertain } from "./uncertainty/propagate.js";
export { coverageFactor, effectiveDegreesOfFreedom } from "./uncertainty/coverage.js";

// Samples.
export { lagOneAutocorrelation, mean, median, standardDeviation } from "./samples/sample.js";
export { type Interval } from "./samples/interval.js";
export { oneWayAnova, type OneWayAnova } from "./samples/one-way-anova.js";

// Trends: one thing against another, and against time.
export { linearFit, type LinearFit } from "./trends/linear-fit.js";
export { meanInterval, predictAt, predictionInterval, slopeInterval } from "./trends/line-intervals.js";
export { linearContrast, multipleRegression, type Coefficient, type MultipleFit } from "./trends/multiple-regression.js";
export { varianceInflation } from "./trends/variance-inflation.js";
export { bendTest, bentHeight, bentSlope, type BendTest } from "./trends/bend-test.js";
export { durbinWatson } from "./trends/durbin-watson.js";
export { kendall, type Kendall } from "./trends/kendall.js";
export { theilSen, type TheilSen } from "./trends/theil-sen.js";
export { individualsChart, type ChartSignal, type IndividualsChart } from "./trends/individuals-chart.js";

// Proportions, discrimination and preference.
export { clopperPearson } from "./samples/proportion.js";
export { guessProbability, type DiscriminationTest } from "./discrimination/protocols.js";
export { criticalNumber, discriminationTest, type DiscriminationResult } from "./discrimination/discrimination-test.js";
export { dPrimeOf, proportionCorrect } from "./discrimination/psychometric.js";
export { discriminationPower, smallestDetectable } from "./discrimination/power.js";
export { panelSize, panelSizeForShare, type PanelSize } from "./discrimination/panel-size.js";
export { type PowerOptions } from "./discrimination/binomial-power.js";
export { similarityTest, type SimilarityOptions, type SimilarityResult } from "./discrimination/similarity.js";
export { preferenceTest, type PreferenceCounts, type PreferenceResult } from "./preference/preference-test.js";

// Paired scores: the same taster before and after.
export { meanDifference, type MeanDifference } from "./scores/mean-difference.js";
export { hodgesLehmann, type HodgesLehmann } from "./scores/hodges-lehmann.js";
export { signedRankTest, type SignedRankOptions, type SignedRankResult } from "./scores/signed-rank.js";
export { signFlipTest, type SignFlipResult } from "./scores/sign-flip.js";
export {
  smallestStandardisedDifference,
  standardisedDifference,
  type EffectOptions,
  type StandardisedDifference,
} from "./scores/standardised-difference.js";
export { adjustBenjaminiHochberg, adjustHolm } from "./samples/adjusted-p.js";

// Ranking.
export { friedmanTest, rankSumDifference, type FriedmanResult } from "./ranking/friedman.js";
export { pageTest, type PageResult } from "./ranking/page.js";

// Agreement of tasters and judges.
export { concordance, type Concordance } from "./agreement/concordance.js";
export { intraclassCorrelation, type Intraclass, type IntraclassEstimate, type IntraclassForms } from "./agreement/intraclass.js";
export { findConnectedGroups, type ConnectedGroup, type JudgeScore } from "./agreement/connected-groups.js";
export { entryDifference, entryDifferences, type EntryDifference } from "./agreement/entry-differences.js";
export { judgeSeverity, type LinkedJudges, type UnlinkedJudges } from "./agreement/judge-severity.js";

// Serving: orders and codes from a seed.
export { seededGenerator, type SeededGenerator } from "./serving/seeded-generator.js";
export { dealSampleOrders, williamsSquare, type SampleOrders } from "./serving/williams.js";
export { dealServingOrders, servingSequences, type ServingDesign } from "./serving/serving-orders.js";
export { drawBlindCodes } from "./serving/blind-codes.js";

// Several batches as one answer.
export { poolRandomEffects, type PooledEffect } from "./pooling/random-effects.js";

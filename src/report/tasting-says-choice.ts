import type { Batch } from "../records/index.js";
import { listed } from "./season-words.js";
import { DESCRIBED_ONLY, SHOWN_AT } from "./tasting-limits.js";
import { chanceText, shareSpan, shareText } from "./tasting-words.js";
import type { PreferenceReport, RankingReport, TastingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];
type Told = Omit<TastingReport, "says">;

/** Which was liked better; that says nothing of whether they could be told apart. */
export function preferenceSays({ preference, roles = { before: "before", after: "after" } }: Told, tasting: Tasting): string[] {
  if (preference === undefined) return [];
  const { before, after, none } = preference;
  const votes = `Preference: ${after} for ${roles.after}, ${before} for ${roles.before}, ${none} for neither`;
  const others = (tasting.preference?.counts ?? []).filter(({ sample }) => sample !== roles.before && sample !== roles.after);
  return [
    preferenceVerdict(votes, preference, roles),
    ...(others.length === 0 ? [] : [`Votes for ${listed(others.map(({ sample, count }) => `${sample} (${count})`))} are left out of the comparison of the two.`]),
  ];
}

function preferenceVerdict(votes: string, { before, after, p, share, low, high }: PreferenceReport, names: NonNullable<Told["roles"]>): string {
  const chose = before + after;
  if (share === undefined || low === undefined || high === undefined) return `${votes}. Nobody chose, so there is no preference to judge.`;
  if (chose <= DESCRIBED_ONLY) return `${votes}. ${chose} who chose are too few to conclude from: the votes are described only.`;
  const tested = `${votes}. Of the ${chose} who chose, ${shareText(share)} (${shareSpan({ low, high })}) chose ${names.after}, exact two-sided p ${chanceText(p)}`;
  return p <= SHOWN_AT ? `${tested}: a preference for ${after > before ? names.after : names.before} is shown among such tasters.` : `${tested}: a preference is not shown.`;
}

/** An order shows which, not how much (ISO 8587, scope; published). */
export function rankingSays({ ranking }: Told): string[] {
  if (ranking === undefined) return [];
  const sums = `Ranking by ${ranking.tasters}: rank sums ${listed(ranking.sums.map(({ sample, sum }) => `${sample} ${sum}`))}`;
  return [ranking.p === undefined ? `${sums}. Too few tasters, or too many ties, to conclude from: described only.` : `${sums}. ${rankingVerdict(ranking, ranking.p)}`];
}

function rankingVerdict({ exact, ordered, sums }: RankingReport, p: number): string {
  if (ordered !== undefined) {
    const order = sums.map(({ sample }) => sample).join(", ");
    return `Ranks in the order fixed beforehand (${order}): ${exactText(ordered.exact)}p ${chanceText(ordered.p)}, two-sided; that the ranks ${ordered.rising ? "rise" : "fall"} in that order is ${ordered.p <= SHOWN_AT ? "shown" : "not shown"}.`;
  }
  return `Across the samples: ${exactText(exact ?? false)}p ${chanceText(p)}; that they were ranked differently is ${p <= SHOWN_AT ? "shown" : "not shown"}.`;
}

const exactText = (exact: boolean): string => exact ? "exact " : "approximate ";

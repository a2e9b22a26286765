import { adjustHolm } from "../statistics/index.js";
import { ALIKE_SHARE, DESCRIBED_ONLY, LEAST_FOR_SIMILARITY, SHOWN_AT } from "./tasting-limits.js";
import { chanceText, shareSpan, shareText } from "./tasting-words.js";
import type { CountReport, PairReport, TastingReport } from "./types.js";

/** Whether the tasters could tell, by one test of right answers. */
export function countSays(title: string, count: CountReport): string {
  const { correct, tasters, p } = count;
  const found = `${title}: ${correct} of ${tasters} right, where guessing alone gets one in ${guessOdds(count)}`;
  if (tasters <= DESCRIBED_ONLY) return `${found}. ${tooFew(tasters)}`;
  return p <= SHOWN_AT
    ? `${found} (exact p ${chanceText(p)}): that they could be told apart is shown. ${tellingText(count)}`
    : `${found} (exact p ${chanceText(p)}): a difference is not shown; up to ${shareText(count.stillTelling ?? 1)} of tasters could still tell them apart. ${missedText(count)}`;
}

/** The question whether samples are alike enough is answered only when asked beforehand, and of enough tasters. */
export function similaritySays({ tasters, stillTelling = 1 }: CountReport): string[] {
  if (tasters <= DESCRIBED_ONLY) return [];
  const limit = `at most ${shareText(stillTelling)} of tasters can tell them apart (one-sided 95 % limit)`;
  if (tasters < LEAST_FOR_SIMILARITY) {
    return [`Asked beforehand was whether they are alike enough. ${tasters} tasters can't answer that (standards advise ${LEAST_FOR_SIMILARITY} or more); all that can be said is that ${limit}.`];
  }
  const verdict = stillTelling <= ALIKE_SHARE ? "They are alike enough in that sense" : "That they are alike enough is not shown";
  return [`Asked beforehand was whether they are alike enough: ${limit}. ${verdict}, with ${shareText(ALIKE_SHARE)} as the limit (common practice).`];
}

/** Which sample has more of each attribute asked about; several pairs share Holm. */
export function pairSays({ pairs = [], roles }: Omit<TastingReport, "says">): string[] {
  const adjusted = adjustHolm(pairs.map(({ p }) => p));
  return pairs.map((pair, index) => onePairSays(pair, adjusted[index] ?? 1, roles ?? { before: "before", after: "after" }));
}

function onePairSays(pair: PairReport, adjusted: number, names: { readonly before: string; readonly after: string }): string {
  const { attribute, before, after, tasters, sides, p, critical } = pair;
  const found = `Pair, ${attribute}: ${after} of ${tasters} named ${names.after}, ${before} named ${names.before}`;
  if (tasters <= DESCRIBED_ONLY) return `${found}. ${tooFew(tasters)}`;
  const allowed = adjusted === p ? "" : `, ${chanceText(adjusted)} with the other pairs allowed for`;
  const tested = `${found} (exact p ${chanceText(p)}, ${sides === 2 ? "two-sided, since no direction was set beforehand" : "one-sided, as the aim had set the direction"}${allowed})`;
  if (adjusted <= SHOWN_AT) return `${tested}: more ${attribute} in ${stronger(pair, names)} is shown.`;
  const needed = critical === undefined || sides === 2 ? "" : ` With ${tasters} tasters, ${critical} had to agree.`;
  return `${tested}: a difference in ${attribute} is not shown.${needed}`;
}

function stronger({ before, after }: PairReport, names: { readonly before: string; readonly after: string }): string {
  return after > before ? names.after : names.before;
}

function tooFew(tasters: number): string {
  return `${tasters === 1 ? "One taster is" : `${tasters} tasters are`} too few to conclude from: the count is described only.`;
}

function guessOdds({ chance }: CountReport): string {
  return Math.round(1 / chance) === 3 ? "three" : "two";
}

/** The one-sided test and the two-sided interval needn't agree at the edge: 6 of 9 gives p 0.042, yet an interval down to none. */
function tellingText({ discriminators, share, low, high }: CountReport): string {
  const right = `Right answers: ${shareText(share)} (${shareSpan({ low, high })})`;
  if (discriminators === undefined) return `${right}.`;
  const telling = `${right}; tasters who really tell: about ${shareText(discriminators.share)} (${shareSpan(discriminators)})`;
  return discriminators.low > 0 ? `${telling}.` : `${telling}. The interval, being two-sided, still reaches down to none.`;
}

function missedText({ tasters, missed }: CountReport): string {
  return missed === undefined
    ? `With ${tasters} tasters not even a difference that everybody tells would surely be found.`
    : `With ${tasters} tasters, a difference that fewer than ${shareText(missed.share)} of tasters tell would probably be missed.`;
}

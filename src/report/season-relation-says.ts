import { printedUnit } from "../units/index.js";
import type { TrendFamily } from "./season-claims.js";
import type { SeasonRelation } from "./season-relations.js";
import type { Trend } from "./season-trend.js";
import { quantityText, rateText, withUnit } from "./season-quantities.js";
import { isRefused, togetherNames } from "./season-together.js";
import { capitalised, counted, listed } from "./season-words.js";
import { chanceText } from "./tasting-words.js";
import type { Claim, TogetherReport } from "./types.js";

/** What the relation says, no stronger than its claim, with how many batches and what else was looked at. */
export function relationSays(relation: SeasonRelation, claim: Claim, family: TrendFamily): string {
  const { x, y, points, sameX, trend } = relation;
  const n = counted(points.length, "batch", "batches");
  const title = `${capitalised(y.title)} against ${x.words}`;
  const [first] = points;
  if (sameX && first !== undefined) {
    const few = claim === "too-few" ? ", and they are too few besides" : "";
    return `${title}: all ${n} had the same ${x.words} within what the readings can tell (about ${quantityText(first.x, x.unit, first.xPlusMinus)}), so there is no slope to fit${few}.`;
  }
  if (claim === "too-few") return `${title}: ${n} ${points.length === 1 ? "is" : "are"} too few to speak of a trend.`;
  if (trend === undefined) return `${title}: ${y.words} was the same in all ${n}, whatever the ${x.words}.`;
  const tested = `${n}; p ${chanceText(trend.p)}, ${chanceText(family.get(trend) ?? 1)} with all ${counted(family.size, "question", "questions")} of the season allowed for`;
  if (claim === "none") return `${title}: a trend is not shown. The fitted line has ${slopeText(relation, trend)} for each extra ${stepOf(x.unit)}, ${tested}.`;
  const wentWith = `ach extra ${stepOf(x.unit)} of ${x.words} went with ${slopeText(relation, trend)}, ${tested}`;
  return claim === "shown" ? `E${wentWith}.` : `Possible, for other batches to confirm: e${wentWith}.`;
}

/** The line that one odd batch hardly moves, beside the fitted one; where so few batches give it no interval, nothing. */
export function robustSentences({ y }: Pick<SeasonRelation, "y">, { robust, exact }: Trend): string[] {
  const { slope, low, high } = robust ?? {};
  if (slope === undefined || low === undefined || high === undefined) return [];
  return [`Theil–Sen, which one odd batch hardly moves, gives ${slopeText({ y }, { slope, low, high })}; the p is Kendall's${exact ? ", exact" : ", by the normal curve"}.`];
}

/** `0.12 L more total loss (0.05 to 0.19)`; the interval turned with the slope, negative where it reaches past none. */
export function slopeText({ y }: Pick<SeasonRelation, "y">, { slope, low, high }: Pick<Trend, "slope" | "low" | "high">): string {
  const half = (high - low) / 2;
  const [least, most] = slope < 0 ? [-high, -low] : [low, high];
  const amount = (value: number): string => rateText(value, half);
  return `${withUnit(amount(Math.abs(slope)), DIFFERENCES[y.unit] ?? printedUnit(y.unit))} ${slope < 0 ? "less" : "more"} ${y.words} (${amount(least)} to ${amount(most)})`;
}

/** A difference of shares is told in points, one of gravity or pH as a bare number. */
const DIFFERENCES: Readonly<Record<string, string>> = { "%": "percentage points", SG: "", pH: "" };
const STEPS: Readonly<Record<string, string>> = { d: "day", h: "hour", "%": "percentage point" };

/** One step of a quantity: `g/L`, `day`. */
export function stepOf(unit: string): string {
  return STEPS[unit] ?? printedUnit(unit);
}

/** What can't be told apart, and what may have a part in it. */
export function togetherSentences(setting: string, together: readonly TogetherReport[]): string[] {
  const joined = together.filter(isRefused);
  const loose = together.filter((each) => !isRefused(each));
  const names = (list: readonly TogetherReport[]): string => listed(togetherNames(list));
  return [
    ...(joined.length === 0 ? [] : [`${capitalised(setting)} and ${names(joined)} changed together in these batches: which of them it goes with can't be told.`]),
    ...(loose.length === 0 ? [] : [`${capitalised(names(loose))} moved largely along with ${setting}: part of this may be due to that.`]),
  ];
}

import { missedChange, shownDirection, whoMoved } from "./tasting-says-scores.js";
import { DESCRIBED_ONLY, SHOWN_AT } from "./tasting-limits.js";
import { movedText } from "./tasting-score-words.js";
import { chanceText } from "./tasting-words.js";
import type { AimAttribute, AimResult, AttributeReport, PairReport, TastingReport } from "./types.js";

type Want = AimAttribute["want"];

interface Judgement {
  readonly result: AimResult;
  /** What was seen, in a few words: "+1.6, 0.5 to 2.7". */
  readonly seen: string;
  readonly why: string;
}

type Verdict = Omit<Judgement, "seen">;

/**
 * One attribute against what was wanted of it. Moved: shown to move (exact test, and an interval clear
 * of 0), by at least the margin as best estimated. Held: the whole interval inside the margin either
 * way. Anything between is "can't tell". Recommendation of this project.
 */
export function judgeAim(attribute: string, want: Want, primary: boolean, margin: number | undefined, tastings: readonly TastingReport[]): AimAttribute {
  const { result, seen, why } = judgement(attribute, want, margin, tastings);
  return { attribute, want, primary, result, seen, says: `${attribute}, to be ${WANTED[want]}: ${why}.` };
}

const WANTED: Readonly<Record<Want, string>> = { raise: "raised", lower: "lowered", hold: "held" };

function judgement(attribute: string, want: Want, margin: number | undefined, tastings: readonly TastingReport[]): Judgement {
  for (const tasting of tastings) {
    const scored = tasting.attributes.find((one) => one.attribute === attribute);
    if (scored !== undefined) return judgeScores(scored, want, margin, tasting.roles?.after ?? "after");
  }
  const asked = tastings.flatMap(({ pairs = [] }) => pairs).find((pair) => pair.attribute === attribute);
  return asked === undefined ? { result: "can't tell", seen: "not scored", why: "it wasn't scored" } : judgePair(asked, want, margin);
}

function judgeScores(scored: AttributeReport, want: Want, margin: number | undefined, after: string): Judgement {
  const moved = movedText(scored.lift, scored.low, scored.high);
  const seen = `${whoMoved(scored, after)}, ${moved}`;
  if (scored.p === undefined) {
    return { result: "can't tell", seen: `${moved} from ${scored.tasters === 1 ? "one taster" : `${scored.tasters} tasters`}, too few to conclude from`, why: `${seen}, and ${scored.tasters === 1 ? "one taster is" : `${scored.tasters} tasters are`} too few to conclude from` };
  }
  const { result, why } = want === "hold" ? judgeHold(scored, margin) : judgeMove(scored, want, margin);
  return { result, seen: `${moved} from ${scored.tasters} tasters`, why: `${seen}; ${why}` };
}

/** A fall wanted is a rise of the opposite. */
function judgeMove(scored: AttributeReport, want: "raise" | "lower", margin: number | undefined): Verdict {
  const sign = want === "raise" ? 1 : -1;
  const { lift, low = lift, high = lift } = scored;
  const least = margin ?? 0;
  const most = want === "raise" ? high : -low;
  const direction = shownDirection(scored);
  const words = want === "raise" ? "rise" : "fall";
  if (direction === (want === "raise" ? "down" : "up")) return { result: "not met", why: `a ${want === "raise" ? "fall" : "rise"} is shown instead` };
  if (margin !== undefined && most < margin) return { result: "not met", why: `even the interval's end falls short of the ${margin} asked for` };
  const missed = missedChange(scored, words) ?? "every taster moved it alike";
  if (direction === undefined) return { result: "can't tell", why: `a ${words} is not shown; ${missed}` };
  if (sign * lift < least) return { result: "can't tell", why: `a ${words} is shown, but not that it reaches the ${least} asked for` };
  return { result: "met", why: margin === undefined ? `a ${words} is shown; ${missed}` : `a ${words} is shown and reaches the ${least} asked for, as best estimated; ${missed}` };
}

function judgeHold(scored: AttributeReport, margin: number | undefined): Verdict {
  const { lift, low = lift, high = lift } = scored;
  const direction = shownDirection(scored);
  if (margin === undefined) {
    return direction === undefined
      ? { result: "can't tell", why: "no change is shown, but no margin says how far it may move and still count as held" }
      : { result: "not met", why: `a ${direction === "up" ? "rise" : "fall"} is shown` };
  }
  if (low >= -margin && high <= margin) return { result: "met", why: `the interval lies within ${margin} either way` };
  if (direction !== undefined && Math.abs(lift) >= margin) return { result: "not met", why: `it moved by more than the ${margin} allowed` };
  return { result: "can't tell", why: `the interval reaches beyond the ${margin} allowed either way` };
}

/** A pair says which sample has more, never how much: enough where no margin was asked for. */
function judgePair(pair: PairReport, want: Want, margin: number | undefined): Judgement {
  return { seen: `${pair.after} of ${pair.after + pair.before} named after`, ...judgeNaming(pair, want, margin) };
}

function judgeNaming(pair: PairReport, want: Want, margin: number | undefined): Verdict {
  const seen = `${pair.after} named "after" as having more, ${pair.before} "before" (exact p ${chanceText(pair.p)})`;
  const shown = pair.tasters > DESCRIBED_ONLY && pair.p <= SHOWN_AT;
  if (!shown) return { result: "can't tell", why: `${seen}; a difference is not shown` };
  const rose = pair.after > pair.before;
  if (want === "hold") return margin === undefined ? { result: "not met", why: `${seen}; a difference is shown` } : { result: "can't tell", why: `${seen}; a pair doesn't say by how much` };
  if (rose !== (want === "raise")) return { result: "not met", why: `${seen}; it went the other way` };
  return margin === undefined ? { result: "met", why: seen } : { result: "can't tell", why: `${seen}; a pair doesn't say whether by the ${margin} asked for` };
}

import { capitalised, counted } from "./season-words.js";
import { movedText, scoreText } from "./tasting-score-words.js";
import { shareText } from "./tasting-words.js";
import type { PooledReport } from "./types.js";

/** How much of the scatter between batches has to be more than the tasters' own to be called so (common practice). */
const MOSTLY_DIFFERENT = 0.5;

/**
 * What the season's tastings say of one attribute together.
 *
 * @param unweighed batches left out of the pool: one taster, or all alike
 * @param clear whether the pooled lift is clear of 0 with all pooled attributes allowed for
 */
export function pooledSays({ attribute, tastings, ...pooled }: Omit<PooledReport, "says">, unweighed: number, clear: boolean): string {
  const { estimate, low, high } = pooled;
  const left = unweighed === 0 ? "" : ` ${counted(unweighed, "batch", "batches")} had no scatter between tasters to weigh by and ${unweighed === 1 ? "is" : "are"} shown only.`;
  const name = capitalised(attribute);
  if (estimate === undefined || low === undefined || high === undefined) {
    return `${name}: ${counted(tastings.length, "batch", "batches")} tasted, too few to pool; each is shown.${left}`;
  }
  const moved = clear ? `a ${estimate > 0 ? "rise" : "fall"} from before to after is shown over the season` : "a change over the season is not shown";
  return `${name}: ${movedText(estimate, low, high)} over ${tastings.length - unweighed} batches; ${moved}. ${spreadText(pooled)}${left}`;
}

function spreadText({ between = 0, heterogeneity = 0, nextLow, nextHigh }: Omit<PooledReport, "says" | "attribute" | "tastings">): string {
  const next = nextLow === undefined || nextHigh === undefined ? "" : ` One more such batch would be expected between ${scoreText(nextLow)} and ${scoreText(nextHigh)}.`;
  if (between === 0) return `The batches differ no more than the tasters' own scatter would make them.${next}`;
  const share = `${shareText(heterogeneity)} of the scatter between batches is more than the tasters' own`;
  return heterogeneity > MOSTLY_DIFFERENT ? `The batches really differ: ${share}.${next}` : `The batches differ a little: ${share}.${next}`;
}

import { claimOf, isClaimed, type TrendFamily } from "./season-claims.js";
import type { Apart, SeasonGroups } from "./season-groups.js";
import { slopeText, togetherSentences } from "./season-relation-says.js";
import { LEAST_IN_GROUP } from "./season-together.js";
import { LEAST_FOR_TREND } from "./season-trend.js";
import { capitalised, counted, listed } from "./season-words.js";
import { chanceText } from "./tasting-words.js";
import type { Claim, GroupReport } from "./types.js";

/** The comparison as the page shows it, with a claim no stronger than its family allows. */
export function groupReport(compared: SeasonGroups, family: TrendFamily): GroupReport {
  const { by, y, n, groups, apart } = compared;
  const claim = claimOf(n, apart?.trend, family);
  const together = apart?.together() ?? [];
  return {
    by: by.id, byTitle: by.title, y: y.id, yTitle: y.title, yUnit: y.unit, n, groups,
    ...(apart === undefined ? {} : { apart: apartReport(apart, family) }),
    claim,
    ...(together.length === 0 ? {} : { together }),
    onPage: isClaimed({ claim }),
    says: [groupSays(compared, claim, family), ...togetherSentences(`${by.words} ${apart?.group ?? ""}`, together)].join(" "),
  };
}

function apartReport({ group, trend }: Apart, family: TrendFamily): NonNullable<GroupReport["apart"]> {
  const { slope, low, high, p } = trend;
  return { group, difference: slope, low, high, p, adjusted: family.get(trend) ?? 1 };
}

/** What the comparison says: the group that stands apart, or why none can be said to. */
function groupSays({ by, y, n, groups, apart }: SeasonGroups, claim: Claim, family: TrendFamily): string {
  const title = `${capitalised(y.title)} by ${by.words}`;
  const [only] = groups;
  if (groups.length === 1) return `${title}: all ${counted(n, "batch", "batches")} had the same, ${only?.name ?? ""}.`;
  const counts = listed(groups.map(({ name, points }) => `${points.length} ${name}`));
  if (n < LEAST_FOR_TREND) return `${title}: ${counted(n, "batch", "batches")} (${counts}) are too few to compare.`;
  if (apart === undefined) return `${title}: no group of at least ${LEAST_IN_GROUP} can be held against at least ${LEAST_IN_GROUP} others that differ (${counts}).`;
  const tested = `${counts}; p ${chanceText(apart.trend.p)}, ${chanceText(family.get(apart.trend) ?? 1)} with all ${counted(family.size, "question", "questions")} of the season allowed for`;
  const had = `ith ${by.words} ${apart.group} there was ${slopeText({ y }, apart.trend)} than with the others`;
  return claim === "none" ? `${title}: a difference is not shown. W${had}, ${tested}.`
    : claim === "shown" ? `W${had}, ${tested}.` : `Possible, for other batches to confirm: w${had}, ${tested}.`;
}

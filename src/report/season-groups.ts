import { mean } from "../statistics/index.js";
import type { Axis } from "./season-axes.js";
import { GROUPINGS, type Grouping } from "./season-groupings.js";
import { outcomeAxes } from "./season-relations.js";
import { LEAST_IN_GROUP, movedTogether } from "./season-together.js";
import { trendOf, type Trend } from "./season-trend.js";
import type { BatchReport, GroupReport, TogetherReport } from "./types.js";

/** One group against all the others: a trend over 0 (outside) and 1 (inside). */
export interface Apart {
  readonly group: string;
  /** Its p already allows for the other groups that were held against the rest. */
  readonly trend: Trend;
  readonly together: () => readonly TogetherReport[];
}

/** One outcome by one naming, before it is judged among the page's questions. */
export interface SeasonGroups {
  readonly by: Grouping;
  readonly y: Axis;
  readonly n: number;
  readonly groups: GroupReport["groups"];
  /** The group furthest from the rest; undefined where no two groups are large enough. */
  readonly apart: Apart | undefined;
}

interface Member {
  readonly batch: BatchReport;
  readonly group: string;
  readonly value: number;
}

/** Every outcome by form, hop, yeast and vessel. @param batches in brew order */
export function seasonGroups(batches: readonly BatchReport[]): SeasonGroups[] {
  const { tasted, measured } = outcomeAxes(batches);
  return GROUPINGS.flatMap((by) => [...measured, ...tasted].map((y) => groupsOf(by, y, batches)))
    .filter(({ groups }) => groups.length > 0);
}

function groupsOf(by: Grouping, y: Axis, batches: readonly BatchReport[]): SeasonGroups {
  const members = batches.flatMap((batch): Member[] => {
    const [group, found] = [by.groupOf(batch), y.valueOf(batch)];
    return group === undefined || found === undefined ? [] : [{ batch, group, value: found.value }];
  });
  const names = [...new Set(members.map(({ group }) => group))];
  const groups = names.map((name) => groupOf(name, members)).sort((one, other) => other.points.length - one.points.length || (one.name < other.name ? -1 : 1));
  return { by, y, n: members.length, groups, apart: furthestApart(by, groups.map(({ name }) => name), members) };
}

function groupOf(name: string, members: readonly Member[]): GroupReport["groups"][number] {
  const inside = members.filter(({ group }) => group === name);
  return { name, mean: mean(inside.map(({ value }) => value)), points: inside.map(({ batch: { batch, slug }, value }) => ({ batch, slug, y: value })) };
}

/**
 * Each group of three or more against the rest, of three or more: Kendall's test of 0 and 1 is the exact
 * test of Mann and Whitney, the slope the difference of the means. The least p counts for as many as were
 * tried (Bonferroni).
 */
function furthestApart(by: Grouping, names: readonly string[], members: readonly Member[]): Apart | undefined {
  const large = names.filter((name) => {
    const inside = members.filter(({ group }) => group === name).length;
    return inside >= LEAST_IN_GROUP && members.length - inside >= LEAST_IN_GROUP;
  });
  // Of two groups the second is the first turned round.
  const tried = names.length === 2 ? large.slice(0, 1) : large;
  const trends = tried.flatMap((group) => {
    const trend = trendOf(members.map((member) => Number(member.group === group)), members.map(({ value }) => value));
    return trend === undefined ? [] : [{ group, trend }];
  });
  const [least] = trends.sort((one, other) => one.trend.p - other.trend.p);
  if (least === undefined) return undefined;
  const { group, trend } = least;
  const held = members.map(({ batch }) => batch);
  return {
    group, trend: { ...trend, p: Math.min(1, trend.p * trends.length) },
    together: () => movedTogether(by.id, (batch) => Number(by.groupOf(batch) === group), held),
  };
}

import { adjustedTogether, type TrendFamily } from "./season-claims.js";
import { seasonGroups, type SeasonGroups } from "./season-groups.js";
import { seasonRelations, type SeasonRelation } from "./season-relations.js";
import { seasonFigures, type SeasonFigure } from "./season-series.js";
import type { BatchReport } from "./types.js";

/** All that is asked of a season, and the chance of a false claim that it shares. */
export interface SeasonQuestions {
  readonly figures: readonly SeasonFigure[];
  readonly pairs: readonly SeasonRelation[];
  readonly compared: readonly SeasonGroups[];
  readonly family: TrendFamily;
}

/** @param batches in brew order */
export function seasonQuestions(batches: readonly BatchReport[]): SeasonQuestions {
  const figures = seasonFigures(batches);
  const pairs = seasonRelations(batches);
  const compared = seasonGroups(batches);
  const first = pairs.filter((pair) => pair.first);
  const further = pairs.filter((pair) => !pair.first);
  const family = adjustedTogether(
    [...[...figures, ...first].flatMap(({ trend }) => trend ?? []), ...first.flatMap(({ bend }) => bend ?? [])],
    [...further.flatMap(({ trend }) => trend ?? []), ...compared.flatMap(({ apart }) => apart?.trend ?? [])],
  );
  return { figures, pairs, compared, family };
}

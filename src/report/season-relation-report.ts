import { meanInterval, predictAt } from "../statistics/index.js";
import { claimOf, type TrendFamily } from "./season-claims.js";
import { relationSays } from "./season-relation-says.js";
import type { SeasonRelation } from "./season-relations.js";
import type { Trend } from "./season-trend.js";
import type { RelationReport } from "./types.js";

/** Points of the fitted line: enough for its interval to be drawn as a curve. */
const LINE_STEPS = 24;

/** The relation as the page shows it, with a claim no stronger than its family allows. */
export function relationReport(relation: SeasonRelation, family: TrendFamily): RelationReport {
  const { x, y, points, trend, together } = relation;
  const claim = claimOf(points.length, trend, family);
  return {
    x: x.id, xTitle: x.title, xUnit: x.unit,
    y: y.id, yTitle: y.title, yUnit: y.unit,
    n: points.length,
    points: points.map((point) => ({ batch: point.batch, slug: point.slug, x: point.x, y: point.y })),
    ...(trend === undefined ? {} : fitted(trend, points.map((point) => point.x), family)),
    claim,
    ...(together.length === 0 ? {} : { together }),
    says: relationSays(relation, claim, family),
  };
}

function fitted(trend: Trend, xs: readonly number[], family: TrendFamily): Pick<RelationReport, "slope" | "low" | "high" | "p" | "adjusted" | "line" | "robust"> {
  const { slope, low, high, p, robust } = trend;
  return { slope, low, high, p, adjusted: family.get(trend) ?? 1, ...(robust === undefined ? {} : { robust }), line: lineOf(trend, xs) };
}

/** Over the data's own range only: a line says nothing of doses nobody brewed. */
function lineOf({ fit }: Trend, xs: readonly number[]): NonNullable<RelationReport["line"]> {
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  return Array.from({ length: LINE_STEPS + 1 }, (_, step) => {
    const x = step === LINE_STEPS ? to : from + (to - from) * step / LINE_STEPS;
    return { x, y: predictAt(fit, x), ...meanInterval(fit, x) };
  });
}

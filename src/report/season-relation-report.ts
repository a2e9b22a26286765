import { meanInterval, predictAt } from "../statistics/index.js";
import { bentLine, bendReport } from "./season-bend.js";
import { claimOf, isClaimed, type TrendFamily } from "./season-claims.js";
import { relationSays, stepOf } from "./season-relation-says.js";
import type { SeasonRelation } from "./season-relations.js";
import type { Trend } from "./season-trend.js";
import type { RelationReport } from "./types.js";

/** Points of the fitted line: enough for its interval to be drawn as a curve. */
const LINE_STEPS = 24;

/** The relation as the page shows it, with a claim no stronger than its family allows. */
export function relationReport(relation: SeasonRelation, family: TrendFamily): RelationReport {
  const { x, y, points, trend, together, first } = relation;
  const claim = claimOf(points.length, trend, family);
  const bend = relation.bend === undefined ? undefined : bendReport(relation.bend, family, stepOf(x.unit));
  return {
    x: x.id, xTitle: x.title, xUnit: x.unit,
    y: y.id, yTitle: y.title, yUnit: y.unit,
    n: points.length,
    points: points.map((point) => ({ batch: point.batch, slug: point.slug, x: point.x, y: point.y })),
    ...(trend === undefined ? {} : fitted(relation, trend, family, bend?.claim === "shown")),
    claim, first,
    onPage: isClaimed({ claim }) || (bend !== undefined && isClaimed(bend)) || (trend !== undefined && KEPT.has(`${x.id} ${y.id}`)) || relation.bend !== undefined,
    ...(together.length === 0 ? {} : { together }),
    ...(bend === undefined ? {} : { bend }),
    says: [relationSays(relation, claim, family), ...(bend === undefined ? [] : [bend.says])].join(" "),
  };
}

/** What hops cost in beer has its picture, whatever it shows. */
const KEPT = new Set(["dry-hop-dose loss-total"]);

function fitted({ points, bend }: SeasonRelation, trend: Trend, family: TrendFamily, isBent: boolean): Pick<RelationReport, "slope" | "low" | "high" | "p" | "adjusted" | "line" | "robust"> {
  const { slope, low, high, p, robust } = trend;
  const line = lineOf(trend, points.map((point) => point.x));
  return { slope, low, high, p, adjusted: family.get(trend) ?? 1, ...(robust === undefined ? {} : { robust }), line: isBent && bend !== undefined ? bentLine(bend, line) : line };
}

/** Over the data's own range only: a line says nothing of doses nobody brewed. */
function lineOf({ fit }: Trend, xs: readonly number[]): NonNullable<RelationReport["line"]> {
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  return Array.from({ length: LINE_STEPS + 1 }, (_, step) => {
    const x = step === LINE_STEPS ? to : from + (to - from) * step / LINE_STEPS;
    return { x, y: predictAt(fit, x), ...meanInterval(fit, x) };
  });
}

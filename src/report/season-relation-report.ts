import { meanInterval, predictAt } from "../statistics/index.js";
import { bentLine, bendReport } from "./season-bend.js";
import { claimOf, isClaimed, type TrendFamily } from "./season-claims.js";
import { relationSays, robustSentences, stepOf, togetherSentences } from "./season-relation-says.js";
import type { SeasonRelation } from "./season-relations.js";
import type { Trend } from "./season-trend.js";
import type { RelationReport } from "./types.js";

/** Points of the fitted line: enough for its interval to be drawn as a curve. */
const LINE_STEPS = 24;

/** The relation as the page shows it, with a claim no stronger than its family allows. */
export function relationReport(relation: SeasonRelation, family: TrendFamily): RelationReport {
  const { x, y, points, trend, first } = relation;
  const together = relation.together();
  const claim = claimOf(points.length, trend, family);
  const onPage = isClaimed({ claim }) || relation.bend !== undefined || (trend !== undefined && KEPT.has(`${x.id} ${y.id}`));
  const bend = relation.bend === undefined ? undefined : bendReport(relation.bend, family, stepOf(x.unit));
  return {
    x: x.id, xTitle: x.title, xUnit: x.unit,
    y: y.id, yTitle: y.title, yUnit: y.unit,
    n: points.length,
    points: points.map((point) => ({ batch: point.batch, slug: point.slug, x: point.x, y: point.y })),
    ...(trend === undefined ? {} : fitted(trend, family)),
    // A line is only drawn where there is a picture.
    ...(trend === undefined || !onPage ? {} : { line: lineOf(relation, trend, bend?.claim === "shown") }),
    claim, first, onPage,
    ...(together.length === 0 ? {} : { together }),
    ...(bend === undefined ? {} : { bend }),
    says: [relationSays(relation, claim, family), ...(trend === undefined || !onPage ? [] : robustSentences(relation, trend)), ...togetherSentences(x.words, together), ...(bend === undefined ? [] : [bend.says])].join(" "),
  };
}

/** What hops cost in beer has its picture, whatever it shows. */
const KEPT = new Set(["dry-hop-dose loss-total"]);

function fitted(trend: Trend, family: TrendFamily): Pick<RelationReport, "slope" | "low" | "high" | "p" | "adjusted" | "robust"> {
  const { slope, low, high, p, robust } = trend;
  return { slope, low, high, p, adjusted: family.get(trend) ?? 1, ...(robust === undefined ? {} : { robust }) };
}

/** Over the data's own range only: a line says nothing of doses nobody brewed. */
function lineOf({ points, bend }: SeasonRelation, { fit }: Trend, isBent: boolean): NonNullable<RelationReport["line"]> {
  const xs = points.map((point) => point.x);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const line = Array.from({ length: LINE_STEPS + 1 }, (_, step) => {
    const x = step === LINE_STEPS ? to : from + (to - from) * step / LINE_STEPS;
    return { x, y: predictAt(fit, x), ...meanInterval(fit, x) };
  });
  return isBent && bend !== undefined ? bentLine(bend, line) : line;
}

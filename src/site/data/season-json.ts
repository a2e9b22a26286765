import type { ControlReport, SeasonReport } from "../../report/index.js";

/** The season as data: series by figure id, as documented for `seasons/<season>.json`. */
export function seasonJson(season: SeasonReport): string {
  const { season: name, batches, relations, groups, tested, pooled, summary, series } = season;
  const bySeries = Object.fromEntries(series.map(({ figure, title, unit, points, without, control, claim, says }) => [
    figure, { title, unit, values: points.map(({ batch, brewed, value, plusMinus }) => ({ batch, brewed, value, plusMinus })), ...limitsOf(control), claim, without, says },
  ]));
  return `${JSON.stringify({ season: name, batches, series: bySeries, relations, groups, tested, pooled, summary }, null, 1)}\n`;
}

/** Limits only where there are enough batches for them. */
function limitsOf(control: ControlReport | undefined): object {
  if (control === undefined) return {};
  const { standing, center, lower, upper, meanMovingRange, movingRangeUpper, signals } = control;
  return { standing, ...(standing === "none" ? {} : { limits: { center, lower, upper, meanMovingRange, movingRangeUpper } }), signals };
}

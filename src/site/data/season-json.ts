import type { SeasonReport } from "../../report/index.js";

/** The season as data: series by figure id, as documented for `seasons/<season>.json`. */
export function seasonJson(season: SeasonReport): string {
  const { season: name, batches, relations, pooled, summary, series } = season;
  const bySeries = Object.fromEntries(series.map(({ figure, title, unit, points, without, says }) => [
    figure, { title, unit, values: points.map(({ batch, brewed, value, plusMinus }) => ({ batch, brewed, value, plusMinus })), without, says },
  ]));
  return `${JSON.stringify({ season: name, batches, series: bySeries, relations, pooled, summary }, null, 1)}\n`;
}

import {
  chartContactTemperature, chartControl, chartDiscrimination, chartFermentation, chartForest, chartGroups, chartLedger, chartPairedScores, chartPreference,
  chartRelation, chartSeasonFigure, chartVersionFigure, type Chart,
} from "../../src/charts/index.js";
import { attribute, controlSeries, count, dryHops, groups, ledger, pooled, relation, seasonSeries, timeline, versionFigure } from "./sample-reports.js";

/** One chart of each kind, and the variants that take another way through the drawing. */
export function everyChart(): readonly Chart[] {
  const charts = [
    chartFermentation(timeline(), { batch: "TP-03" }),
    chartFermentation(timeline(), { batch: "TP-03", system: "us", id: "fermentation-us" }),
    chartLedger(ledger(), { batch: "TP-03" }),
    chartLedger(ledger(), { batch: "TP-03", system: "us", id: "ledger-us" }),
    chartSeasonFigure(seasonSeries()),
    chartSeasonFigure(seasonSeries(30), { id: "season-of-thirty" }),
    chartRelation(relation()),
    chartPairedScores(attribute(), { before: "control", after: "keg" }),
    chartDiscrimination(count(), { test: "triangle" }),
    chartPreference({ before: 2, after: 8, none: 2, p: 0.11 }, { before: "control", after: "keg" }),
    chartContactTemperature(dryHops(), { batch: "TP-03" }),
    chartControl(controlSeries()),
    chartControl(controlSeries(7, "none"), { id: "control-of-seven" }),
    chartControl(controlSeries(100), { id: "control-of-hundred" }),
    chartForest(pooled()),
    chartGroups(groups()),
    chartVersionFigure(versionFigure()),
  ];
  return charts.filter((chart) => chart !== undefined);
}

/** Makes any change to a value, however deep, throw. */
export function deepFreeze<Value>(value: Value): Value {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
}

import { timeWeightedMean, valueAt, volumeDifference, type TimeWindow } from "../science/index.js";
import { rectangular } from "../statistics/index.js";
import { beerAt } from "./flows.js";
import { apply, assumed, computedBy, isMissing, missing, readingOf, type Missing, type Result } from "./known.js";
import type { LogColumn } from "./log-series.js";
import { PROBE_FIELD, probeReading } from "./over-log.js";
import { remembered } from "./remembered.js";
import type { Scene } from "./scene.js";

/** The beer counts as at the set point within this. */
export const HOLD_WITHIN_C = 1;

/** From the first time the beer is within 1 °C of the set point to the end of the crash. */
export const crashHold = remembered((scene: Scene): TimeWindow | Missing => {
  const set = scene.batch.crash?.set;
  const window = scene.crashWindow;
  if (set === undefined) return missing("crash.set isn't recorded");
  if ("missing" in window) return window;
  if (scene.columns.temperature === undefined) return missing("fermentation.log isn't recorded");
  const reached = firstAtOrBelow(scene.columns.temperature, window, set.value + HOLD_WITHIN_C);
  return reached === undefined || reached >= window.toHours
    ? missing(`the log doesn't show the beer within 1 °C of the ${set.text} set`)
    : { fromHours: reached, toHours: window.toHours };
});

/**
 * When a column is first at or below a value from the window's start on: on the line between two
 * readings, at the reading itself after a gap. It may lie beyond the window's end.
 */
function firstAtOrBelow({ series, longestGapHours }: LogColumn, window: TimeWindow, value: number): number | undefined {
  const index = series.findIndex((reading) => reading.hours >= window.fromHours && reading.value <= value);
  const reached = series[index];
  const before = series[index - 1];
  if (reached === undefined) return undefined;
  if (before === undefined || reached.hours - before.hours > longestGapHours) return reached.hours;
  // It was as cold before the window began: only a reading from before the window can be.
  if (before.value <= value) return window.fromHours;
  const share = (before.value - value) / (before.value - reached.value);
  return Math.max(window.fromHours, before.hours + share * (reached.hours - before.hours));
}

/** Mean temperature at the hold; missing without a log that reaches it. */
export const holdTemperature = remembered((scene: Scene): Result => {
  const hold = crashHold(scene);
  return "missing" in hold ? hold : scene.overLog(timeWeightedMean, hold, (answer) => answer.mean);
});

/** Beer in the vessel when cooling began. */
export function beerAtCrash(scene: Scene): Result {
  return scene.crashStart === undefined ? missing("crash.from isn't recorded") : beerAt(scene, scene.crashStart.hour);
}

/** Gas over the beer when cooling began: the vessel's volume less the beer. */
export function headspaceAtCrash(scene: Scene): Result {
  const vessel = scene.equipment?.fermenter?.volume;
  if (vessel === undefined) return missing("the fermenter's volume isn't in equipment.yaml");
  return apply(volumeDifference, readingOf("equipment.fermenter.volume", vessel.value, "L", vessel.limit, vessel.text), beerAtCrash(scene));
}

/** The beer's temperature when cooling began: the log's, else the hand reading nearest to it within a day. */
export function temperatureBeforeCrash(scene: Scene): Result {
  const start = scene.crashStart;
  if (start === undefined) return missing("crash.from isn't recorded");
  return temperatureAt(scene, start.hour);
}

/** The beer's temperature at an hour, °C. */
export function temperatureAt(scene: Scene, hour: number): Result {
  const column = scene.columns.temperature;
  if (column === undefined) return nearestHandTemperature(scene, hour, "fermentation.log isn't recorded");
  const refusal = valueAt.refuses(column.series, hour, column.longestGapHours);
  if (refusal !== undefined) return nearestHandTemperature(scene, hour, `the log doesn't cover it: ${refusal}`);
  const value = valueAt(column.series, hour, column.longestGapHours);
  const limit = scene.instruments.thermometerC;
  return computedBy(valueAt.about, value, { [PROBE_FIELD]: rectangular(limit) }, [probeReading(limit)], "C");
}

function nearestHandTemperature(scene: Scene, hour: number, why: string): Result {
  const near = scene.handTemperatures.filter((reading) => Math.abs(reading.hour - hour) <= 24)
    .sort((a, b) => Math.abs(a.hour - hour) - Math.abs(b.hour - hour))[0];
  return near === undefined ? missing(why) : near.temperature;
}

/** What the cold beer is at: the mean of the hold, else what was set. */
export function coldTemperature(scene: Scene): Result {
  const held = holdTemperature(scene);
  return isMissing(held) && scene.batch.crash?.set !== undefined ? scene.temperature("crash.set", scene.batch.crash.set) : held;
}

/**
 * Gauge pressure over the beer: the log's last reading before an hour, else what
 * the record says was held, else open to the air.
 */
export function headPressureAt(scene: Scene, hour: number): Result {
  const logged = scene.columns.pressure?.series.findLast((reading) => reading.hours <= hour);
  if (logged !== undefined) return readingOf("fermentation.log pressure", logged.value, "kPa", undefined, `at ${scene.civilAtHour(logged.hours)}`);
  const held = scene.batch.fermentation?.pressure;
  if (held !== undefined) return readingOf("fermentation.pressure", held.value, "kPa", held.limit, held.text);
  return assumed("head pressure", 0, "kPa", "No head pressure is recorded: the vessel is taken as open to the air.");
}

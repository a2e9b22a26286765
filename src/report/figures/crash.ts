import { crashDrawnMost, headspaceContraction, hoursWithin, steepestFall } from "../../science/index.js";
import { beerAtCrash, coldTemperature, headspaceAtCrash, HOLD_WITHIN_C, holdTemperature, temperatureBeforeCrash } from "../crash-conditions.js";
import { apply, missing, type Result } from "../known.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** How the beer was cooled, and what the vessel drew in. */
export const crashFigures = [
  figure("crash-temperature", "C", "Crash temperature", "Mean at the hold", holdTemperature),
  figure("crash-hours", "h", "Crash hold", "Hours within 1 °C of the set point before the transfer", crashHours),
  figure("crash-rate", "C/h", "Cooling rate", "Largest fall over any hour of the crash",
    (scene) => scene.overLog(steepestFall, scene.crashWindow, (answer) => answer.fall)),
  figure("crash-drawn", "L", "Gas drawn in, contraction alone", "Gas the vessel draws in while it cools if none dissolves",
    (scene) => apply(headspaceContraction, headspaceAtCrash(scene), beerAtCrash(scene), temperatureBeforeCrash(scene), coldTemperature(scene))),
  figure("crash-drawn-most", "L", "Gas drawn in, at most", "Gas the vessel draws in while it cools if carbon dioxide dissolves to equilibrium",
    (scene) => apply(crashDrawnMost, headspaceAtCrash(scene), beerAtCrash(scene), temperatureBeforeCrash(scene), coldTemperature(scene))),
];

function crashHours(scene: Scene): Result {
  const set = scene.batch.crash?.set;
  if (set === undefined) return missing("crash.set isn't recorded");
  const band = { low: set.value - HOLD_WITHIN_C, high: set.value + HOLD_WITHIN_C };
  return scene.overLog(hoursWithin, scene.crashWindow, (answer) => answer.withinHours, band);
}

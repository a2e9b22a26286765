import {
  beerViscosity, crashDrawnMost, elapsedTime, freezingPoint, headspaceContraction, seriesExtremes, settlingAssumptions, settlingVelocity, steepestFall,
} from "../../science/index.js";
import { beerAtCrash, coldTemperature, crashHold, headspaceAtCrash, HOLD_WITHIN_C, holdTemperature, temperatureBeforeCrash } from "../crash-conditions.js";
import { apply, assumed, isMissing, missing, readingOf, withNote, type Result } from "../known.js";
import { momentReading } from "../moments.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** How the beer was cooled, and what the vessel drew in. */
export const crashFigures = [
  figure("crash-temperature", "C", "Crash temperature", "Mean at the hold", holdTemperature),
  figure("crash-hours", "h", "Crash hold", "Hours within 1 °C of the set point before the transfer", crashHours),
  figure("crash-lag", "h", "Lag behind the set point", "From the start of cooling until the beer was within 1 °C of the set point", crashLag),
  figure("crash-lowest", "C", "Coldest in the crash", "Lowest temperature of the beer before the transfer",
    (scene) => scene.overLog(seriesExtremes, scene.crashWindow, (answer) => answer.lowest)),
  figure("freezing-point", "C", "Freezing point", "Where this beer would begin to freeze, by its alcohol and extract",
    (scene) => apply(freezingPoint, scene.figure("abw"), scene.figure("original-extract"))),
  figure("crash-rate", "C/h", "Cooling rate", "Largest fall over any hour of the crash",
    (scene) => scene.overLog(steepestFall, scene.crashWindow, (answer) => answer.fall, "none")),
  figure("settling-cell", "mm/h", "Settling of single yeast cells", "How fast one cell sinks in still beer at the hold: an estimate", (scene) => settling(scene, "cell")),
  figure("settling-clump", "mm/h", "Settling of small clumps", "How fast a small clump of cells sinks in still beer at the hold: an estimate", (scene) => settling(scene, "floc")),
  figure("crash-drawn", "L", "Gas drawn in, contraction alone", "Gas the vessel draws in while it cools if none dissolves",
    (scene) => apply(headspaceContraction, headspaceAtCrash(scene), beerAtCrash(scene), temperatureBeforeCrash(scene), coldTemperature(scene))),
  figure("crash-drawn-most", "L", "Gas drawn in, at most", "Gas the vessel draws in while it cools if carbon dioxide dissolves to equilibrium",
    (scene) => apply(crashDrawnMost, headspaceAtCrash(scene), beerAtCrash(scene), temperatureBeforeCrash(scene), coldTemperature(scene))),
];

/** An estimate within a factor of three, so no reading's uncertainty is carried into it. */
function settling(scene: Scene, particle: "cell" | "floc"): Result {
  const cold = coldTemperature(scene);
  if (isMissing(cold)) return cold;
  const { diameterUm, densityDifferenceKgM3, says } = settlingAssumptions[particle];
  const why = `Taken: ${says} (${settlingAssumptions.source}).`;
  const velocity = apply(settlingVelocity,
    assumed("diameter", diameterUm, "um", why), assumed("density above the beer's", densityDifferenceKgM3, "kg/m3", why), apply(beerViscosity, cold));
  return withNote(withNote(isMissing(velocity) ? velocity : { ...velocity, contributions: {} }, why), SETTLING_WORTH);
}

const SETTLING_WORTH = "By Stokes' law, within a factor of three or so; beer that still moves keeps its haze.";

function crashLag(scene: Scene): Result {
  const hold = crashHold(scene);
  if ("missing" in hold) return hold;
  const start = scene.crashStart;
  if (start === undefined) return missing("crash.from isn't recorded");
  const reached = readingOf("fermentation.log time", hold.fromHours, "h", undefined, scene.civilAtHour(hold.fromHours));
  return apply(elapsedTime, momentReading(start), reached);
}

function crashHours(scene: Scene): Result {
  const set = scene.batch.crash?.set;
  if (set === undefined) return missing("crash.set isn't recorded");
  const band = { low: set.value - HOLD_WITHIN_C, high: set.value + HOLD_WITHIN_C };
  return scene.hoursInBand(scene.crashWindow, band, (hours) => hours.withinHours);
}

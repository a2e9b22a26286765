import { CAUTION } from "../cautions.js";
import { crashAirMost, oxygenDrawn, sealedVesselPressure, sealedVesselPressureGas } from "../../science/index.js";
import { beerAtCrash, coldTemperature, headPressureAt, headspaceAtCrash, temperatureBeforeCrash } from "../crash-conditions.js";
import { apply, isMissing, type Result } from "../known.js";
import type { Scene } from "../scene.js";
import { found, known, plain, unknown, workedBy, type CheckDefinition, type Finding } from "./definition.js";

const HOLD_PASS_H = 24;
const HOLD_WATCH_H = 6;
const HOLD_LOW_C = 0;
const HOLD_HIGH_C = 6;

/** The hold, the vessel and the air. */
export const crashChecks: readonly CheckDefinition[] = [
  {
    id: "crash-hold",
    title: "Crash hold",
    says: "Held against the plan's time where there is one; else 24 h or more at 0 to 6 °C is common practice, from 6 h to watch.",
    find: crashHoldCheck,
  },
  {
    id: "crash-vessel",
    title: "Vessel under vacuum",
    says: "A sealed vessel pulls a vacuum as gas contracts and dissolves. Vented, fed with gas, or within its under-pressure rating passes; a rating that isn't known never does.",
    find: crashVessel,
  },
  {
    id: "crash-freezing",
    title: "Clear of freezing",
    says: "The coldest the beer was, a degree or more above where beer of its strength begins to freeze: common practice, for a freezing point good to about half a degree.",
    find: crashFreezing,
  },
  {
    id: "crash-air",
    title: "Air drawn in while cooling",
    says: "Through an airlock a cooling vessel draws in air; fed with gas or sealed it doesn't.",
    find: crashAir,
  },
];

function crashHoldCheck(scene: Scene): Finding | undefined {
  const { crash, plan } = scene.batch;
  if (crash === undefined) return undefined;
  const planned = plan?.crashFor;
  if (planned === undefined) return holdByPractice(scene);
  const hours = scene.figure("crash-hours");
  if (isMissing(hours)) return unknown("plan", hours.missing);
  const least = planned.low.value - (planned.single ? 12 : 0);
  return found(hours.value >= least ? "pass" : "watch", "plan", ["crash-hours"],
    `Within 1 °C of the set point for ${plain(hours.value, "h")}; the plan says ${planned.text}${planned.single ? ", give or take 12 h" : ""}.`);
}

/** Cold enough is cold enough, whatever was set; around a set point at the band's edge its own degree counts too. */
function holdByPractice(scene: Scene): Finding {
  const cold = scene.hoursInBand(scene.crashWindow, { low: HOLD_LOW_C, high: HOLD_HIGH_C }, ({ withinHours }) => withinHours);
  if (isMissing(cold)) return unknown("common practice", cold.missing);
  const set = scene.batch.crash?.set?.value;
  const atSet = set !== undefined && set >= HOLD_LOW_C && set <= HOLD_HIGH_C ? known(scene.figure("crash-hours"))?.value ?? 0 : 0;
  const hours = Math.max(cold.value, atSet) + ROUNDING;
  const verdict = hours < HOLD_WATCH_H ? "fail" : hours < HOLD_PASS_H ? "watch" : "pass";
  const where = atSet > cold.value && set !== undefined ? `Within 1 °C of the ${plain(set, "C")} set` : `At ${HOLD_LOW_C} to ${HOLD_HIGH_C} °C`;
  return found(verdict, "common practice", [atSet > cold.value ? "crash-hours" : "fermentation.log"],
    `${where} for ${plain(hours, "h")}; common practice is ${HOLD_PASS_H} h or more at ${HOLD_LOW_C} to ${HOLD_HIGH_C} °C.`);
}

/** Room for the rounding of hours read off lines. */
const ROUNDING = 1e-9;

function crashVessel(scene: Scene): Finding | undefined {
  const { crash } = scene.batch;
  if (crash === undefined) return undefined;
  if (crash.vent === undefined) return unknown("record", "crash.vent isn't recorded", CAUTION.collapse);
  if (crash.vent !== "sealed") return found("pass", "record", ["crash.vent"], crash.vent === "gas" ? "Fed with gas while it cooled." : "Open through an airlock while it cooled.");
  const lowest = absolutePressure(scene, "lowest");
  const rating = scene.equipment?.fermenter?.vacuum?.value;
  const outside = scene.atmosphericPressure;
  if (isMissing(lowest) || isMissing(outside)) {
    return rating === undefined
      ? found("watch", "record", ["crash.vent"], "Sealed while it cooled, and what vacuum the vessel stands isn't known.", CAUTION.collapse)
      : unknown("record", isMissing(lowest) ? lowest.missing : "the air's pressure isn't known", CAUTION.collapse);
  }
  const highest = known(absolutePressure(scene, "highest"));
  const under = Math.max(0, outside.value - lowest.value);
  const least = Math.max(0, outside.value - (highest?.value ?? lowest.value));
  const says = `Sealed: the pressure inside falls ${plain(least, "kPa")} below the air's by contraction alone, up to ${plain(under, "kPa")} once carbon dioxide has dissolved`;
  const finding = rating === undefined
    ? found("watch", "record", ["crash.vent", "crash-drawn"], `${says}; what vacuum the vessel stands isn't known.`, CAUTION.collapse)
    : found(under <= rating ? "pass" : "fail", "record", ["crash.vent", "equipment.fermenter.vacuum"], `${says}; its maker rates it for ${plain(rating, "kPa")}.`, CAUTION.collapse);
  return workedBy(finding, sealedVesselPressureGas, sealedVesselPressure);
}

/** Inside a sealed vessel once cold, kPa absolute: by the gas law alone, or with carbon dioxide dissolved to equilibrium. */
function absolutePressure(scene: Scene, end: "lowest" | "highest"): Result {
  const warm = temperatureBeforeCrash(scene);
  const cold = coldTemperature(scene);
  const gauge = headPressureAt(scene, scene.crashStart?.hour ?? 0);
  return end === "highest"
    ? apply(sealedVesselPressureGas, warm, cold, gauge, scene.atmosphericPressure)
    : apply(sealedVesselPressure, headspaceAtCrash(scene), beerAtCrash(scene), warm, cold, gauge, scene.atmosphericPressure);
}

const FREEZING_CLEAR_C = 1;
function crashFreezing(scene: Scene): Finding | undefined {
  if (scene.batch.crash === undefined) return undefined;
  const lowest = scene.figure("crash-lowest");
  const freezing = scene.figure("freezing-point");
  if (isMissing(lowest)) return unknown("common practice", lowest.missing);
  if (isMissing(freezing)) return unknown("common practice", freezing.missing);
  const clear = lowest.value - freezing.value;
  const verdict = clear >= FREEZING_CLEAR_C ? "pass" : clear > 0 ? "watch" : "fail";
  return found(verdict, "common practice", ["crash-lowest", "freezing-point"],
    `Coldest ${plain(lowest.value, "C")}; beer of this strength begins to freeze near ${plain(freezing.value, "C")}.`, verdict === "pass" ? undefined : CAUTION.ice);
}

function crashAir(scene: Scene): Finding | undefined {
  const vent = scene.batch.crash?.vent;
  if (scene.batch.crash === undefined) return undefined;
  if (vent === undefined) return unknown("record", "crash.vent isn't recorded");
  if (vent !== "airlock") return found("pass", "record", ["crash.vent"], vent === "gas" ? "Gas, not air, came in." : "Sealed: no air came in.");
  const beer = beerAtCrash(scene);
  const cold = coldTemperature(scene);
  const least = known(scene.figure("crash-drawn"));
  const most = known(apply(crashAirMost, headspaceAtCrash(scene), beer, temperatureBeforeCrash(scene), cold));
  if (least === undefined || most === undefined) return found("watch", "record", ["crash.vent"], "Through an airlock the vessel drew in air as it cooled; how much can't be computed without its volume and the log.");
  const oxygen = known(apply(oxygenDrawn, most, beer, cold, scene.atmosphericPressure));
  const worth = oxygen === undefined ? "" : `, up to ${plain(oxygen.value, "mg/L")} of oxygen if all of it dissolved`;
  return workedBy(found("watch", "record", ["crash.vent", "crash-drawn"],
    `Through an airlock the vessel drew in ${plain(least.value, "L")} to ${plain(Math.max(least.value, most.value), "L")} of air${worth}.`), crashAirMost, oxygenDrawn);
}

/**
 * An invented probe log: beer temperature that follows a fridge with a lag, a fermentation that
 * warms it, gravity that falls along an S, head pressure where the vessel was shut.
 */

import { createRandom } from "./random.mjs";
import { formatCivil, formatProbeExport, hourOfDay, momentOf } from "./civil-time.mjs";

/**
 * @typedef {object} LogPlan
 * @property {string} from first row, civil time
 * @property {string} to last row, civil time
 * @property {number} everyMinutes
 * @property {number} pitchedC wort temperature at the first row
 * @property {[string, number, number?][]} settings from when, the temperature set (C), lag in hours (5 where left out)
 * @property {GravityPlan} [gravity] a gravity column, when the batch had a floating probe
 * @property {PressurePlan} [pressure] a pressure column
 * @property {[string, string]} [gap] rows missing from, to
 * @property {number} rippleC half the daily swing the cupboard lets through
 * @property {number} [heatC] how far a fermentation at full speed lifts the beer over the setting; a bucket in a cupboard 2
 * @property {"celsius" | "fahrenheit" | "probe-export"} [format] celsius where left out
 * @property {Omit<GravityPlan, "noise">} [hidden] how it ferments when no column shows it: drives the heat
 */
/** @typedef {{original: number, final: number, halfHours: number, widthHours: number, noise: number, stall?: [number, string, number], creep?: [string, number, number]}} GravityPlan */
/** @typedef {{shut: string, heldKpa: number, opened: string}} PressurePlan */
/** @typedef {{moment: number, temperatureC: number, gravity: number, pressureKpa: number}} Row */

const HOUR = 3_600_000;
const STEP_MINUTES = 5;
const FRIDGE_HEAT_C = 1.0;
const FULL_SPEED_SG_PER_H = 0.0011;

/** How far an S-shaped fermentation has come, 0 at pitching to 1. @param {number} hours @param {number} half @param {number} width */
function progress(hours, half, width) {
  const curve = (at) => 1 / (1 + Math.exp((half - at) / width));
  return (curve(hours) - curve(0)) / (1 - curve(0));
}

/** True gravity at a moment. A stall holds it until the brewer roused the yeast; creep lets it fall again after the hops. */
function gravityAt(plan, moment, pitched) {
  const hours = (moment - pitched) / HOUR;
  const { original, final, halfHours, widthHours, stall, creep } = plan;
  let gravity = original - (original - (stall?.[0] ?? final)) * progress(hours, halfHours, widthHours);
  if (stall && moment > momentOf(stall[1])) {
    const since = (moment - momentOf(stall[1])) / HOUR;
    gravity -= (stall[0] - final) * (1 - Math.exp(-since / stall[2]));
  }
  if (creep && moment > momentOf(creep[0])) {
    const since = (moment - momentOf(creep[0])) / HOUR;
    gravity -= creep[1] * (1 - Math.exp(-since / creep[2]));
  }
  return gravity;
}

/** The setting in force at a moment, and the lag with which beer follows it. */
function settingAt(settings, moment) {
  let current = settings[0];
  for (const setting of settings) {
    if (momentOf(setting[0]) <= moment) current = setting;
  }
  return { setC: current[1], lagHours: current[2] ?? 5 };
}

/** Beer temperature every five minutes from pitching on: Newton's law towards the setting, plus the heat of fermentation. */
function createBeer(plan, ferment, random) {
  const start = momentOf(plan.from);
  let moment = start;
  let temperatureC = plan.pitchedC;
  let wander = 0;
  return (until) => {
    while (moment < until) {
      const { setC, lagHours } = settingAt(plan.settings, moment);
      const next = moment + STEP_MINUTES * 60_000;
      const speed = (gravityAt(ferment, moment, start) - gravityAt(ferment, next, start)) / (STEP_MINUTES / 60);
      const heatC = (plan.heatC ?? FRIDGE_HEAT_C) * Math.min(1.4, speed / FULL_SPEED_SG_PER_H);
      const swingC = plan.rippleC * Math.sin(((hourOfDay(moment) - 9.5) / 24) * 2 * Math.PI);
      wander = wander * 0.985 + random.normal(0.012);
      const towardsC = setC + heatC + swingC + wander;
      temperatureC += ((towardsC - temperatureC) * STEP_MINUTES) / 60 / lagHours;
      moment = next;
    }
    return temperatureC;
  };
}

/** Head pressure: builds while beer ferments shut, held by the valve, eases when it cools, then let down. */
function pressureAt(plan, moment, temperatureC, random) {
  const shut = momentOf(plan.shut);
  if (moment < shut || moment > momentOf(plan.opened)) return Math.max(0, random.normal(0.4));
  const built = plan.heldKpa * (1 - Math.exp(-(moment - shut) / HOUR / 9));
  const coolingKpa = Math.max(0, 17 - temperatureC) * 2.1;
  return Math.max(0, built - coolingKpa + random.normal(0.8));
}

/** A floating probe reads wildly under the foam and steadily once it has gone. */
function readGravity(ferment, moment, start, random) {
  const truth = gravityAt(ferment, moment, start);
  const fermented = (ferment.original - truth) / (ferment.original - ferment.final);
  const foamy = fermented > 0.05 && fermented < 0.9;
  const noise = Math.max(-1.6, Math.min(1.6, random.normal())) * ferment.noise * (foamy ? 3 : 1);
  return truth + noise;
}

/** @param {string} name seed of this log @param {LogPlan} plan @returns {Row[]} */
export function buildLog(name, plan) {
  const random = createRandom(`log ${name}`);
  const start = momentOf(plan.from);
  const ferment = plan.gravity ?? { ...plan.hidden, noise: 0 };
  const beerAt = createBeer(plan, ferment, random);
  const gap = plan.gap?.map(momentOf);
  const rows = [];
  for (let moment = start; moment <= momentOf(plan.to); moment += plan.everyMinutes * 60_000) {
    const beerC = beerAt(moment);
    const probe = Math.max(-0.1, Math.min(0.1, random.normal(0.05)));
    const gravity = readGravity(ferment, moment, start, random);
    const pressureKpa = plan.pressure ? pressureAt(plan.pressure, moment, beerC, random) : 0;
    if (gap && moment > gap[0] && moment < gap[1]) continue;
    rows.push({ moment, temperatureC: beerC + probe, gravity, pressureKpa });
  }
  return rows;
}

/** @param {Row[]} rows @param {LogPlan} plan @returns {string} */
export function formatLog(rows, plan) {
  if (plan.format === "probe-export") return formatForeignLog(rows);
  const fahrenheit = plan.format === "fahrenheit";
  const header = ["time", fahrenheit ? "temperature [F]" : "temperature [C]"];
  if (plan.gravity) header.push("gravity [SG]");
  if (plan.pressure) header.push("pressure [kPa]");
  const lines = rows.map((row) => {
    const temperature = fahrenheit ? inFahrenheit(row.temperatureC) : row.temperatureC;
    const cells = [formatCivil(row.moment), temperature.toFixed(1)];
    if (plan.gravity) cells.push(row.gravity.toFixed(4));
    if (plan.pressure) cells.push(row.pressureKpa.toFixed(0));
    return cells.join(",");
  });
  return `${[header.join(","), ...lines].join("\n")}\n`;
}

/** @param {number} temperatureC @returns {number} */
function inFahrenheit(temperatureC) {
  return (temperatureC * 9) / 5 + 32;
}

/** As the borrowed probe writes it: its own column names, Fahrenheit, UTC, a room sensor nobody asked for. */
function formatForeignLog(rows) {
  const random = createRandom("room sensor");
  const lines = rows.map((row) => {
    const beerF = inFahrenheit(row.temperatureC);
    const roomF = 54 + random.normal(1.5);
    return `${formatProbeExport(row.moment)},${beerF.toFixed(1)},${roomF.toFixed(1)}`;
  });
  return `${["Date,Beer temp (F),Room temp (F)", ...lines].join("\n")}\n`;
}

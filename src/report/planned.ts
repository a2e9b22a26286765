import {
  alcoholByVolume, alcoholByWeight, apparentAttenuation, bitternessStand, bitternessTinseth, colorMorey, dryHopMass, energy, kegPressure,
  maltColorUnits, platoFromGravity, realAttenuation, realExtract, volumeShare,
} from "../science/index.js";
import type { QuantityRange } from "../records/index.js";
import { formatNumber, type Quantity } from "../units/index.js";
import { figureDefinition } from "./figures/index.js";
import { apply, assumed, figureReport, isMissing, missing, scaled, withNote, type Known, type Result } from "./known.js";
import { totalOf, weightedMeanOf } from "./known-lists.js";
import { gravityReading } from "./readings.js";
import type { Scene } from "./scene.js";
import type { PlannedReport } from "./types.js";

/** What the plan and the recipe predict, under the same ids as the figures; no reading stands behind it. */
export function plannedFigures(scene: Scene): Readonly<Record<string, PlannedReport>> {
  const results: Readonly<Record<string, Result>> = { ...gravities(scene), ...recipe(scene), ...cellar(scene) };
  const planned: Record<string, PlannedReport> = {};
  for (const [id, result] of Object.entries(results)) {
    if (!isMissing(result)) planned[id] = plannedReport({ ...result, unit: figureDefinition(id).unit }, bandOf(scene, id));
  }
  return planned;
}

function plannedReport(known: Known, band: { readonly low: number; readonly high: number } | undefined): PlannedReport {
  const { value, unit, method, from, notes } = figureReport(known);
  const middle = band === undefined ? value : (band.low + band.high) / 2;
  return { value: middle, unit, method, ...(band ?? {}), ...(from.length > 0 ? { from } : {}), ...(notes === undefined ? {} : { notes }) };
}

/** A plan's own number: stated, so without a limit of any instrument. */
function stated(field: string, quantity: Quantity | undefined, unit: string): Result {
  if (quantity === undefined) return missing(`${field} isn't planned`);
  return assumed(field, quantity.value, unit, `Planned: ${quantity.text}.`);
}

function plannedGravity(scene: Scene, field: string, gravity: Quantity<"gravity"> | undefined): Result {
  const read = gravityReading(scene.instruments, field, gravity);
  return isMissing(read) ? read : assumed(field, read.value, "SG", `Planned: ${gravity?.text ?? ""}.`);
}

function gravities(scene: Scene): Record<string, Result> {
  const { plan } = scene.batch;
  const original = plannedGravity(scene, "plan.original_gravity", plan?.originalGravity);
  const final = plannedGravity(scene, "plan.final_gravity", plan?.finalGravity);
  const originalExtract = apply(platoFromGravity, original);
  const apparentExtract = apply(platoFromGravity, final);
  const real = apply(realExtract, originalExtract, apparentExtract);
  const abw = apply(alcoholByWeight, originalExtract, real);
  return {
    "original-gravity": original,
    "final-gravity": final,
    "original-extract": originalExtract,
    "apparent-extract": apparentExtract,
    "real-extract": real,
    abv: apply(alcoholByVolume, abw, final),
    abw,
    "apparent-attenuation": apply(apparentAttenuation, originalExtract, apparentExtract),
    "real-attenuation": apply(realAttenuation, originalExtract, real),
    energy: apply(energy, abw, real, final),
  };
}

/** Bitterness and colour of the recipe in the planned volume at the planned gravity. */
function recipe(scene: Scene): Record<string, Result> {
  const { plan, hops, grist } = scene.batch;
  const volume = stated("plan.fermenter", plan?.fermenter, "L");
  const gravity = plannedGravity(scene, "plan.original_gravity", plan?.originalGravity);
  const grams = (field: string, amount: Quantity<"mass"> | undefined): Result => stated(field, amount, "g");
  const bitterness = hops === undefined ? missing("hops (kettle) aren't recorded") : totalOf(hops.map((hop, index) => {
    const field = `hops[${index}]`;
    const alpha = scene.hopAlpha(hop.hop, hop.alpha, `${field}.alpha`);
    const minutes = stated(`${field}.boil`, hop.boil ?? hop.stand, "h");
    const time = isMissing(minutes) ? minutes : scaled(minutes, 60, "min");
    if (hop.boil !== undefined) return apply(bitternessTinseth, alpha, grams(`${field}.amount`, hop.amount), time, gravity, volume);
    return apply(bitternessStand, alpha, grams(`${field}.amount`, hop.amount), time, stated(`${field}.temperature`, hop.temperature, "C"), gravity, volume);
  }), "IBU", bitternessTinseth.about);
  const units = grist === undefined ? missing("grist isn't recorded") : totalOf(grist.map((line, index) => {
    const mass = grams(`grist[${index}].amount`, line.amount);
    return apply(maltColorUnits, isMissing(mass) ? mass : scaled(mass, 0.001, "kg"), scene.malt(line, index).color, volume);
  }), "MCU");
  return { bitterness, color: apply(colorMorey, units), "potential-extract": scene.figure("potential-extract") };
}

function cellar(scene: Scene): Record<string, Result> {
  const { plan } = scene.batch;
  const volume = stated("plan.fermenter", plan?.fermenter, "L");
  const dose = stated("plan.dry_hop", plan?.dryHop, "g/L");
  return {
    "dry-hop-dose": dose,
    "dry-hop-mass": apply(dryHopMass, dose, volume),
    ...plannedContact(scene),
    "crash-temperature": stated("plan.crash", plan?.crash, "C"),
    "crash-hours": stated("plan.crash_for", plan?.crashFor?.low, "h"),
    "package-yield": apply(volumeShare, stated("plan.package", plan?.package, "L"), volume),
    "keg-pressure": plannedPressure(scene),
  };
}

/**
 * Contact is counted to the transfer, as the figure is: the planned days, then
 * the planned crash with the hops still in the beer. A planned band counts by its middle.
 */
function plannedContact(scene: Scene): Record<string, Result> {
  const { plan } = scene.batch;
  const warm = middle("plan.dry_hop_for", plan?.dryHopFor, "h");
  const cold = plan?.crashFor === undefined ? undefined : middle("plan.crash_for", plan.crashFor, "h");
  const warmC = middle("plan.dry_hop_temperature", plan?.dryHopTemperature, "C");
  const hours = cold === undefined ? warm : totalOf([warm, cold], "h");
  const mean = cold === undefined ? warmC : weightedMeanOf([warmC, stated("plan.crash", plan?.crash, "C")], [warm, cold], "C");
  const notes = cold === undefined ? {} : contactNotes(scene);
  return {
    "dry-hop-contact": withNote(isMissing(hours) ? hours : scaled(hours, 1 / 24, "d"), notes.time),
    "dry-hop-temperature": withNote(mean, notes.temperature),
  };
}

/** What a contact counted through the crash is made of, in the plan's own words. */
function contactNotes({ batch: { plan } }: Scene): { readonly time?: string; readonly temperature?: string } {
  const [warm, cold] = [plan?.dryHopFor?.text, plan?.crashFor?.text];
  const [warmC, coldC] = [plan?.dryHopTemperature?.text, plan?.crash?.text];
  return {
    ...(warm === undefined || cold === undefined ? {} : { time: `Counted to the transfer: ${warm} as planned, then ${cold} of crash with the hops still in.` }),
    ...(warmC === undefined || coldC === undefined ? {} : { temperature: `The mean over both: ${warmC}, then ${coldC} in the crash.` }),
  };
}

function middle(field: string, range: QuantityRange | undefined, unit: string): Result {
  if (range === undefined) return missing(`${field} isn't planned`);
  return assumed(field, (range.low.value + range.high.value) / 2, unit, `Planned: ${range.text}.`);
}

function plannedPressure(scene: Scene): Result {
  const { carbonation } = scene.batch.plan ?? {};
  const temperature = servingTemperature(scene);
  const pressure = apply(kegPressure, stated("plan.carbonation", carbonation, "vol"), temperature, scene.atmosphericPressure);
  if (isMissing(temperature)) return pressure;
  const { value, unit } = formatNumber(temperature.value, "C");
  return withNote(pressure, `Gauge, at equilibrium, for ${carbonation?.text ?? ""} at ${value} ${unit}; a warmer keg needs more.`);
}

/** The temperature the package is to be carbonated at: its own, else what it is crashed to. */
function servingTemperature(scene: Scene): Result {
  const keg = scene.packages.find(({ entry }) => entry.temperature !== undefined);
  return keg === undefined ? stated("plan.crash", scene.batch.plan?.crash, "C") : stated(`${keg.field}.temperature`, keg.entry.temperature, "C");
}

function bandOf(scene: Scene, id: string): { readonly low: number; readonly high: number } | undefined {
  const band = id === "crash-hours" ? scene.batch.plan?.crashFor : undefined;
  return band === undefined || band.single ? undefined : { low: band.low.value, high: band.high.value };
}

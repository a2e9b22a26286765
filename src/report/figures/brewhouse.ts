import {
  bitternessStand, bitternessTinseth, boilOff, colorMorey, efficiency, extractMass, maltColorUnits, potentialExtract,
} from "../../science/index.js";
import type { KettleHop } from "../batch-parts.js";
import { apply, assumed, isMissing, missing, readingOf, scaled, withNote, type Result } from "../known.js";
import { totalOf, weightedMeanOf } from "../known-lists.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** From grist to fermenter: extract, efficiencies, boil, bitterness, colour. */
export const brewhouseFigures = [
  figure("potential-extract", "kg", "Potential extract", "Dry extract the grist could give in a laboratory mash",
    (scene) => potentialOf(scene, ["mash", "kettle"])),
  figure("mash-efficiency", "%", "Mash efficiency", "Extract in the kettle before the boil over potential", mashEfficiency),
  figure("brewhouse-efficiency", "%", "Brewhouse efficiency", "Extract in the fermenter over potential",
    (scene) => apply(efficiency,
      apply(extractMass, scene.figure("original-gravity"), scene.fermenterVolume), scene.figure("potential-extract"))),
  figure("boil-off", "L/h", "Boil-off", "Water boiled away an hour, at 20 °C", boiledOff),
  figure("bitterness", "IBU", "Bitterness", "Estimated bitterness from the kettle additions", bitterness),
  figure("color", "EBC", "Colour", "Estimated colour from the grist", color),
];

function potentialOf(scene: Scene, into: readonly string[]): Result {
  const { grist } = scene.batch;
  if (grist === undefined) return missing("grist isn't recorded");
  const parts = grist.flatMap((malt, index) => {
    if (!into.includes(malt.into)) return [];
    const values = scene.malt(malt, index);
    return [apply(potentialExtract, inKilograms(scene.mass(`grist[${index}].amount`, malt.amount)), values.extract, values.moisture)];
  });
  return totalOf(parts, "kg", potentialExtract.about);
}

function mashEfficiency(scene: Scene): Result {
  const before = scene.batch.boil?.before;
  const extract = apply(extractMass,
    scene.gravity("boil.before.gravity", before?.gravity), scene.volume("boil.before.volume", before?.volume));
  return apply(efficiency, extract, potentialOf(scene, ["mash"]));
}

function boiledOff(scene: Scene): Result {
  const { boil } = scene.batch;
  const duration = scene.stated("boil.for", boil?.for, "h");
  return apply(boilOff, scene.volume("boil.before.volume", boil?.before?.volume), scene.afterBoilVolume, duration);
}

/** Sums each kettle addition; gravity is the mean of before and after the boil, as the relation's author asks. */
function bitterness(scene: Scene): Result {
  const { hops, boil } = scene.batch;
  if (hops === undefined) return missing("hops (kettle) aren't recorded");
  const after = scene.gravity("boil.after.gravity", boil?.after?.gravity);
  const before = scene.gravity("boil.before.gravity", boil?.before?.gravity);
  const gravity = weightedMeanOf([before, after], [equalWeight, equalWeight], "SG");
  return totalOf(hops.map((hop, index) => hopBitterness(scene, hop, index, gravity)), "IBU", bitternessTinseth.about);
}

const equalWeight = assumed("weight", 1, "", "Before and after the boil count alike.");

function hopBitterness(scene: Scene, hop: KettleHop, index: number, gravity: Result): Result {
  const field = `hops[${index}]`;
  const alpha = scene.hopAlpha(hop.hop, hop.alpha, `${field}.alpha`);
  const mass = scene.mass(`${field}.amount`, hop.amount);
  if (hop.boil !== undefined) {
    return apply(bitternessTinseth, alpha, mass, inMinutes(scene.stated(`${field}.boil`, hop.boil, "h")), gravity, scene.afterBoilVolume);
  }
  if (hop.stand === undefined) return missing(`${field}.boil or ${field}.stand isn't recorded`);
  if (hop.temperature === undefined) return missing(`${field}.temperature isn't recorded: a stand's bitterness depends on it`);
  const temperature = readingOf(`${field}.temperature`, hop.temperature.value, "C", hop.temperature.limit ?? scene.instruments.thermometerC, hop.temperature.text);
  return apply(bitternessStand, alpha, mass, inMinutes(scene.stated(`${field}.stand`, hop.stand, "h")), temperature, gravity, scene.afterBoilVolume);
}

function color(scene: Scene): Result {
  const { grist } = scene.batch;
  if (grist === undefined) return missing("grist isn't recorded");
  const volume = isMissing(scene.afterBoilVolume)
    ? withNote(scene.fermenterVolume, "Over the fermenter's volume: the volume after the boil isn't recorded.")
    : scene.afterBoilVolume;
  const units = grist.map((malt, index) =>
    apply(maltColorUnits, inKilograms(scene.mass(`grist[${index}].amount`, malt.amount)), scene.malt(malt, index).color, volume));
  return apply(colorMorey, totalOf(units, "MCU"));
}

function inMinutes(hours: Result): Result {
  return isMissing(hours) ? hours : scaled(hours, 60, "min");
}

function inKilograms(grams: Result): Result {
  return isMissing(grams) ? grams : scaled(grams, 0.001, "kg");
}

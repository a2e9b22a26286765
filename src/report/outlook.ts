import {
  dryHopLoss, efficiency, extractMass, grainAbsorption, gravityFromExtract, strikeTemperature, volumeBeforeBoil, waterNeeded,
} from "../science/index.js";
import { CAUTION } from "./cautions.js";
import { comparableBatches, expectedLoss, ownHopLoss, ownMean } from "./brewery-history.js";
import { isMissing } from "./known.js";
import { sugarLines } from "./outlook-sugar.js";
import type { Scene } from "./scene.js";
import type { BatchReport, OutlookLine } from "./types.js";

const GRAIN_C = 20;

/** What to prepare and to expect of a batch that isn't finished: from its plan, its recipe, and this brewery's own batches. */
export function outlookOf(scene: Scene, others: readonly BatchReport[]): OutlookLine[] {
  if (!scene.isOpen) return [];
  const own = comparableBatches(scene.batch.equipment, others);
  return [...brewDayLines(scene), ...gravityLines(scene, own), ...hopLines(scene, own), ...sugarLines(scene)];
}

function gristKg(scene: Scene): number | undefined {
  const mash = scene.batch.grist?.filter((line) => line.into === "mash");
  if (mash === undefined || mash.length === 0 || mash.some((line) => line.amount === undefined)) return undefined;
  return mash.reduce((sum, line) => sum + (line.amount?.value ?? 0) / 1000, 0);
}

function brewDayLines(scene: Scene): OutlookLine[] {
  if (scene.batch.fermenter !== undefined) return [];
  return [strikeLine(scene), ...waterLines(scene)].filter((line) => line !== undefined);
}

function strikeLine(scene: Scene): OutlookLine | undefined {
  const rest = scene.batch.mash?.rests?.[0]?.temperature?.value;
  const water = scene.batch.mash?.water?.value;
  const grain = gristKg(scene);
  if (rest === undefined || water === undefined || grain === undefined) return undefined;
  if (strikeTemperature.refuses(water / grain, GRAIN_C, rest) !== undefined) return undefined;
  return {
    id: "strike-temperature", what: "Strike water at", value: strikeTemperature(water / grain, GRAIN_C, rest), unit: "C", basis: "recipe",
    method: strikeTemperature.about.id,
    says: `For ${water.toFixed(1)} L on ${grain.toFixed(2)} kg of grain taken to be at ${GRAIN_C} °C, in a warmed vessel.`,
    caution: CAUTION.scald,
  };
}

function waterLines(scene: Scene): OutlookLine[] {
  const volume = scene.batch.plan?.fermenter?.value;
  const rate = scene.equipment?.boilOff?.value;
  const hours = scene.batch.boil?.for?.value;
  const grain = gristKg(scene);
  if (volume === undefined || rate === undefined || hours === undefined || grain === undefined) return [];
  if (volumeBeforeBoil.refuses(volume, rate, hours) !== undefined) return [];
  const before = volumeBeforeBoil(volume, rate, hours);
  const { lowLPerKg, highLPerKg, source } = grainAbsorption;
  if (waterNeeded.refuses(before, grain, highLPerKg) !== undefined) return [];
  return [
    {
      id: "before-boil", what: "Wort before the boil", value: before, unit: "L", basis: "recipe", method: volumeBeforeBoil.about.id,
      says: "The planned volume in the fermenter and what the boil takes at this equipment's rate, at 20 °C. What stays behind in the kettle comes on top.",
    },
    {
      id: "water", what: "Water in all", low: waterNeeded(before, grain, lowLPerKg), high: waterNeeded(before, grain, highLPerKg), unit: "L", basis: "common practice", method: waterNeeded.about.id,
      says: `Mash and sparge together, for what the grain keeps by ${source}.`,
    },
  ];
}

/** What the grist gives at this brewery's own efficiency, or what efficiency the plan asks for. */
function gravityLines(scene: Scene, own: readonly BatchReport[]): OutlookLine[] {
  if (scene.batch.fermenter !== undefined) return [];
  const potential = scene.figure("potential-extract");
  const volume = scene.batch.plan?.fermenter?.value;
  if (isMissing(potential) || volume === undefined) return [];
  const usual = ownMean("brewhouse-efficiency", own);
  if (usual !== undefined) {
    const [value, low, high] = [usual.mean, usual.low, usual.high].map((percent) => gravityOf(potential.value * percent / 100, volume));
    if (value === undefined || low === undefined || high === undefined) return [];
    return [{
      id: "grist-gravity", what: "Gravity the grist gives", value, low, high, unit: "SG",
      basis: "this brewery", batches: usual.batches, method: gravityFromExtract.about.id,
      says: `At this brewery's own brewhouse efficiency, ${usual.mean.toFixed(0)} % on average over ${usual.batches} batches; another batch would fall in the range nineteen times in twenty.`,
    }];
  }
  const planned = scene.batch.plan?.originalGravity;
  if (planned?.unit !== "SG" || extractMass.refuses(planned.value, volume) !== undefined) return [];
  const extract = extractMass(planned.value, volume);
  if (extract === 0 || efficiency.refuses(extract, potential.value) !== undefined) return [];
  return [{
    id: "efficiency-needed", what: "Brewhouse efficiency the plan asks for", value: efficiency(extract, potential.value), unit: "%",
    basis: "recipe", method: efficiency.about.id,
    says: "From the planned gravity and volume over the grist's potential. Fewer than five batches on this equipment are recorded, so its own efficiency isn't known.",
  }];
}

/** Undefined where so much extract in so little wort isn't a wort. */
function gravityOf(extractKg: number, volumeL: number): number | undefined {
  return gravityFromExtract.refuses(extractKg, volumeL) === undefined ? gravityFromExtract(extractKg, volumeL) : undefined;
}

const FORMS = ["pellet", "cone", "concentrate"] as const;

/** Beer the planned hops will keep, and what that leaves for the package. */
function hopLines(scene: Scene, own: readonly BatchReport[]): OutlookLine[] {
  const dose = scene.batch.plan?.dryHop?.value;
  const volume = scene.batch.plan?.fermenter?.value;
  if (dose === undefined || volume === undefined || scene.transferMoment !== undefined) return [];
  const massKg = dose * volume / 1000;
  const form = FORMS.find((each) => scene.batch.dryHops?.[0]?.form === each) ?? "pellet";
  const { lowLPerKg, highLPerKg, source } = dryHopLoss(form, scene.batch.dryHops?.[0]?.held === "bag" ? "bag" : "loose");
  const [low, high] = [lowLPerKg * massKg, highLPerKg * massKg];
  const lines: OutlookLine[] = [
    { id: "hop-loss", what: "Beer the hops keep", low, high, unit: "L", basis: "common practice", says: `${(1000 * massKg).toFixed(0)} g of ${form}s at ${lowLPerKg} to ${highLPerKg} L/kg: ${source}.` },
  ];
  const mine = ownHopLoss(form, own);
  if (mine === undefined) {
    return [...lines, {
      id: "package-expected", what: "Into the package, at most", low: Math.max(0, volume - high), high: Math.max(0, volume - low), unit: "L", basis: "common practice",
      says: "The planned volume less what the hops keep; sediment, samples and the vessel's dregs come off too. Fewer than five comparable batches, at three doses or more, are recorded, so this brewery's own loss isn't known.",
    }];
  }
  const loss = expectedLoss(mine, massKg);
  return [
    ...lines,
    {
      id: "hop-loss-own", what: "Lost to the mass of hops here", value: mine.fit.slope, low: mine.lowLPerKg, high: mine.highLPerKg, unit: "L/kg", basis: "this brewery", batches: mine.batches,
      says: `How total loss rose with the mass of hops over ${mine.batches} batches with ${form}s on this equipment; the range holds the true rise nineteen times in twenty.${mine.lowLPerKg > 0 ? "" : " It reaches down to nothing, so these batches alone don't show what hops cost."}`,
    },
    {
      id: "package-expected", what: "Into the package", value: Math.max(0, volume - loss.value), low: Math.max(0, volume - loss.high), high: Math.max(0, volume - loss.low), unit: "L", basis: "this brewery", batches: mine.batches,
      says: "The planned volume less the total loss this brewery's batches show at this hop mass; another batch would fall in the range nineteen times in twenty.",
    },
  ];
}

import { primingSugar, primingSugars, residualCo2 } from "../science/index.js";
import { gravityStanding } from "./figures/package.js";
import { isMissing } from "./known.js";
import type { Scene } from "./scene.js";
import type { OutlookLine } from "./types.js";

/** What ale is warmed to at the end of its fermentation, common practice: it sets how much gas stays dissolved. */
const COOL_C = 16;
const WARM_C = 22;

/**
 * Sugar for the planned carbonation, should the beer go into bottles: a range while it is only
 * planned; one figure once its gravity stands still; and in between none, with the reason.
 */
export function sugarLines(scene: Scene): OutlookLine[] {
  const carbonation = scene.batch.plan?.carbonation;
  const volume = scene.batch.plan?.package;
  if (carbonation === undefined || volume === undefined || scene.packages.length > 0) return [];
  const gramsAt = (residualVol: number): number | undefined => {
    const inputs = [volume.value, carbonation.value, residualVol, primingSugars.sucrose] as const;
    return primingSugar.refuses(...inputs) === undefined ? primingSugar(...inputs) : undefined;
  };
  return scene.status === "planned" ? plannedSugar(scene, gramsAt) : openSugar(scene, gramsAt);
}

type GramsAt = (residualVol: number) => number | undefined;

const SUGAR = { id: "priming-sugar", what: "Table sugar, should it go into bottles", unit: "g", method: primingSugar.about.id } as const;

function plannedSugar(scene: Scene, gramsAt: GramsAt): OutlookLine[] {
  const air = scene.atmosphericPressure;
  if (isMissing(air)) return [];
  const [low, high] = [COOL_C, WARM_C].map((warmestC) => gramsAt(residualCo2(warmestC, 0, air.value)));
  if (low === undefined || high === undefined) return [];
  return [{
    ...SUGAR, low, high, basis: "recipe",
    says: `For the planned carbonation and volume, with the beer ${COOL_C} to ${WARM_C} °C at its warmest once fermented. To buy by, not to weigh by: the figure comes from the readings, once gravity stands still.`,
  }];
}

function openSugar(scene: Scene, gramsAt: GramsAt): OutlookLine[] {
  const why = whyNotYet(scene);
  const residual = scene.figure("residual-co2");
  if (why !== undefined) return [{ ...SUGAR, basis: "recipe", says: `No sugar is worked out yet, or bottles could burst: ${why}.` }];
  const value = isMissing(residual) ? undefined : gramsAt(residual.value);
  if (value === undefined) return [];
  return [{ ...SUGAR, value, basis: "recipe", says: "For the planned carbonation and volume, less the gas that the readings say is still dissolved. Weigh it by what really goes into the bottles." }];
}

function whyNotYet(scene: Scene): string | undefined {
  if (scene.firstDryHop === undefined && (scene.batch.plan?.dryHop?.value ?? 0) > 0) return "the hops are still to come, and can set fermentation going again";
  const { state, why } = gravityStanding(scene);
  return state === "still" ? undefined : why;
}

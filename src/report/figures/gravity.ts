import { gravityDrop, platoFromGravity } from "../../science/index.js";
import type { GravityPoint } from "../gravity-points.js";
import { apply, isMissing, missing, withNote, type Result } from "../known.js";
import { latestHour } from "../moments.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** Gravities and extracts, all at 20/20 °C. */
export const gravityFigures = [
  figure("original-gravity", "SG", "Original gravity", "Specific gravity 20/20 of the wort in the fermenter", originalGravity),
  figure("final-gravity", "SG", "Final gravity", "Specific gravity 20/20 at the last reading before packaging", finalGravity),
  figure("latest-gravity", "SG", "Latest gravity", "Specific gravity 20/20 at the most recent reading of a batch that isn't packaged", latestGravity),
  figure("original-extract", "P", "Original extract", "Extract of the wort, % by weight",
    (scene) => apply(platoFromGravity, scene.figure("original-gravity"))),
  figure("apparent-extract", "P", "Apparent extract", "Extract that the final gravity reads as, alcohol ignored, % by weight",
    (scene) => apply(platoFromGravity, scene.figure("final-gravity"))),
];

function originalGravity(scene: Scene): Result {
  const { fermenter, boil } = scene.batch;
  if (fermenter?.gravity !== undefined) return withNote(scene.gravity("fermenter.gravity", fermenter.gravity), additionNote(scene));
  if (boil?.after?.gravity === undefined) return missing("fermenter.gravity isn't recorded");
  const afterBoil = scene.gravity("boil.after.gravity", boil.after.gravity);
  return withNote(withNote(afterBoil, "Taken after the boil: the fermenter's own gravity isn't recorded."), additionNote(scene));
}

/** Sugar added in the fermenter ferments too, and isn't in the wort's gravity. */
function additionNote(scene: Scene): string | undefined {
  const sugars = (scene.batch.additions ?? []).filter((addition) => addition.extract !== undefined);
  if (sugars.length === 0) return undefined;
  return `Later additions (${sugars.map((addition) => [addition.amount?.text, addition.what ?? "sugar"].filter(Boolean).join(" ")).join(", ")}) are not in it: alcohol and attenuation are a little higher than computed.`;
}

/** The last reading that is the finished beer's own; undefined where there is none, or none yet. */
export function finalPoint(scene: Scene): GravityPoint | undefined {
  const end = endOfBatch(scene);
  return end === undefined ? undefined : scene.lastGravityBefore(end);
}

function finalGravity(scene: Scene): Result {
  if (endOfBatch(scene) === undefined) return missing(`the batch isn't packaged or transferred yet${scene.lastGravityBefore(Number.POSITIVE_INFINITY) === undefined ? "" : "; its latest gravity is given instead"}`);
  const last = finalPoint(scene);
  return last === undefined ? missing("fermentation.readings holds no gravity between pitching and packaging") : last.gravity;
}

/** The hour after which no reading is the beer's own: packaging, else the transfer; a finished batch without either has none. */
function endOfBatch(scene: Scene): number | undefined {
  const ended = scene.packagedMoment ?? scene.transferMoment;
  if (ended === undefined) return scene.isOpen ? undefined : Number.POSITIVE_INFINITY;
  return latestHour(ended);
}

function latestGravity(scene: Scene): Result {
  if (endOfBatch(scene) !== undefined) return missing("the batch is finished: see the final gravity");
  const last = scene.lastGravityBefore(Number.POSITIVE_INFINITY);
  return last === undefined ? missing("fermentation.readings holds no gravity after pitching") : withNote(last.gravity, `Read ${last.at}.`);
}

/** How far a gravity fell between two readings; missing when either is. */
export function fallBetween(before: Result, after: Result): Result {
  return isMissing(before) ? before : apply(gravityDrop, before, after);
}

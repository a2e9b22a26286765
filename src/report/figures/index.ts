import { asFigure, isMissing, type Result } from "../known.js";
import type { Scene } from "../scene.js";
import { alcoholFigures } from "./alcohol.js";
import { brewhouseFigures } from "./brewhouse.js";
import { crashFigures } from "./crash.js";
import type { FigureDefinition } from "./definition.js";
import { dryHopFigures } from "./dry-hop.js";
import { fermentationFigures } from "./fermentation.js";
import { gravityFigures } from "./gravity.js";
import { lossFigures } from "./losses.js";
import { packageFigures } from "./package.js";

export type { FigureDefinition } from "./definition.js";

/** Every figure a batch can have, in the order it is told. */
export const FIGURES: readonly FigureDefinition[] = [
  ...gravityFigures,
  ...alcoholFigures,
  ...brewhouseFigures,
  ...fermentationFigures,
  ...dryHopFigures,
  ...crashFigures,
  ...lossFigures,
  ...packageFigures,
];

const BY_ID = new Map(FIGURES.map((definition) => [definition.id, definition]));

/** Looks a figure up. Throws RangeError for an id that isn't in the list: a bug, not a brewer's mistake. */
export function figureDefinition(id: string): FigureDefinition {
  const found = BY_ID.get(id);
  if (found === undefined) throw new RangeError(`no figure is called "${id}"`);
  return found;
}

/** Computes a figure of a batch in its own unit; what is computed from it carries its id on. */
export function computeFigure(id: string, scene: Scene): Result {
  const { unit, compute } = figureDefinition(id);
  const result = compute(scene);
  return isMissing(result) ? result : asFigure(id, result, unit);
}

import type { Result } from "../known.js";
import type { Scene } from "../scene.js";

/** A figure: what it is called, what it means, and how it comes from a batch's readings. */
export interface FigureDefinition {
  readonly id: string;
  readonly unit: string;
  readonly title: string;
  readonly meaning: string;
  /** From readings only; missing with the reading that would give it. */
  readonly compute: (scene: Scene) => Result;
}

/** Shortens a table of figures to a line each. */
export function figure(
  id: string, unit: string, title: string, meaning: string, compute: (scene: Scene) => Result,
): FigureDefinition {
  return { id, unit, title, meaning, compute };
}

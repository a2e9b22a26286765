import { figureDefinition, FIGURES } from "./figures/index.js";

/** What a figure is called and what it means: the view of the figures that charts and pages share. */
export interface FigureEntry {
  readonly id: string;
  readonly unit: string;
  readonly title: string;
  readonly meaning: string;
}

/** Every figure a batch can have, in the order it is told. */
export const FIGURE_TABLE: readonly FigureEntry[] = FIGURES.map(({ id, unit, title, meaning }) => ({ id, unit, title, meaning }));

/** Looks a figure up. Throws RangeError for an id that isn't in the table: a bug, not a brewer's mistake. */
export function figureEntry(id: string): FigureEntry {
  const { unit, title, meaning } = figureDefinition(id);
  return { id, unit, title, meaning };
}

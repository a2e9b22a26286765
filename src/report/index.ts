export * from "./types.js";
export { FIGURE_TABLE, figureEntry, type FigureEntry } from "./figure-table.js";

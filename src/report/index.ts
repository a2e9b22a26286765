export * from "./types.js";
export { FIGURE_TABLE, figureEntry, type FigureEntry } from "./figure-table.js";
export { buildLogReport, type LogReportOptions } from "./log-report.js";
export { buildPrivateReport, type PrivateTarget } from "./private-report.js";
export { COMPARED_FIGURES } from "./comparison-figures.js";
export { recipeColumn, type RecipeColumn } from "./comparison-recipe.js";
export { releaseProblems } from "./competition/release-problems.js";

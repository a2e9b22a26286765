import { figureRows } from "./comparison-figures.js";
import { recipeRows } from "./comparison-recipe.js";
import { counted, listed, uncapitalised } from "./season-words.js";
import type { BatchReport, ChangeRow, ComparisonReport } from "./types.js";

/** More than this many names in one sentence are counted instead of listed. */
const MOST_NAMED = 5;

/**
 * Two batches side by side: recipe, process, result. A figure has changed only where the difference
 * exceeds the combined 95 % half-width of both, √(a² + b²).
 *
 * @param before the batch it is compared with
 */
export function compareBatches(before: BatchReport, after: BatchReport): ComparisonReport {
  const recipe = recipeRows(before, after);
  const told = { with: before.batch, withSlug: before.slug, withTitle: before.title };
  if (after.status === "planned") return { ...told, rows: recipe, says: plannedSentence(before.batch, recipe) };
  const rows = [...recipe, ...figureRows(before, after, "process"), ...figureRows(before, after, "result")];
  return { ...told, rows, says: sentence(before.batch, rows) };
}

/** One sentence: what was changed on purpose, and what then moved beyond what the readings leave open. */
function sentence(batch: string, rows: readonly ChangeRow[]): string {
  const changed = (part: ChangeRow["part"]): string[] =>
    rows.filter((row) => row.part === part && row.change === "changed").map(({ what }) => uncapitalised(what));
  const [recipe, process, result] = [changed("recipe"), changed("process"), changed("result")];
  const purpose = recipe.length === 0 ? "nothing recorded in the recipe was changed" : `the recipe was changed in ${named(recipe, "parts")}`;
  const moved = [
    ...(process.length === 0 ? [] : [`${named(process, "figures")} moved in the process`]),
    ...(result.length === 0 ? [] : [`${named(result, "figures")} in the result`]),
  ];
  const beyond = "beyond what the readings leave open";
  if (moved.length === 0) return `Against ${batch}, ${purpose}; no figure moved ${beyond}.`;
  return `Against ${batch}, ${purpose}; ${beyond}, ${process.length === 0 ? `${named(result, "figures")} moved in the result` : listed(moved)}.`;
}

/** Of a batch that is only planned nothing can have moved yet. */
function plannedSentence(batch: string, recipe: readonly ChangeRow[]): string {
  const changed = recipe.filter((row) => row.change === "changed").map(({ what }) => uncapitalised(what));
  return changed.length === 0 ? `The recipe of ${batch} again, nothing changed.` : `The recipe of ${batch}, changed in ${named(changed, "parts")}.`;
}

function named(words: readonly string[], many: string): string {
  return words.length > MOST_NAMED ? counted(words.length, many, many) : listed(words);
}

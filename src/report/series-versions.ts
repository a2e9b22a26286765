import { changeOf, figureText, PROCESS, RESULT } from "./comparison-figures.js";
import { figureEntry } from "./figure-table.js";
import { quantityText } from "./season-quantities.js";
import { counted, listed, uncapitalised } from "./season-words.js";
import { recipeVersionRows } from "./series-recipe.js";
import type { BatchReport, SeriesVersions, VersionFigure, VersionRow } from "./types.js";

/** Figures worth a small chart where they moved, what a brewer asks for first. */
const CHARTED = [
  "dry-hop-dose", "dry-hop-temperature", "dry-hop-contact", "original-gravity", "apparent-attenuation", "abv", "bitterness",
  "transfer-efficiency", "loss-total", "dry-hop-gravity-drop", "brewhouse-efficiency", "crash-hours",
];
const MOST_CHARTS = 8;

/**
 * A beer over its versions: what each had of every ingredient, what was done and what came of it. A figure
 * has changed only where it differs from the version before by more than both readings leave open.
 *
 * @param versions in brew order
 */
export function seriesVersions(versions: readonly BatchReport[]): SeriesVersions {
  const rows = [...recipeVersionRows(versions), ...figureVersionRows(versions, "process"), ...figureVersionRows(versions, "result")];
  const moved = CHARTED.flatMap((id) => movedFigure(id, versions)).slice(0, MOST_CHARTS);
  return { rows, moved, says: versionsSay(versions, rows) };
}

function figureVersionRows(versions: readonly BatchReport[], part: "process" | "result"): VersionRow[] {
  return (part === "process" ? PROCESS : RESULT).flatMap((id): VersionRow[] => {
    const figures = versions.map((version) => version.figures[id]);
    if (figures.every((figure) => figure === undefined)) return [];
    const cells = figures.map((figure, index) => ({
      text: figure === undefined ? "–" : figureText(figure),
      // A version without the figure is passed over: the next is held against the last that had it.
      changed: figure !== undefined && changeOf(figures.slice(0, index).findLast((before) => before !== undefined), figure) === "changed",
    }));
    return [{ part, what: figureEntry(id).title, cells, changed: cells.some(({ changed }) => changed) }];
  });
}

function movedFigure(id: string, versions: readonly BatchReport[]): VersionFigure[] {
  const { title, unit } = figureEntry(id);
  const points = versions.flatMap(({ batch, figures }) => {
    const figure = figures[id];
    return figure === undefined ? [] : [{ batch, value: figure.value, ...(figure.plusMinus === undefined ? {} : { plusMinus: figure.plusMinus }) }];
  });
  const [first, last] = [points[0], points.at(-1)];
  const held = versions.flatMap((version) => version.figures[id] ?? []);
  const moved = held.some((figure, index) => index > 0 && changeOf(held[index - 1], figure) === "changed");
  if (!moved || first === undefined || last === undefined) return [];
  const text = (point: typeof first): string => `${quantityText(point.value, unit, point.plusMinus)} in ${point.batch}`;
  return [{ figure: id, title, unit, points, says: `${counted(points.length, "version", "versions")}, from ${text(first)} to ${text(last)}.` }];
}

/** Longer lists are counted. */
const MOST_NAMED = 6;

function versionsSay(versions: readonly BatchReport[], rows: readonly VersionRow[]): string {
  if (versions.length < 2) return "";
  const changed = (part: VersionRow["part"]): string[] => rows.filter((row) => row.part === part && row.changed).map(({ what }) => part === "recipe" ? what : uncapitalised(what));
  const told = (part: VersionRow["part"], kept: string): string => {
    const names = changed(part);
    return names.length === 0 ? kept : names.length > MOST_NAMED ? `${names.length} ${part === "recipe" ? "ingredients" : "figures"}` : listed(names);
  };
  return `Over ${versions.length} versions the recipe was changed in ${told("recipe", "nothing on record")}; beyond what the readings leave open there moved, in the process, ${told("process", "nothing")}, and in the result, ${told("result", "nothing")}.`;
}

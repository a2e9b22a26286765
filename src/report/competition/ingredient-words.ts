import { formatNumber } from "../../units/index.js";
import { listed } from "../season-words.js";
import type { BatchReport, RecipeLine } from "../types.js";

/** What the beer is made of, in factual sentences; amounts stay in the record. */
export function ingredientWords({ recipe, figures, planned }: BatchReport): string[] {
  const dose = figures["dry-hop-dose"] ?? planned["dry-hop-dose"];
  const rate = dose === undefined || dose.value === 0 ? "" : ` at ${formatNumber(dose.value, dose.unit).value} g/L`;
  return [
    said("Grist", recipe.grist.map(withShare)),
    said("Hops in the kettle", namesOf(recipe.kettleHops)),
    said(`Dry hops${rate}`, namesOf(recipe.dryHops)),
    said("Yeast", recipe.yeast === undefined ? [] : [recipe.yeast.what]),
    said("Also added", namesOf(recipe.additions)),
  ].filter((sentence) => sentence !== "");
}

function withShare({ what, share }: RecipeLine): string {
  return share === undefined ? what : `${what} ${share.toFixed(0)} %`;
}

function namesOf(lines: readonly RecipeLine[]): string[] {
  return [...new Set(lines.map(({ what }) => what))];
}

function said(what: string, names: readonly string[]): string {
  return names.length === 0 ? "" : `${what}: ${listed(names)}.`;
}

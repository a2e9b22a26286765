import { amountKey, isAdded, isChosen, withoutLot } from "./comparison-recipe.js";
import type { BatchReport, RecipeLine, VersionRow } from "./types.js";

/** A part of the recipe as lines that can be matched from one version to the next. */
interface RecipePart {
  readonly linesOf: (batch: BatchReport) => readonly RecipeLine[];
  /** How and when it goes in is part of what it is: a 60 min boil isn't a stand. */
  readonly keyed?: boolean;
}

const PARTS: readonly RecipePart[] = [
  { linesOf: ({ recipe }) => recipe.grist },
  { linesOf: ({ recipe }) => recipe.water.filter(isAdded).map((line) => ({ ...line, detail: "" })) },
  { linesOf: ({ recipe }) => recipe.mash.filter(isChosen), keyed: true },
  { linesOf: ({ recipe }) => recipe.kettleHops.map(withoutLot), keyed: true },
  { linesOf: ({ recipe }) => recipe.yeast === undefined ? [] : [{ what: "Yeast", amount: recipe.yeast.what, detail: "" }] },
  { linesOf: ({ recipe }) => recipe.additions },
  { linesOf: ({ dryHops }) => dryHops.map(({ hop, grams, form }) => ({ what: `${hop} (dry hop)`, amount: grams === undefined ? form : `${Number(grams.toPrecision(3))} g ${form}`, detail: "" })) },
];

/** Every ingredient of any version, and how much of it each had: none is a dash. */
export function recipeVersionRows(versions: readonly BatchReport[]): VersionRow[] {
  return PARTS.flatMap(({ linesOf, keyed = false }) => {
    const held = versions.map((version) => amountsOf(linesOf(version), keyed));
    const names = [...new Set(held.flatMap((amounts) => [...amounts.keys()]))];
    return names.map((what) => rowOf(what, held.map((amounts) => amounts.get(what) ?? "–")));
  });
}

function amountsOf(lines: readonly RecipeLine[], keyed: boolean): Map<string, string> {
  const amounts = new Map<string, string>();
  for (const { what, amount, detail } of lines) {
    const key = keyed && detail !== "" ? `${what}, ${detail}` : what;
    const held = amounts.get(key);
    amounts.set(key, held === undefined ? amount : `${held} + ${amount}`);
  }
  return amounts;
}

function rowOf(what: string, texts: readonly string[]): VersionRow {
  const cells = texts.map((text, index) => ({ text, changed: index > 0 && amountKey(text) !== amountKey(texts[index - 1] ?? "") }));
  return { part: "recipe", what, cells, changed: cells.some(({ changed }) => changed) };
}

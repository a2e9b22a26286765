import type { Batch } from "../records/index.js";
import { recipeDryHops, recipeKettleHops } from "./recipe-hops.js";
import { recipeLine } from "./recipe-line.js";
import { recipeMash, recipeWater } from "./recipe-water.js";
import type { RecipeLine, RecipeReport } from "./types.js";

/**
 * What the beer was made of, in the brewer's own units and order.
 *
 * Shares of the grist are by mass, and only given where every amount of it is recorded.
 */
export function recipeReport(batch: Batch): RecipeReport {
  const yeast = yeastLine(batch);
  return {
    grist: gristLines(batch),
    kettleHops: recipeKettleHops(batch),
    dryHops: recipeDryHops(batch),
    ...(yeast === undefined ? {} : { yeast }),
    water: recipeWater(batch),
    mash: recipeMash(batch),
    additions: additionLines(batch),
  };
}

function gristLines({ grist = [] }: Batch): RecipeLine[] {
  const masses = grist.map((line) => line.amount?.value);
  const total = masses.every((mass) => mass !== undefined) ? masses.reduce((sum, mass) => sum + mass, 0) : 0;
  return grist.map(({ malt, amount, extract, color, into }) => recipeLine(
    malt, amount?.text,
    [
      { mash: "in the mash", kettle: "in the kettle", fermenter: "in the fermenter" }[into],
      extract && `extract ${extract.text}`,
      color?.text,
    ],
    total > 0 && amount !== undefined ? 100 * amount.value / total : undefined,
  ));
}

function yeastLine({ yeast }: Batch): RecipeLine | undefined {
  if (yeast === undefined) return undefined;
  const { strain, form, amount, pitched, generation, from } = yeast;
  return recipeLine(strain, amount?.text, [
    form,
    pitched && `pitched ${pitched.text}`,
    generation === undefined ? undefined : `generation ${generation}`,
    from && `from ${from}`,
  ]);
}

function additionLines({ additions = [] }: Batch): RecipeLine[] {
  return additions.map(({ what, amount, volume, extract, at }) => recipeLine(what, amount?.text, [
    at?.text,
    extract && `extract ${extract.text}`,
    volume && `adds ${volume.text}`,
  ]));
}

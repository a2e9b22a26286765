import type { Batch } from "../records/index.js";
import { recipeLine } from "./recipe-line.js";
import type { RecipeLine } from "./types.js";

type KettleHop = NonNullable<Batch["hops"]>[number];
type DryHop = NonNullable<Batch["dryHops"]>[number];

/** Hops of the hot side: how long each boiled, or stood in hot wort. */
export function recipeKettleHops({ hops = [] }: Batch): RecipeLine[] {
  return hops.map((hop) => recipeLine(hop.hop, hop.amount?.text, [
    hop.boil && `${hop.boil.text} boil`,
    standText(hop),
    ...lotDetails(hop),
  ]));
}

/** Hops of the cold side: form, how they were held, when they went in and came out. */
export function recipeDryHops({ dryHops = [] }: Batch): RecipeLine[] {
  return dryHops.map((hop) => recipeLine(hop.hop, hop.amount?.text, [
    ...lotDetails(hop),
    hop.held && { loose: "loose", bag: "in a bag" }[hop.held],
    hop.into === "keg" ? "in the keg" : undefined,
    hop.added && `in ${hop.added.text}`,
    hop.removed && `out ${hop.removed.text}`,
  ]));
}

function standText({ stand, temperature }: KettleHop): string | undefined {
  if (stand === undefined) return temperature && `stand at ${temperature.text}, time not recorded`;
  return `${stand.text} stand${temperature === undefined ? "" : ` at ${temperature.text}`}`;
}

function lotDetails({ form, alpha, oil, crop, lot }: KettleHop | DryHop): (string | undefined)[] {
  return [
    form,
    alpha && `alpha ${alpha.text}`,
    oil && `oil ${oil.text}`,
    crop === undefined ? undefined : `crop ${crop}`,
    lot && `lot ${lot}`,
  ];
}

import type { Batch } from "../records/index.js";
import { recipeLine } from "./recipe-line.js";
import type { RecipeLine } from "./types.js";

/** Salts and acids that were added, then what the finished water holds. */
export function recipeWater({ water }: Batch): RecipeLine[] {
  const salts = water?.salts ?? [];
  const { calcium, magnesium, sodium, alkalinity, sulfate, chloride } = water?.ions ?? {};
  const ions = { calcium, magnesium, sodium, alkalinity, sulfate, chloride };
  return [
    ...salts.map(({ salt, amount }) => recipeLine(salt, amount?.text, ["added"])),
    ...Object.entries(ions).flatMap(([ion, held]) => held === undefined ? []
      : [recipeLine(ion, held.text, [ion === "alkalinity" ? "as calcium carbonate, in the brewing water" : "in the brewing water"])]),
  ];
}

/** Strike water, pH and the rests in order. */
export function recipeMash({ mash }: Batch): RecipeLine[] {
  const rests = mash?.rests ?? [];
  return [
    ...(mash?.water === undefined ? [] : [recipeLine("strike water", mash.water.text, [])]),
    ...(mash?.ph === undefined ? [] : [recipeLine("mash pH", `${mash.ph}`, ["at room temperature"])]),
    ...rests.map((rest, index) => recipeLine(rests.length === 1 ? "rest" : `rest ${index + 1}`, rest.temperature?.text, [
      rest.for === undefined ? "time not recorded" : `for ${rest.for.text}`,
    ])),
  ];
}

import type { RecipeLine } from "./types.js";

/** One line of a recipe: an amount that isn't recorded is said so, a detail that isn't is left out. */
export function recipeLine(what: string | undefined, amount: string | undefined, details: readonly (string | undefined)[], share?: number): RecipeLine {
  return {
    what: what ?? "not named",
    amount: amount ?? "not recorded",
    detail: details.filter((detail) => detail !== undefined).join(", "),
    ...(share === undefined ? {} : { share }),
  };
}

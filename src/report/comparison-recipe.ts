import { parseQuantity, type QuantityKind } from "../units/index.js";
import type { BatchReport, ChangeRow, RecipeLine } from "./types.js";

/** Kinds an amount in a recipe may be of. */
const AMOUNT_KINDS: readonly QuantityKind[] = ["mass", "volume", "temperature", "concentration"];
/** Amounts that agree to so many digits are the same: 3.88 oz is 110 g. */
const DIGITS = 3;

/** Recipe rows as text: ingredients with their amounts, in the brewer's own units. */
export function recipeRows(before: BatchReport, after: BatchReport): ChangeRow[] {
  return [
    listRow("Grist", before.recipe.grist, after.recipe.grist),
    listRow("Brewing water", before.recipe.water, after.recipe.water),
    listRow("Mash", before.recipe.mash, after.recipe.mash, { details: true }),
    listRow("Kettle hops", before.recipe.kettleHops, after.recipe.kettleHops, { details: true }),
    listRow("Yeast", listOf(before.recipe.yeast), listOf(after.recipe.yeast)),
    listRow("Later additions", before.recipe.additions, after.recipe.additions),
    dryHopRow(before, after),
  ].filter((row) => row !== undefined);
}

interface RowOptions {
  /** Whether how and when it went in is part of what it is: a 60 min boil isn't a stand. */
  readonly details?: boolean;
  /** Text for an empty list, where the record says there was none. */
  readonly none?: readonly [before: boolean, after: boolean];
}

function listRow(what: string, before: readonly RecipeLine[], after: readonly RecipeLine[], { details = false, none = [false, false] }: RowOptions = {}): ChangeRow | undefined {
  const known = [before.length > 0 || none[0], after.length > 0 || none[1]];
  if (!known.includes(true) || (before.length === 0 && after.length === 0)) return undefined;
  const same = sameLines(before, after, details);
  return {
    part: "recipe", what,
    before: textOf(before, details, none[0]),
    after: textOf(after, details, none[1]),
    change: known.includes(false) ? "unknown" : same ? "same" : "changed",
  };
}

/** A dose of 0 says that there was no dry hop; no dose at all says that it isn't recorded. */
function dryHopRow(before: BatchReport, after: BatchReport): ChangeRow | undefined {
  const lines = ({ dryHops }: BatchReport): RecipeLine[] =>
    dryHops.map(({ hop, form, grams, held, into }) => ({
      what: hop, amount: grams === undefined ? "not recorded" : `${Number(grams.toPrecision(DIGITS + 1))} g`,
      detail: [form, held === "bag" ? "in a bag" : held, into === "keg" ? "in the keg" : ""].filter((word) => word !== undefined && word !== "").join(", "),
    }));
  const none = ({ figures }: BatchReport): boolean => figures["dry-hop-mass"]?.value === 0;
  return listRow("Dry hops", lines(before), lines(after), { details: true, none: [none(before), none(after)] });
}

function textOf(lines: readonly RecipeLine[], details: boolean, none: boolean): string {
  if (lines.length === 0) return none ? "none" : "not recorded";
  return lines.map(({ what, amount, detail }) => `${what} ${amount}${details && detail !== "" ? ` (${detail})` : ""}`).join("; ");
}

/** Order plays no part, nor does the unit an amount was written in. */
function sameLines(before: readonly RecipeLine[], after: readonly RecipeLine[], details: boolean): boolean {
  const keys = (lines: readonly RecipeLine[]): string =>
    lines.map(({ what, amount, detail }) => [what.toLowerCase(), amountKey(amount), details ? detail : ""].join("\n")).sort().join("\n\n");
  return keys(before) === keys(after);
}

function amountKey(amount: string): string {
  for (const kind of AMOUNT_KINDS) {
    const parsed = parseQuantity(amount, kind);
    if (parsed.ok) return `${kind} ${parsed.quantity.value.toPrecision(DIGITS)}`;
  }
  return amount;
}

function listOf(line: RecipeLine | undefined): readonly RecipeLine[] {
  return line === undefined ? [] : [line];
}

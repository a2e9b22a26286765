import { parseQuantity, type QuantityKind } from "../units/index.js";
import type { BatchReport, ChangeRow, RecipeLine, RecipeReport } from "./types.js";

/** Kinds an amount in a recipe may be of. */
const AMOUNT_KINDS: readonly QuantityKind[] = ["mass", "volume", "temperature", "concentration"];
/** Amounts that agree to so many digits are the same: 3.88 oz is 110 g. */
const DIGITS = 3;

/** Recipe rows as text: ingredients with their amounts, in the brewer's own units. */
export function recipeRows(before: BatchReport, after: BatchReport): ChangeRow[] {
  const row = (what: string, lines: (recipe: RecipeReport) => readonly RecipeLine[], options?: RowOptions): ChangeRow | undefined =>
    listRow(what, lines(before.recipe), lines(after.recipe), options);
  return [
    row("Grist", ({ grist }) => grist),
    row("Salts added", ({ water }) => water.filter(isAdded)),
    row("Brewing water", ({ water }) => water.filter((line) => !isAdded(line))),
    row("Mash", ({ mash }) => mash.filter(isChosen), { details: true }),
    row("Kettle hops", ({ kettleHops }) => kettleHops.map(withoutLot), { details: true }),
    row("Yeast", (recipe) => recipe.yeast === undefined ? [] : [recipe.yeast]),
    row("Later additions", ({ additions }) => additions),
    dryHopRow(before, after),
  ].filter((found) => found !== undefined);
}

export function isAdded({ detail }: RecipeLine): boolean {
  return detail === "added";
}

/** A mash's pH is read, not chosen. */
export function isChosen({ what }: RecipeLine): boolean {
  return what !== "mash pH";
}

/** Another crop of the same hop is no change of recipe; what its alpha acids do shows in the bitterness. */
export function withoutLot(line: RecipeLine): RecipeLine {
  const kept = line.detail.split(", ").filter((part) => !/^(?:alpha|oil|crop|lot) /u.test(part));
  return { ...line, detail: kept.join(", ") };
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

/** Amounts that mean the same have the same key. */
export function amountKey(amount: string): string {
  for (const kind of AMOUNT_KINDS) {
    const parsed = parseQuantity(amount, kind);
    if (parsed.ok) return `${kind} ${parsed.quantity.value.toPrecision(DIGITS)}`;
  }
  return amount;
}

import { parseQuantity, type QuantityKind } from "../units/index.js";
import type { BatchReport, ChangeRow, RecipeLine } from "./types.js";

/** Kinds an amount in a recipe may be of. */
const AMOUNT_KINDS: readonly QuantityKind[] = ["mass", "volume", "temperature", "concentration"];
/** Amounts that agree to so many digits are the same: 3.88 oz is 110 g. */
const DIGITS = 3;

/** One part of a batch's recipe, as it is held against another's. */
export interface RecipeColumn {
  readonly what: string;
  readonly text: string;
  /** Equal keys: the same ingredients in the same amounts, in whatever order and unit. Absent where nothing is recorded. */
  readonly key?: string;
}

/** Recipe rows as text: ingredients with their amounts, in the brewer's own units. */
export function recipeRows(before: BatchReport, after: BatchReport): ChangeRow[] {
  const others = new Map(recipeColumn(after).map((column) => [column.what, column]));
  return recipeColumn(before).flatMap((one) => {
    const other = others.get(one.what);
    return other === undefined || (one.isEmpty && other.isEmpty) ? [] : [changeRow(one, other)];
  });
}

function changeRow(one: RecipeColumn, other: RecipeColumn): ChangeRow {
  const unknown = one.key === undefined || other.key === undefined;
  return { part: "recipe", what: one.what, before: one.text, after: other.text, change: unknown ? "unknown" : one.key === other.key ? "same" : "changed" };
}

/** One batch's recipe, part by part; `isEmpty` where no ingredient is listed, be it that none is recorded or that there was none. */
export function recipeColumn(batch: BatchReport): (RecipeColumn & { readonly isEmpty: boolean })[] {
  const { recipe } = batch;
  return [
    column("Grist", recipe.grist),
    column("Salts added", recipe.water.filter(isAdded)),
    column("Brewing water", recipe.water.filter((line) => !isAdded(line))),
    column("Mash", recipe.mash.filter(isChosen), { details: true }),
    column("Kettle hops", recipe.kettleHops.map(withoutLot), { details: true }),
    column("Yeast", recipe.yeast === undefined ? [] : [recipe.yeast]),
    column("Later additions", recipe.additions),
    dryHopColumn(batch),
  ];
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

interface ColumnOptions {
  /** Whether how and when it went in is part of what it is: a 60 min boil isn't a stand. */
  readonly details?: boolean;
  /** An empty list says that there was none. */
  readonly none?: boolean;
}

function column(what: string, lines: readonly RecipeLine[], { details = false, none = false }: ColumnOptions = {}): RecipeColumn & { readonly isEmpty: boolean } {
  const isEmpty = lines.length === 0;
  return { what, isEmpty, text: textOf(lines, details, none), ...(isEmpty && !none ? {} : { key: linesKey(lines, details) }) };
}

/** A dose of 0 says that there was no dry hop; no dose at all says that it isn't recorded. */
function dryHopColumn({ dryHops, figures }: BatchReport): RecipeColumn & { readonly isEmpty: boolean } {
  const lines = dryHops.map(({ hop, form, grams, held, into }) => ({
    what: hop, amount: grams === undefined ? "not recorded" : `${Number(grams.toPrecision(DIGITS + 1))} g`,
    detail: [form, held === "bag" ? "in a bag" : held, into === "keg" ? "in the keg" : ""].filter((word) => word !== undefined && word !== "").join(", "),
  }));
  return column("Dry hops", lines, { details: true, none: figures["dry-hop-mass"]?.value === 0 });
}

function textOf(lines: readonly RecipeLine[], details: boolean, none: boolean): string {
  if (lines.length === 0) return none ? "none" : "not recorded";
  return lines.map(({ what, amount, detail }) => `${what} ${amount}${details && detail !== "" ? ` (${detail})` : ""}`).join("; ");
}

/** Order plays no part, nor does the unit an amount was written in. */
function linesKey(lines: readonly RecipeLine[], details: boolean): string {
  return lines.map(({ what, amount, detail }) => [what.toLowerCase(), amountKey(amount), details ? detail : ""].join("\n")).sort().join("\n\n");
}

/** Amounts that mean the same have the same key. */
export function amountKey(amount: string): string {
  for (const kind of AMOUNT_KINDS) {
    const parsed = parseQuantity(amount, kind);
    if (parsed.ok) return `${kind} ${parsed.quantity.value.toPrecision(DIGITS)}`;
  }
  return amount;
}

import { parseQuantity, type Quantity, type QuantityKind } from "../../units/index.js";
import type { Hop, Malt, Sourced, Style } from "../log.js";
import type { QuantityRange } from "../schema/index.js";
import { HOP_ALIASES, HOP_TABLE } from "./hop-table.js";
import { MALT_SOURCE, MALT_TABLE } from "./malt-table.js";
import { STYLE_SOURCE, STYLE_TABLE } from "./style-table.js";

/** Styles, hops and malts that ship with the tool; a log's own files go before them, by name. */
export interface Defaults {
  readonly styles: ReadonlyMap<string, Style>;
  readonly hops: ReadonlyMap<string, Hop>;
  readonly malts: ReadonlyMap<string, Malt>;
}

let made: Defaults | undefined;

/** The tool's own defaults; made once. */
export function toolDefaults(): Defaults {
  made ??= { styles: new Map(rowsOf(STYLE_TABLE).map(styleOf)), hops: hops(), malts: new Map(rowsOf(MALT_TABLE).map(maltOf)) };
  return made;
}

function hops(): Map<string, Hop> {
  const known = new Map(rowsOf(HOP_TABLE).map(hopOf));
  for (const [alias, name] of Object.entries(HOP_ALIASES)) {
    const hop = known.get(name);
    if (hop !== undefined) known.set(alias, hop);
  }
  return known;
}

function styleOf([code = "", name = "", ...cells]: readonly string[]): [string, Style] {
  const range = <K extends QuantityKind>(at: number, kind: K, unit: string): QuantityRange<K> | undefined => rangeOf(cells[at], cells[at + 1], kind, unit);
  const [low, high] = [cells[6], cells[7]];
  const style = {
    code, source: STYLE_SOURCE, status: "published" as const,
    ...given("originalGravity", range(0, "gravity", "")),
    ...given("finalGravity", range(2, "gravity", "")),
    ...given("abv", range(4, "share", " %")),
    ...given("bitterness", low === undefined || high === undefined || low === "-" ? undefined : { low: Number(low), high: Number(high), text: `${low} to ${high}` }),
    ...given("color", range(8, "color", " SRM")),
  };
  return [name, style];
}

function hopOf([name = "", alpha = "-", oil = "-", status = "", source = "-"]: readonly string[]): [string, Hop] {
  const fromRange = [alpha, oil].some((text) => text.includes("..")) ? ", middle of its range" : "";
  return [name, {
    ...given("alpha", quantityOf(alpha, "share", " %")), ...given("oil", quantityOf(oil, "oil", " mL/100g")),
    source: source === "-" ? "from memory" : `${source}${fromRange}`, status: statusOf(status),
  }];
}

function maltOf([name = "", extract = "-", moisture = "-", color = "-", status = ""]: readonly string[]): [string, Malt] {
  return [name, {
    ...given("extract", quantityOf(extract, "share", " %")), ...given("moisture", quantityOf(moisture, "share", " %")),
    ...given("color", color === "0..0" ? quantityOf("0", "color", " EBC") : quantityOf(color, "color", " Lovibond")),
    source: status === "from memory" ? `${MALT_SOURCE}; in part from memory` : MALT_SOURCE, status: statusOf(status),
  }];
}

function quantityOf<K extends QuantityKind>(text: string, kind: K, unit: string): Quantity<K> | undefined {
  if (text === "-") return undefined;
  const [low = 0, high = low] = text.split("..").map(Number);
  const parsed = parseQuantity(`${Number(((low + high) / 2).toFixed(3))}${unit}`, kind);
  if (!parsed.ok) throw new RangeError(`the table of defaults holds ${text}${unit}: ${parsed.fault.reason}`);
  return parsed.quantity;
}

function rangeOf<K extends QuantityKind>(low: string | undefined, high: string | undefined, kind: K, unit: string): QuantityRange<K> | undefined {
  const [from, to] = [quantityOf(low ?? "-", kind, unit), quantityOf(high ?? "-", kind, unit)];
  return from === undefined || to === undefined ? undefined : { low: from, high: to, single: false, text: `${from.text} to ${to.text}` };
}

function given<Key extends string, Value>(key: Key, value: Value | undefined): { readonly [K in Key]?: Value } {
  return (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };
}

function statusOf(text: string): Sourced["status"] {
  return text === "published" || text === "common practice" ? text : "from memory";
}

function rowsOf(table: string): string[][] {
  return table.trim().split("\n").map((line) => line.split("|"));
}

import { isMap, isScalar, isSeq, LineCounter, type Node, type YAMLMap } from "yaml";

/** Where something stands within a record: names and list positions from the top. */
export type FieldPath = readonly PropertyKey[];

/** `["dry_hops", 0, "amount"]` → `dry_hops[0].amount` */
export function fieldName(path: FieldPath): string {
  return path.map((segment, index) => (typeof segment === "number" ? `[${segment}]` : `${index === 0 ? "" : "."}${String(segment)}`)).join("");
}

/** A value, and where its name stands. */
export interface FieldNode {
  readonly key: number | undefined;
  readonly value: Node | null;
}

/** One step from a node along a path; undefined where there is nothing. */
export function stepInto(node: Node | null, segment: PropertyKey): FieldNode | undefined {
  if (isSeq(node) && typeof segment === "number") {
    const value = node.items[segment] as Node | null | undefined;
    return value === undefined ? undefined : { key: value?.range?.[0], value };
  }
  return isMap(node) && typeof segment === "string" ? fieldIndex(node).get(segment) : undefined;
}

const indexes = new WeakMap<YAMLMap, ReadonlyMap<string, FieldNode>>();

/** A map's fields by name; made once, since a record full of mistakes is asked for each of them. */
function fieldIndex(map: YAMLMap): ReadonlyMap<string, FieldNode> {
  const known = indexes.get(map);
  if (known !== undefined) return known;
  const index = new Map<string, FieldNode>();
  for (const { key, value } of map.items) {
    if (!isScalar(key)) continue;
    const name = textOf(key.source ?? key.value);
    if (!index.has(name)) index.set(name, { key: key.range?.[0], value: value as Node | null });
  }
  indexes.set(map, index);
  return index;
}

/** The text of a scalar that names a field. */
export function textOf(value: unknown): string {
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" || typeof value === "bigint" ? String(value) : "";
}

/** Where the lines of a text begin. */
export function linesOf(text: string): LineCounter {
  const lines = new LineCounter();
  lines.addNewLine(0);
  for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) lines.addNewLine(at + 1);
  return lines;
}

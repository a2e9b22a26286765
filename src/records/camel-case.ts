import type { Quantity } from "../units/index.js";

/** `dry_hop_for` → `dryHopFor` */
export type CamelKey<Key> = Key extends `${infer Head}_${infer Tail}` ? `${Head}${Capitalize<CamelKey<Tail>>}` : Key;

/** A type with every key in camelCase, however deep, and read-only. */
export type CamelCased<T> =
  T extends Quantity ? T
    : T extends readonly (infer Item)[] ? readonly CamelCased<Item>[]
      : T extends object ? { readonly [Key in keyof T as CamelKey<Key>]: CamelCased<T[Key]> }
        : T;

/**
 * The one mapping from the keys of files to the keys of the program. Names that a record chooses
 * itself are values by the time it runs (see `named`), so it never changes one.
 */
export function camelCased<T>(value: T): CamelCased<T> {
  return mapped(value) as CamelCased<T>;
}

function mapped(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(mapped);
  if (typeof value !== "object" || value === null) return value;
  const result: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(value)) result[camelKey(key)] = mapped(inner);
  return result;
}

const known = new Map<string, string>();

/** The keys of schemas are few: each is turned once. */
function camelKey(key: string): string {
  const before = known.get(key);
  if (before !== undefined) return before;
  const camel = key.replaceAll(/_([a-z])/gu, (_, letter: string) => letter.toUpperCase());
  known.set(key, camel);
  return camel;
}

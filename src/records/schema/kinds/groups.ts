import { z } from "zod";
import { about, refuse, type FieldAbout } from "./about.js";

/** Named fields that belong together; no others are allowed. */
export function fields<Shape extends z.ZodRawShape>(says: string, shape: Shape) {
  return about(z.strictObject(shape), { says, expects: `fields: ${Object.keys(shape).join(", ")}`, example: exampleOf(shape) });
}

const FIELDS_SHOWN = 2;

/** The first fields with their own examples: `{set: 2 C, from: 2026-03-22 19:00}`. */
function exampleOf(shape: z.ZodRawShape): string {
  const shown = Object.entries(shape).slice(0, FIELDS_SHOWN).map(([name, field]) => `${name}: ${wordsOf(field)?.example ?? ""}`);
  return `{${shown.join(", ")}}`;
}

function wordsOf(schema: z.core.$ZodType): Partial<FieldAbout> | undefined {
  const own = z.globalRegistry.get(schema) as Partial<FieldAbout> | undefined;
  if (own?.example !== undefined) return own;
  return schema instanceof z.ZodExactOptional || schema instanceof z.ZodDefault ? wordsOf(schema.unwrap()) : own;
}

/** One entry a line; an empty list means there was none. */
export function list<Item extends z.ZodType>(says: string, item: Item) {
  return about(z.array(item), { says, expects: "a list", example: `[${wordsOf(item)?.example ?? ""}]` });
}

/** One, or a list of several; always a list once read. */
export function oneOrList<Item extends z.ZodType>(says: string, item: Item) {
  const schema = z.union([item, z.array(item)])
    .transform((value) => (Array.isArray(value) ? value : [value]) as z.output<Item>[]);
  return about(schema, { says, expects: "fields, or a list of them", example: wordsOf(item)?.example ?? "" });
}

/** Names of the record's own choosing, each with a value; a list of both once read, so that no name can get in the way. */
export function named<Name extends string, Value extends z.ZodType>(says: string, { name, value }: { name: Name; value: Value }) {
  type Entry = { readonly [K in Name]: string } & { readonly value: z.output<Value> };
  const schema = z.record(z.string(), value)
    .transform((entries) => Object.entries(entries).map(([key, entry]) => ({ [name]: key, value: entry }) as Entry));
  return about(schema, { says, expects: "names, each with its value", example: `{name: ${wordsOf(value)?.example ?? "value"}}` });
}

/** A sensible end to a count field's range where tasters are counted. */
export const MOST_TASTERS = 1000;

/** The name of a file beside the record. */
export function fileName(says: string, example: string) {
  const schema = z.string().transform((written, context) =>
    written.trim() === "" ? refuse(context, "record/nothing", { expects: "a file's name", example }) : written.trim());
  return about(schema, { says, expects: `the name of a file such as "${example}"`, example, holds: "text" });
}

import { z } from "zod";
import type { FieldAbout } from "./kinds/index.js";

type FieldWords = Partial<Omit<FieldAbout, "says">> & { readonly description?: string };

/** The schema that a value has to match, without what only says whether it may be missing. */
export function innermost(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodExactOptional || schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return innermost(schema.unwrap());
  return schema;
}

/** The schema of what is written, before it is turned into what the program uses. */
export function written(schema: z.core.$ZodType): z.core.$ZodType {
  const inner = innermost(schema);
  return inner instanceof z.ZodPipe ? written(inner.in) : inner;
}

/** What is known of a field: the nearest words on the way to its innermost schema. */
export function wordsOf(schema: z.core.$ZodType): FieldWords {
  const own = z.globalRegistry.get(schema) as FieldWords | undefined;
  if (own?.expects !== undefined) return own;
  if (schema instanceof z.ZodExactOptional || schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return { ...wordsOf(schema.unwrap()), ...own };
  return schema instanceof z.ZodPipe ? { ...wordsOf(schema.in), ...own } : own ?? {};
}

/** The fields that a schema's value may have, by name; none where it isn't made of fields. */
export function fieldsOf(schema: z.core.$ZodType): ReadonlyMap<string, z.core.$ZodType> {
  const inner = written(schema);
  if (inner instanceof z.ZodObject) return new Map(Object.entries(inner.shape));
  if (inner instanceof z.ZodUnion) {
    for (const option of inner.options) {
      const fields = fieldsOf(option);
      if (fields.size > 0) return fields;
    }
  }
  return new Map();
}

/** The schema of each entry of a list, or of each value of freely named fields; undefined for neither. */
export function itemOf(schema: z.core.$ZodType): z.core.$ZodType | undefined {
  const inner = written(schema);
  if (inner instanceof z.ZodArray) return inner.element;
  if (!(inner instanceof z.ZodUnion)) return namedItemOf(inner);
  return inner.options.map((option) => itemOf(option)).find((item) => item !== undefined);
}

/** The schema of each value whose name the record chooses itself, where there are such. */
export function namedItemOf(schema: z.core.$ZodType): z.core.$ZodType | undefined {
  const inner = written(schema);
  if (inner instanceof z.ZodRecord) return inner.valueType;
  if (inner instanceof z.ZodObject) return inner.def.catchall instanceof z.ZodNever ? undefined : inner.def.catchall;
  return inner instanceof z.ZodUnion ? inner.options.map((option) => namedItemOf(option)).find((item) => item !== undefined) : undefined;
}

/** The schema at a path of names and positions, or undefined where the path leaves the schema. */
export function schemaAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): z.core.$ZodType | undefined {
  let at: z.core.$ZodType | undefined = schema;
  for (const segment of path) {
    if (at === undefined) return undefined;
    at = typeof segment === "number" ? itemOf(at) ?? at : fieldsOf(at).get(String(segment)) ?? itemOf(at);
  }
  return at;
}

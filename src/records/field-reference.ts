import { z } from "zod";
import { batchSchema, clubSchema, competitionSchema, equipmentSchema, hopsSchema, maltsSchema, stylesSchema } from "./schema/index.js";
import type { FieldAbout } from "./schema/index.js";
import { fieldsOf, innermost, itemOf, namedItemOf, wordsOf, written } from "./schema/walk.js";

/** One field as the record help shows it. */
export interface RecordField {
  /** The file it is written in: `batch`, `club.yaml` … */
  readonly file: string;
  /** `dry_hops[].amount`; a name of the record's own choosing is in angle brackets. */
  readonly path: string;
  readonly meaning: string;
  readonly required: boolean;
  readonly unit?: string;
  readonly default?: string;
  readonly range?: string;
  readonly example?: string;
}

const FILES: readonly (readonly [string, z.ZodType])[] = [
  ["batch", batchSchema], ["club.yaml", clubSchema], ["equipment.yaml", equipmentSchema], ["styles.yaml", stylesSchema],
  ["hops.yaml", hopsSchema], ["malts.yaml", maltsSchema], ["competitions/…/index.md", competitionSchema],
];

/** Every field of every file, in the order they are written; made from the schemas alone. */
export function recordFields(): RecordField[] {
  return FILES.flatMap(([file, schema]) => below(schema, "").map((field) => ({ file, ...field })));
}

type Field = Omit<RecordField, "file">;

function below(schema: z.core.$ZodType, path: string): Field[] {
  if (isList(schema)) {
    const item = itemOf(schema);
    return item === undefined ? [] : below(item, `${path}[]`);
  }
  const fields = [...fieldsOf(schema)].flatMap(([name, field]) => described(field, inside(path, name)));
  const chosen = namedItemOf(schema);
  return chosen === undefined ? fields : [...fields, ...described(chosen, inside(path, "<name>"), false)];
}

const inside = (path: string, name: string): string => (path === "" ? name : `${path}.${name}`);

function described(schema: z.core.$ZodType, path: string, required = isRequired(schema)): Field[] {
  const { description = "", unit, default: absent, range, example } = wordsOf(schema);
  const field = {
    path: isList(schema) && itemIsPlain(schema) ? `${path}[]` : path, meaning: description, required,
    ...(unit === undefined ? {} : { unit }), ...(absent === undefined ? {} : { default: absent }),
    ...(range === undefined ? {} : { range }), ...(example === undefined || example === "" ? {} : { example }),
  };
  return [field, ...below(schema, path)];
}

function isList(schema: z.core.$ZodType): boolean {
  return written(schema) instanceof z.ZodArray;
}

function itemIsPlain(schema: z.core.$ZodType): boolean {
  const item = itemOf(schema);
  return item !== undefined && fieldsOf(item).size === 0;
}

function isRequired(schema: z.core.$ZodType): boolean {
  return innermost(schema) === schema;
}

/** JSON Schema of a batch record's front matter, for editors that check YAML while it is written. */
export function batchJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(batchSchema, { io: "input", override: ({ zodSchema, jsonSchema }) => { forEditor(zodSchema, jsonSchema); } });
  return { ...schema, title: "Batch record" };
}

/** What the reading of a field takes as text, an editor sees as a number where YAML reads one. */
function forEditor(schema: z.core.$ZodType, json: z.core.JSONSchema.BaseSchema): void {
  const { expects, example = "", holds, choices } = json as Partial<FieldAbout>;
  for (const key of ["expects", "example", "holds", "unit", "range", "choices"]) Reflect.deleteProperty(json, key);
  if (typeof json.default === "string" && json.type === "boolean") json.default = json.default === "true";
  if (expects === undefined || !(written(schema) instanceof z.ZodString)) return;
  const type = holds === "text or number" ? ["string", "number"] : holds === "number" ? "number" : "string";
  const examples = [holds === "number" ? Number(example) : example];
  Object.assign(json, { type }, choices === undefined ? { examples } : { enum: choices });
}

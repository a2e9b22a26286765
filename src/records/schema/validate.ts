import { z } from "zod";
import type { Problem } from "../../problems/index.js";
import { camelCased, type CamelCased } from "../camel-case.js";
import type { FieldPath } from "../text/yaml-places.js";
import type { YamlTree } from "../text/yaml-tree.js";
import { flattened, issueProblems } from "./issue-problems.js";

/** What a schema made of a file: the typed value, or as much of it as could be read, with what was wrong. */
export interface Validated<Schema extends z.ZodType> {
  /** Complete and typed; absent when there was a problem. */
  readonly value?: CamelCased<z.output<Schema>>;
  /** What could be read, problems left out: enough to look for problems between fields. */
  readonly partial: Partial<CamelCased<z.output<Schema>>>;
  /** As `partial`, with the names of the file. */
  readonly written: unknown;
  readonly problems: readonly Problem[];
}

const MOST_ROUNDS = 6;

/** Holds a file's plain data against its schema. */
export function validate<Schema extends z.ZodType>(schema: Schema, tree: YamlTree): Validated<Schema> {
  type Output = CamelCased<z.output<Schema>>;
  if (tree.data === undefined && tree.problems.length > 0) return { partial: {}, written: {}, problems: tree.problems };
  const data: unknown = tree.data ?? {};
  const parsed = schema.safeParse(data);
  if (parsed.success) {
    const value = camelCased(parsed.data);
    return { ...(tree.problems.length === 0 ? { value } : {}), partial: value, written: parsed.data, problems: tree.problems };
  }
  const problems = [...tree.problems, ...issueProblems(parsed.error.issues, schema, { ...tree, data })];
  const written = partlyParsed(schema, data, flattened(parsed.error.issues, { data }));
  return { partial: camelCased(written) as Partial<Output>, written, problems };
}

/** Parses again without what was wrong, so that what is right can still be checked further. */
function partlyParsed(schema: z.ZodType, data: unknown, issues: readonly z.core.$ZodIssue[]): unknown {
  const lenient = schema instanceof z.ZodObject ? schema.partial() : schema;
  const rest = structuredClone(data);
  let left = issues;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    for (const issue of left) dropWrong(rest, issue);
    const parsed = lenient.safeParse(rest);
    if (parsed.success) return parsed.data;
    left = flattened(parsed.error.issues, { data: rest });
  }
  return {};
}

function dropWrong(data: unknown, issue: z.core.$ZodIssue): void {
  const paths: FieldPath[] = issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...issue.path, key]) : [issue.path];
  for (const path of paths) drop(data, path);
}

/** Removes the field at a path; where it isn't there, or is an entry of a list but its last, the field around it. */
function drop(data: unknown, path: FieldPath): void {
  for (let depth = path.length; depth > 0; depth -= 1) {
    const holder = path.slice(0, depth - 1).reduce<unknown>((value, segment) => (typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[segment] : undefined), data);
    const last = path[depth - 1];
    if (Array.isArray(holder) && last === holder.length - 1) {
      holder.pop();
      return;
    }
    if (typeof holder !== "object" || holder === null || Array.isArray(holder) || last === undefined || !Object.hasOwn(holder, last)) continue;
    Reflect.deleteProperty(holder, last);
    return;
  }
}

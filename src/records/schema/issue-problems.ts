import type { z } from "zod";
import { nearestName, problemAt, type Problem } from "../../problems/index.js";
import type { FieldPath } from "../text/yaml-places.js";
import type { YamlTree } from "../text/yaml-tree.js";
import type { Refusal } from "./kinds/index.js";
import { fieldsOf, schemaAt, wordsOf } from "./walk.js";

type Issue = z.core.$ZodIssue;

/** What zod found wrong, as problems with their places. */
export function issueProblems(issues: readonly Issue[], schema: z.core.$ZodType, tree: YamlTree): Problem[] {
  const context = { schema, tree };
  return flattened(issues, tree).filter(({ path }) => !isRefused(path, tree)).flatMap((issue) => problemsOf(issue, context));
}

interface Context {
  readonly schema: z.core.$ZodType;
  readonly tree: YamlTree;
}

/** Issues without unions: of each, those of the way of writing that was meant. */
export function flattened(issues: readonly Issue[], tree: Pick<YamlTree, "data">): Issue[] {
  return issues.flatMap((issue) => {
    if (issue.code !== "invalid_union") return [issue];
    const meant = issue.errors.find((option) => !option.some((inner) => inner.path.length === 0 && inner.code === "invalid_type"));
    if (meant === undefined) return [issue];
    return flattened(meant.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })), tree);
  });
}

function isRefused(path: FieldPath, tree: YamlTree): boolean {
  return tree.refused.some((refused) => refused.every((segment, index) => path[index] === segment));
}

function problemsOf(issue: Issue, context: Context): Problem[] {
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownField(key, issue.path, context));
  if (issue.code === "custom" && issue.params !== undefined && "problem" in issue.params) {
    const { problem, given } = issue.params as unknown as Refusal;
    return [problemAt(problem, context.tree.placeOf(issue.path), given)];
  }
  return [wrongForm(issue, context)];
}

function unknownField(key: string, path: FieldPath, { schema, tree }: Context): Problem {
  const at = schemaAt(schema, path);
  const known = at === undefined ? [] : [...fieldsOf(at).keys()];
  return problemAt("record/field-unknown", tree.placeOfKey([...path, key]), { nearest: nearestName(key, known), known: known.join(", ") });
}

function wrongForm(issue: Issue, { schema, tree }: Context): Problem {
  const at = schemaAt(schema, issue.path);
  const { expects = "another value", example = "" } = at === undefined ? {} : wordsOf(at);
  const place = tree.placeOf(issue.path);
  const value = valueAt(tree.data, issue.path);
  if (value === undefined) return problemAt("record/field-missing", place, { expects, example, field: String(issue.path.at(-1) ?? "") });
  if (value === null) return problemAt("record/nothing", place, { expects, example });
  if (issue.code === "invalid_type" && issue.expected === "boolean") return problemAt("record/yes-no", place, {});
  if (issue.code === "invalid_type" && issue.expected === "array") return problemAt("record/list", place, { expects, example });
  if (issue.code === "invalid_type" && issue.expected === "string") {
    return typeof value === "object" ? problemAt("record/one-value", place, { expects, example })
      : problemAt("record/text", place, { expects, quoted: typeof value === "boolean" ? `"${String(value)}"` : undefined });
  }
  return problemAt("record/fields", place, { expects, known: at === undefined ? "" : [...fieldsOf(at).keys()].join(", ") });
}

/** The plain value at a path; undefined where there is none. */
export function valueAt(data: unknown, path: FieldPath): unknown {
  let value = data;
  for (const segment of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, segment)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[segment];
  }
  return value;
}

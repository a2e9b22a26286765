import { z } from "zod";
import type { Given, ProblemCode } from "../../../problems/index.js";

/** What is known of a field: feeds messages, the field reference and the schema for editors. */
export interface FieldAbout {
  /** What it means, in one plain sentence. */
  readonly says: string;
  /** The noun phrase after "expected": `a mass such as "70 g"`. */
  readonly expects: string;
  /** A value as it would be written. */
  readonly example: string;
  /** The units a record may write. */
  readonly unit?: string;
  readonly default?: string;
  readonly range?: string;
  /** The words a field takes, where it takes a few. */
  readonly choices?: readonly string[];
  /** How the JSON Schema for editors checks the text, where it can. */
  readonly pattern?: string;
  /** What YAML holds: text, or a bare number. */
  readonly holds?: "text" | "number" | "text or number";
}

/** What a kind of field lets its user say. */
export interface FieldWords {
  readonly example?: string;
  readonly default?: string;
}

/** Joins a schema with what is known of the field. */
export function about<Schema extends z.ZodType>(schema: Schema, words: FieldAbout): Schema {
  const { says, ...rest } = words;
  return schema.meta({ description: says, ...rest });
}

/** The problem a field's own reading found, carried through zod to where its place is known. */
export interface Refusal<Code extends ProblemCode = ProblemCode> {
  readonly problem: Code;
  readonly given: Given<Code>;
}

/** Reports a problem from within a field's transform. */
export function refuse<Code extends ProblemCode>(context: z.RefinementCtx, problem: Code, given: Given<Code>): never {
  const params: Refusal<Code> = { problem, given };
  context.addIssue({ code: "custom", message: problem, params: { ...params } });
  return z.NEVER;
}

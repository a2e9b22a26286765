import { type MethodAbout, type MethodCheck } from "./method-about.js";
import { type Described } from "./method.js";

/** A relation that takes or returns more than single numbers: a series, a list, a colour. */
export interface Relation<Arguments extends readonly unknown[], Result> extends Described {
  (...args: Arguments): Result;
  /** Why these arguments can't be used, or undefined when they can. */
  readonly refuses: (...args: Arguments) => string | undefined;
}

/** How a relation's arguments are judged, and how a check's flat list of numbers becomes arguments. */
export interface RelationRules<Arguments extends readonly unknown[]> {
  readonly refuses: (...args: Arguments) => string | undefined;
  readonly read: (given: readonly number[]) => Arguments;
}

/**
 * Joins a relation on series, lists or colours with its descriptor, as `defineMethod` does for single numbers.
 * The result throws `RangeError` with the refusal's sentence; a part that isn't finite throws too.
 */
export function defineRelation<const Arguments extends readonly unknown[], Result>(
  about: MethodAbout,
  relation: (...args: Arguments) => Result,
  { refuses, read }: RelationRules<Arguments>,
): Relation<Arguments, Result> {
  const guarded = (...args: Arguments): Result => {
    const refusal = refuses(...args);
    if (refusal !== undefined) throw new RangeError(`${about.id}: ${refusal}`);
    const result = relation(...args);
    if (!partsOf(result).every((part) => Number.isFinite(part))) throw new RangeError(`${about.id}: no finite result`);
    return result;
  };
  const evaluate = (check: MethodCheck): number => partNamed(about.id, guarded(...read(check.given)), check.part);
  return Object.assign(guarded, { about, refuses, evaluate });
}

function partsOf(result: unknown): unknown[] {
  return typeof result === "object" && result !== null ? Object.values(result) : [result];
}

function partNamed(id: string, result: unknown, part: string | undefined): number {
  const found = part === undefined || typeof result !== "object" || result === null ? result : new Map<string, unknown>(Object.entries(result)).get(part);
  if (typeof found !== "number") throw new RangeError(`${id}: the result has no part "${part ?? ""}"`);
  return found;
}

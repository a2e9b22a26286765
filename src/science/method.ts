import { outsideDomain } from "./domain.js";
import { type MethodAbout, type MethodCheck } from "./method-about.js";

/** Any relation with a descriptor, whatever it takes and returns. */
export interface Described {
  readonly about: MethodAbout;
  /** Computes what one of `about.checks` is about, for comparison with its `gives`. */
  readonly evaluate: (check: MethodCheck) => number;
}

/**
 * A relation: call it with its inputs in the order of `about.inputs`, each in the unit named there.
 * Throws `RangeError` when an input is outside its domain; never returns NaN or an infinity.
 */
export interface Method<Inputs extends readonly number[] = readonly number[]> extends Described {
  (...inputs: Inputs): number;
  /** Why these inputs can't be used, or undefined when they can; ask before calling with readings. */
  readonly refuses: (...inputs: Inputs) => string | undefined;
}

/** What a relation needs beyond its descriptor when its inputs bound each other. */
export type CrossRule<Inputs extends readonly number[]> = (...inputs: Inputs) => string | undefined;

/**
 * Joins a relation with its descriptor.
 *
 * @param about the descriptor; `about.inputs` in the order of the function's parameters
 * @param relation the function; may assume that its inputs are within their domain
 * @param crossRule optional: a sentence when inputs that are each fine don't go together
 */
export function defineMethod<const Inputs extends readonly number[]>(
  about: MethodAbout,
  relation: (...inputs: Inputs) => number,
  crossRule?: CrossRule<Inputs>,
): Method<Inputs> {
  const refuses = (...inputs: Inputs): string | undefined =>
    outsideDomain(about.inputs, inputs) ?? crossRule?.(...inputs);
  const guarded = (...inputs: Inputs): number => {
    const refusal = refuses(...inputs);
    if (refusal !== undefined) throw new RangeError(`${about.id}: ${refusal}`);
    const result = relation(...inputs);
    if (!Number.isFinite(result)) throw new RangeError(`${about.id}: no finite result for ${inputs.join(", ")}`);
    return result;
  };
  // The domain check above refuses a list that is too short, so the shape is known by then.
  const evaluate = (check: MethodCheck): number => guarded(...(check.given as unknown as Inputs));
  return Object.assign(guarded, { about, refuses, evaluate });
}

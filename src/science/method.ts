/** Where a relation comes from, and how far that has been seen. */
export type SourceStatus = "published" | "common practice" | "from memory";

/** One input of a relation. `low` and `high` bound its domain: outside them the relation throws. */
export interface MethodInput {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

/** A value from outside the project that the relation must reproduce; the tests run every one. */
export interface MethodCheck {
  readonly given: readonly number[];
  readonly gives: number;
  readonly within: number;
  /** Author, title, edition or DOI, page; or "from memory" or "common practice", said as such. */
  readonly source: string;
}

/** What is known of a relation: feeds the methods pages, the working on batch pages and the figures table. */
export interface MethodAbout {
  /** kebab-case, permanent: it is in page addresses and exported data. */
  readonly id: string;
  readonly title: string;
  /** One or two plain sentences for a brewer: what it gives and which variant it is. */
  readonly says: string;
  readonly inputs: readonly MethodInput[];
  readonly output: { readonly symbol: string; readonly unit: string };
  /** The relation in plain text, with the symbols above. */
  readonly formula: string;
  /** Where it holds, in words. */
  readonly range: string;
  readonly source: string;
  readonly status: SourceStatus;
  /** Half-width at 95 % of what the relation itself is worth, in the output's unit or as a share of the value, where published. */
  readonly model?: {
    readonly limit: number;
    readonly as: "absolute" | "share";
    readonly source: string;
  };
  readonly checks: readonly MethodCheck[];
}

/**
 * A relation: call it with its inputs in the order of `about.inputs`, each in the unit named there.
 * Throws `RangeError` when an input is outside its domain; never returns NaN or an infinity.
 */
export interface Method<Inputs extends readonly number[] = readonly number[]> {
  (...inputs: Inputs): number;
  readonly about: MethodAbout;
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
    outsideDomain(about, inputs) ?? crossRule?.(...inputs);
  const guarded = (...inputs: Inputs): number => {
    const refusal = refuses(...inputs);
    if (refusal !== undefined) throw new RangeError(`${about.id}: ${refusal}`);
    const result = relation(...inputs);
    if (!Number.isFinite(result)) throw new RangeError(`${about.id}: no finite result for ${inputs.join(", ")}`);
    return result;
  };
  return Object.assign(guarded, { about, refuses });
}

function outsideDomain(about: MethodAbout, inputs: readonly number[]): string | undefined {
  for (const [index, input] of about.inputs.entries()) {
    const value = inputs[index];
    if (value === undefined || !(value >= input.low && value <= input.high)) {
      return `${input.meaning} must be between ${input.low} and ${input.high} ${input.unit}, got ${value}`;
    }
  }
  return undefined;
}

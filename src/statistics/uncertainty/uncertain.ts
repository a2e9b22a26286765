/**
 * A value together with what its uncertainty rests on.
 *
 * Source of the idea: JCGM 100:2008 (GUM), 5.1 and 5.2: the combined uncertainty is built from
 * sensitivity × standard uncertainty of each input; keeping those products apart, input by input,
 * keeps every correlation that comes from a shared input. Published.
 */

/** First-order contributions, one per base reading: sensitivity × standard uncertainty, in the value's unit; signed. */
export type Contributions = Readonly<Record<string, number>>;

/** Plain data: it may be written to JSON and read back. */
export interface Uncertain {
  readonly value: number;
  readonly contributions: Contributions;
}

/** A value taken as exactly known: it adds nothing to any uncertainty. */
export function exact(value: number): Uncertain {
  if (!Number.isFinite(value)) throw new RangeError(`exact requires a finite value, got ${value}`);
  return { value, contributions: {} };
}

/**
 * A base reading. Two readings with the same id are the same reading: their errors are one error.
 *
 * @param id names the reading, not the quantity: a probe's column has one id for its shared error
 * @param standardUncertainty one standard deviation, in the value's unit, 0 or more
 */
export function reading(id: string, value: number, standardUncertainty: number): Uncertain {
  if (id === "") throw new RangeError("reading requires an id");
  if (!Number.isFinite(value)) throw new RangeError(`reading ${id} requires a finite value, got ${value}`);
  if (!(standardUncertainty >= 0 && Number.isFinite(standardUncertainty))) {
    throw new RangeError(`reading ${id} requires a standard uncertainty of 0 or more, got ${standardUncertainty}`);
  }
  return { value, contributions: { [id]: standardUncertainty } };
}

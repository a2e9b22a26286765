import { expandedUncertainty, exact, propagate, reading, rectangular, standardUncertainty, type Contributions } from "../statistics/index.js";
import { directReading, gravityFromPlato, hydrometerCorrection, refractometerWort, type Method, type MethodAbout } from "../science/index.js";
import type { FigureBasis, FigureReport, FigureWorking, ReadingShare, WorkingStep } from "./types.js";

/** How a value came about. */
type Origin =
  | { readonly kind: "reading"; readonly field: string; readonly written: string }
  | { readonly kind: "assumed"; readonly label: string; readonly says: string }
  | { readonly kind: "computed"; readonly method: MethodAbout; readonly inputs: readonly Known[]; readonly symbols: readonly string[] }
  | { readonly kind: "figure"; readonly id: string; readonly step: Known };

/** A value with what each base reading contributes to its uncertainty, and how it came about. */
export interface Known {
  readonly value: number;
  readonly unit: string;
  readonly contributions: Contributions;
  readonly origin: Origin;
  /** What a reader must know of it; whole sentences. */
  readonly notes: readonly string[];
}

/** A value that can't be computed, and the reading that would give it. */
export interface Missing {
  readonly missing: string;
}

export type Result = Known | Missing;

/** Says that a value is missing, in a sentence that names the reading that would give it. */
export function missing(because: string): Missing {
  return { missing: because };
}

/** Several reasons as one, each said once. */
export function missingForAll(reasons: Iterable<string>): Missing {
  return missing([...new Set([...reasons].flatMap((reason) => reason.split(BETWEEN)))].join(BETWEEN));
}

const BETWEEN = "; ";

export function isMissing(result: Result): result is Missing {
  return "missing" in result;
}

/**
 * A reading with the limit its instrument can be trusted to.
 *
 * @param field where the record holds it: `fermenter.gravity`
 * @param limit half-width in `unit`, read as rectangular; undefined when none is known
 * @param written as the record wrote it
 */
export function readingOf(field: string, value: number, unit: string, limit: number | undefined, written: string): Known {
  const uncertain = limit === undefined || limit === 0 ? exact(value) : reading(field, value, rectangular(limit));
  return { value, unit, contributions: uncertain.contributions, origin: { kind: "reading", field, written }, notes: NO_NOTES };
}

/** A value that was not read but taken, with a sentence that says why. */
export function assumed(label: string, value: number, unit: string, says: string): Known {
  return { value, unit, contributions: exact(value).contributions, origin: { kind: "assumed", label, says }, notes: NO_NOTES };
}

/**
 * Puts inputs through a relation, carrying each base reading's contribution.
 * Missing when an input is, or when the relation refuses these inputs.
 */
export function apply<Inputs extends readonly number[]>(method: Method<Inputs>, ...inputs: { readonly [K in keyof Inputs]: Result }): Result {
  const known: Known[] = [];
  const reasons: string[] = [];
  for (const input of inputs) {
    if (isMissing(input)) reasons.push(input.missing);
    else known.push(input);
  }
  if (reasons.length > 0) return missingForAll(reasons);
  // The mapped parameter type holds one result for each of the method's inputs.
  const call = (values: readonly number[]): Inputs => values as unknown as Inputs;
  const refusal = method.refuses(...call(known.map((input) => input.value)));
  if (refusal !== undefined) return missing(`${method.about.title} can't be computed: ${refusal}`);
  const { value, contributions } = propagate((...values) => method(...call(values)), known);
  return {
    value, contributions,
    unit: method.about.output.unit,
    origin: { kind: "computed", method: method.about, inputs: known, symbols: method.about.inputs.map((input) => input.symbol) },
    notes: uniqueNotes(known),
  };
}

/** A value found otherwise than through `apply` (a mean over a log, say), with the inputs it rests on. */
export function computedBy(
  method: MethodAbout,
  value: number,
  contributions: Contributions,
  inputs: readonly Known[],
  unit = method.output.unit,
): Known {
  return {
    value, unit, contributions,
    origin: { kind: "computed", method, inputs, symbols: method.inputs.map((input) => input.symbol) },
    notes: uniqueNotes(inputs),
  };
}

/** The value in another unit: a change of scale alone. */
export function scaled(known: Known, factor: number, unit: string): Known {
  const contributions = Object.fromEntries(Object.entries(known.contributions).map(([id, part]) => [id, part * factor]));
  return { ...known, value: known.value * factor, unit, contributions };
}

/** Names a value as a figure in the figure's unit, so that what is computed from it points at it. */
export function asFigure(id: string, known: Known, unit = known.unit): Known {
  const step = { ...known, unit };
  return { ...step, origin: { kind: "figure", id, step } };
}

export function withNote(result: Result, note: string | undefined): Result {
  if (isMissing(result) || note === undefined || result.notes.includes(note)) return result;
  return { ...result, notes: [...result.notes, note] };
}

/** The half-width at 95 % (k = 2), or undefined where no reading carries a limit. */
export function plusMinusOf(known: Known): number | undefined {
  const halfWidth = expandedUncertainty(known);
  return halfWidth > ROUNDING_SHARE * Math.abs(known.value) ? halfWidth : undefined;
}

/** What rounding leaves of a sensitivity that is nought: far below what any instrument reads. */
const ROUNDING_SHARE = 1e-10;

/** What a report prints of a value. */
export function figureReport(known: Known): FigureReport {
  const step = known.origin.kind === "figure" ? known.origin.step : known;
  const about = step.origin.kind === "computed" ? step.origin.method : undefined;
  const plusMinus = plusMinusOf(known);
  const model = about === undefined ? undefined : modelLimit(about, known.value);
  return {
    value: known.value,
    unit: known.unit,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    ...(model === undefined ? {} : { model }),
    basis: basisOf(step),
    method: (about ?? directReading.about).id,
    from: [...new Set(restsOn(step))],
    ...(known.notes.length === 0 ? {} : { notes: known.notes }),
  };
}

/** What an instrument showed stays a reading when it is carried to another scale or to its reference temperature. */
const SCALES: ReadonlySet<string> = new Set([gravityFromPlato, hydrometerCorrection, refractometerWort].map(({ about }) => about.id));

function basisOf({ origin }: Known): FigureBasis {
  if (origin.kind === "reading") return "measured";
  const [read] = origin.kind === "computed" && SCALES.has(origin.method.id) ? origin.inputs : [];
  return read === undefined ? "computed" : basisOf(read);
}

/** What the relation itself is worth at a value, in the value's unit; undefined where no scatter is published. */
export function modelLimit(about: MethodAbout, value: number): number | undefined {
  if (about.model === undefined) return undefined;
  return about.model.as === "share" ? about.model.limit * Math.abs(value) : about.model.limit;
}

/** The working of a figure: its tree of steps, and which readings its variance rests on. */
export function figureWorking(id: string, known: Known): FigureWorking {
  const step = known.origin.kind === "figure" ? known.origin.step : known;
  return { id, step: { ...workingStep(step), label: id, kind: "figure" }, shares: readingShares(known) };
}

function restsOn(known: Known): string[] {
  switch (known.origin.kind) {
    case "reading": return [known.origin.field];
    case "assumed": return [];
    case "figure": return [known.origin.id];
    case "computed": return known.origin.inputs.flatMap(restsOn);
  }
}

function workingStep(known: Known): WorkingStep {
  const plusMinus = plusMinusOf(known);
  const common = { value: known.value, unit: known.unit, ...(plusMinus === undefined ? {} : { plusMinus }) };
  const { origin } = known;
  switch (origin.kind) {
    case "reading": return { ...common, label: origin.field, kind: "reading", written: origin.written };
    case "assumed": return { ...common, label: origin.label, kind: "assumed", says: origin.says };
    case "figure": return { ...common, label: origin.id, kind: "figure" };
    case "computed": return {
      ...common, label: origin.method.title, kind: "step", method: origin.method.id,
      inputs: origin.inputs.map((input, index) => {
        const symbol = origin.symbols[index];
        return { ...workingStep(input), ...(symbol === undefined ? {} : { symbol }) };
      }),
    };
  }
}

function readingShares(known: Known): ReadingShare[] {
  if (plusMinusOf(known) === undefined) return [];
  const variance = standardUncertainty(known) ** 2;
  return Object.entries(known.contributions)
    .map(([reading, part]) => ({ reading, share: part ** 2 / variance }))
    .filter(({ share }) => share > 0.001)
    .sort((a, b) => b.share - a.share);
}

const NO_NOTES: readonly string[] = [];

/** Most values carry none, and a log has tens of thousands of values. */
function uniqueNotes(inputs: readonly Known[]): readonly string[] {
  return inputs.every(({ notes }) => notes.length === 0) ? NO_NOTES : [...new Set(inputs.flatMap((input) => input.notes))];
}

import { standardUncertainty } from "./standard-uncertainty.js";
import { type Contributions, type Uncertain } from "./uncertain.js";

/** Share of the standard uncertainty taken as the step, as JCGM 100:2008, 5.1.3 note 2, suggests small against u. */
const stepShare = 1e-3;
/** Below this share of the value a step would drown in rounding. */
const leastRelativeStep = 1e-7;

type Relation = (...x: number[]) => number;

/**
 * Carries uncertainty through a function of several inputs, to first order.
 * Sensitivities are central differences with a step of a thousandth of the input's standard
 * uncertainty; where the function throws `RangeError` on one side (the edge of its domain) the
 * difference is one-sided. Contributions add reading by reading, so a reading that enters through
 * two inputs counts once, with its sign. A reading with zero sensitivity stays listed with 0:
 * first order says nothing about it (JCGM 100:2008, H.1.7).
 *
 * Source: JCGM 100:2008, 5.1.2, 5.1.3 note 2, 5.2.2. Published.
 *
 * @param fn takes the inputs' values in order
 * @returns the value of `fn` at the inputs' values, and its contributions in that value's unit
 * @throws RangeError when `fn` throws one at the inputs themselves or on both sides, or gives no finite number
 */
export function propagate(fn: Relation, inputs: readonly Uncertain[]): Uncertain {
  const at = inputs.map((input) => input.value);
  const value = evaluate(fn, at);
  const weights = inputs.map((input, index) => {
    const u = standardUncertainty(input);
    return u === 0 ? 0 : sensitivity(fn, at, index, u, value);
  });
  return { value, contributions: addContributions(inputs, weights) };
}

/**
 * Σ weight × input, exactly (no differences taken); the weights are exact numbers.
 *
 * @example the mean of two readings: linearCombination([0.5, 0.5], [a, b])
 */
export function linearCombination(weights: readonly number[], inputs: readonly Uncertain[]): Uncertain {
  if (weights.length !== inputs.length) {
    throw new RangeError(`linearCombination requires one weight an input, got ${weights.length} and ${inputs.length}`);
  }
  if (!weights.every(Number.isFinite)) throw new RangeError("linearCombination requires finite weights");
  const value = inputs.reduce((total, input, index) => total + (weights[index] ?? 0) * input.value, 0);
  return { value, contributions: addContributions(inputs, weights) };
}

/** The sum of several values; a reading shared by two of them counts with its doubled weight. */
export function sumUncertain(inputs: readonly Uncertain[]): Uncertain {
  return linearCombination(inputs.map(() => 1), inputs);
}

function addContributions(inputs: readonly Uncertain[], weights: readonly number[]): Contributions {
  const total = new Map<string, number>();
  for (const [index, input] of inputs.entries()) {
    for (const [id, share] of Object.entries(input.contributions)) {
      total.set(id, (total.get(id) ?? 0) + (weights[index] ?? 0) * share);
    }
  }
  return Object.fromEntries(total);
}

function sensitivity(fn: Relation, at: readonly number[], index: number, u: number, value: number): number {
  const x = at[index] ?? 0;
  const step = Math.max(u * stepShare, Math.abs(x) * leastRelativeStep);
  const above = evaluateOrEdge(fn, at.with(index, x + step));
  const below = evaluateOrEdge(fn, at.with(index, x - step));
  if (above === undefined && below === undefined) {
    throw new RangeError(`propagate: the function is defined on neither side of input ${index} (${x})`);
  }
  // The step as it came out in floating point, not as it was asked for.
  const right = above === undefined ? x : x + step;
  const left = below === undefined ? x : x - step;
  return ((above ?? value) - (below ?? value)) / (right - left);
}

function evaluateOrEdge(fn: Relation, x: readonly number[]): number | undefined {
  try {
    return evaluate(fn, x);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function evaluate(fn: Relation, x: readonly number[]): number {
  const result = fn(...x);
  if (!Number.isFinite(result)) throw new RangeError(`propagate: the function gives ${result} at ${x.join(", ")}`);
  return result;
}

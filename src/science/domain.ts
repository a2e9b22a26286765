import { type MethodInput } from "./method-about.js";

/** Why a value is outside its input's domain, or undefined when all are inside. */
export function outsideDomain(inputs: readonly MethodInput[], values: readonly number[]): string | undefined {
  const index = inputs.findIndex(({ low, high }, at) => !isWithin(values[at], low, high));
  const input = inputs[index];
  return input && `${input.meaning} must be between ${input.low} and ${`${input.high} ${input.unit}`.trimEnd()}, got ${values[index]}`;
}

/** NaN is within nothing. */
function isWithin(value: number | undefined, low: number, high: number): boolean {
  return value !== undefined && value >= low && value <= high;
}

import { z } from "zod";
import { about, refuse, type FieldWords } from "./about.js";

interface NumberLimits extends FieldWords {
  readonly low: number;
  /** None where any larger number can be right. */
  readonly high?: number;
  readonly unit?: string;
}

interface NumberRange { readonly low: number; readonly high: number; readonly text: string }

const NUMBER = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/u;
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/u;

/** A bare number: pH, a score, a gravity difference. */
export function number(says: string, limits: NumberLimits) {
  const field = numberWords(says, limits, "a number");
  const schema = z.string().transform((written, context) => readNumber(written, limits, field, context));
  return about(schema, field);
}

/** A bare whole number: a count. */
export function count(says: string, limits: NumberLimits) {
  const field = numberWords(says, limits, "a whole number");
  const schema = z.string().transform((written, context) => {
    const value = readNumber(written, limits, field, context);
    return value === z.NEVER || Number.isInteger(value) ? value
      : refuse(context, "record/whole-number", { expects: field.expects });
  });
  return about(schema, field);
}

/** `30 to 50`, bare numbers from low to high. */
export function numberRange(says: string, limits: NumberLimits & { readonly example: string }) {
  const field = { ...numberWords(says, limits, "a range"), holds: "text" as const };
  const schema = z.string().transform((written, context): NumberRange => {
    const [first = "", second = "", ...more] = written.trim().split(/\s+to\s+/u);
    if (second === "" || more.length > 0) return refuse(context, "record/number", field);
    const [low, high] = [readNumber(first, limits, field, context), readNumber(second, limits, field, context)];
    if (low > high) return refuse(context, "record/range-backwards", { repaired: `${high} to ${low}` });
    return { low, high, text: written.trim() };
  });
  return about(schema, field);
}

function numberWords(says: string, { low, high, unit, example, default: absent }: NumberLimits, noun: string) {
  const shown = example ?? `${high ?? low}`;
  return {
    says, example: shown, expects: `${noun} such as ${shown}`, holds: "number" as const,
    range: high === undefined ? `${low} or more` : `${low} to ${high}`,
    ...(unit === undefined ? {} : { unit }), ...(absent === undefined ? {} : { default: absent }),
  };
}

function readNumber(written: string, { low, high }: NumberLimits, field: { expects: string; example: string }, context: z.RefinementCtx): number {
  const trimmed = written.trim();
  if (DECIMAL_COMMA.test(trimmed)) {
    return refuse(context, "record/decimal-comma", { expects: field.expects, repaired: trimmed.replace(",", ".") });
  }
  const value = Number(trimmed);
  if (!NUMBER.test(trimmed) || !Number.isFinite(value)) return refuse(context, "record/number", field);
  if (value < low || (high !== undefined && value > high)) {
    const expects = high === undefined ? `a number of at least ${low}` : `a number from ${low} to ${high}`;
    return refuse(context, "record/number-range", { expects, low: `${low}`, high: high === undefined ? "" : `${high}` });
  }
  return value;
}

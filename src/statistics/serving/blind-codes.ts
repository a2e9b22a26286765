import { requireCount } from "../numerics/arguments.js";
import { type SeededGenerator } from "./seeded-generator.js";

/** Digits that another, or the same, digit becomes when the cup stands upside down. */
const upsideDown: ReadonlyMap<string, string> = new Map([["0", "0"], ["1", "1"], ["6", "9"], ["8", "8"], ["9", "6"]]);
/** Digits that a hurried hand makes alike, each with the one that stands for both. */
const mistakenFor: ReadonlyMap<string, string> = new Map([["7", "1"], ["8", "3"], ["6", "5"], ["9", "4"]]);
/** Codes that say something to somebody. */
const meaningful: ReadonlySet<string> = new Set(["420", "187", "123", "321", "789", "987"]);

const pool = Array.from({ length: 900 }, (_, i) => String(100 + i)).filter(isPlain);

/**
 * Draws three-digit codes without replacement: three different digits, none that reads as another
 * code upside down, and no two that a hurried hand could confuse (1 and 7, 3 and 8, 5 and 6, 4 and 9
 * in the same place).
 *
 * Source: ISO 4120:2021, 5.5 (three digits, random, one code once a session). Published; leaving
 * out look-alikes is common practice, the list of pairs ours.
 *
 * @param count up to 156 with look-alikes kept apart
 * @param options.keepApart false lets codes differ in confusable digits only: up to 600
 * @throws RangeError when the codes run out
 */
export function drawBlindCodes(count: number, generator: SeededGenerator, { keepApart = true }: { readonly keepApart?: boolean } = {}): string[] {
  requireCount("drawBlindCodes", "count", count, 0, pool.length);
  const drawn = new Map<string, string>();
  for (const code of generator.shuffle(pool)) {
    const appearance = keepApart ? appearanceOf(code) : code;
    if (drawn.size < count && !drawn.has(appearance)) drawn.set(appearance, code);
  }
  if (drawn.size < count) throw new RangeError(`drawBlindCodes found only ${drawn.size} codes that don't look alike, of ${count}`);
  return [...drawn.values()];
}

function isPlain(code: string): boolean {
  return new Set(code).size === 3 && !meaningful.has(code) && readsUpsideDown(code) === undefined;
}

/** What the code reads upside down, if that is another number. */
function readsUpsideDown(code: string): string | undefined {
  const digits = [...code].reverse().map((digit) => upsideDown.get(digit));
  const read = digits.includes(undefined) ? undefined : digits.join("");
  return read === code ? undefined : read;
}

/** Equal for codes that a hurried hand makes alike. */
function appearanceOf(code: string): string {
  return [...code].map((digit) => mistakenFor.get(digit) ?? digit).join("");
}

import type { Style } from "../../../records/index.js";
import type { SeededGenerator } from "../../../statistics/index.js";
import type { DayEntry } from "../../types.js";

/** Strength and bitterness in the middle of a style; a style that isn't defined stands in the middle of all. */
const UNKNOWN = { abv: 5.5, bitterness: 30 };

/** The order in which a flight is poured: weak before strong, mild before bitter (common practice), else by the seed. */
export function pullOrder(entries: readonly DayEntry[], styles: ReadonlyMap<string, Style>, generator: SeededGenerator): DayEntry[] {
  const weight = ({ style }: DayEntry): number => {
    const { abv, bitterness } = strengthOf(style, styles);
    return Math.round(abv) * 1000 + bitterness;
  };
  return generator.shuffle(entries).toSorted((a, b) => weight(a) - weight(b));
}

export function strengthOf(style: string | undefined, styles: ReadonlyMap<string, Style>): { readonly abv: number; readonly bitterness: number } {
  const known = style === undefined ? undefined : styles.get(style);
  return {
    abv: known?.abv === undefined ? UNKNOWN.abv : (known.abv.low.value + known.abv.high.value) / 2,
    bitterness: known?.bitterness === undefined ? UNKNOWN.bitterness : (known.bitterness.low + known.bitterness.high) / 2,
  };
}

import { formatNumber } from "../../units/index.js";
import { isMissing, plusMinusOf, type Known, type Result } from "../known.js";
import type { Scene } from "../scene.js";
import type { CheckReport, Verdict } from "../types.js";

export type Finding = Omit<CheckReport, "id" | "title">;

/** One question a record answers; undefined where it can't arise (no crash, no bottles). */
export interface CheckDefinition {
  readonly id: string;
  readonly title: string;
  /** What it is held against and why, for the methods pages. */
  readonly says: string;
  readonly find: (scene: Scene) => Finding | undefined;
}

/** A verdict with its sentence. */
export function found(verdict: Verdict, against: Finding["against"], from: readonly string[], says: string, caution?: string): Finding {
  return { verdict, against, from, says, ...(caution === undefined ? {} : { caution }) };
}

/** Names the relations whose numbers a finding's sentence gives and no figure does. */
export function workedBy(finding: Finding, ...methods: readonly { readonly about: { readonly id: string } }[]): Finding {
  return { ...finding, methods: methods.map(({ about }) => about.id) };
}

/** A check without data names the reading that would decide it. */
export function unknown(against: Finding["against"], because: string, caution?: string): Finding {
  return found("unknown", against, [], `Can't tell: ${because}.`, caution);
}

/** A value with its unit for a sentence: `54 h`, `1.0495 ± 0.0012`. */
export function inWords(known: Known): string {
  const { value, unit, plusMinus } = formatNumber(known.value, known.unit, plusMinusOf(known));
  return [plusMinus === undefined ? value : `${value} ± ${plusMinus}`, unit].filter((part) => part !== "").join(" ");
}

/** A bare number with its unit for a sentence. */
export function plain(value: number, unit: string): string {
  const formatted = formatNumber(value, unit);
  return `${formatted.value} ${formatted.unit}`.trim();
}

/** Narrows to the value, or gives undefined. */
export function known(result: Result): Known | undefined {
  return isMissing(result) ? undefined : result;
}

import { printedDate } from "./printed-date.js";

/** A clause as a sentence: a capital at its head, a full stop at its end, nothing else changed. */
export function sentence(clause: string): string {
  const text = clause.trim();
  if (text === "") return "";
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?…]$/u.test(head) ? head : `${head}.`;
}

/** A title inside a sentence: "Extract in the wort" → "extract in the wort"; abbreviations stay. */
export function lowerFirst(title: string): string {
  return /^\p{Lu}(?=\p{Ll}|[ -])/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

const CIVIL_TIME = /(?<![\d-])\d{4}-\d{2}-\d{2}(?: \d{2}:\d{2})?(?![\d-])/gu;

/** Words that hold what a record wrote, as they are printed: `66.5 C` → `66.5 °C`, `2026-02-07 18:30` → `7 February 2026, 18:30`. */
export function printedWords(text: string): string {
  return text
    .replaceAll(/(?<=\d)\s?([CF])(?![\p{L}\d])/gu, "\u00A0°$1")
    .replaceAll("mL/100g", "mL/100\u00A0g")
    .replaceAll(CIVIL_TIME, printedDate);
}

import { wordsInUnits, type UnitSystem } from "../../units/index.js";
import { printedWords } from "../text/printed-words.js";
import { usePage } from "./page-context.js";

/** A number and its unit stay on one line. */
const BEFORE_UNIT = /(?<=\d) (?=(?:°[CF]|kg|mL|L|g|lb|oz|gal|kPa|psi|EBC|SRM|IBU|%|h|d|vol)(?![\p{L}\d]))/gu;

/** Sentences of a report as this page prints them: dates and degrees set, the club's units first. */
export function useWords(): (text: string) => string {
  const { units } = usePage();
  return (text) => wordsFor(units, text);
}

/** The same outside a page's components: for its description, and for the words of its charts. */
export function wordsFor(units: UnitSystem, text: string): string {
  return wordsInUnits(printedWords(text), units).replaceAll(BEFORE_UNIT, "\u00A0");
}

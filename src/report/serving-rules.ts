import type { ServingRule } from "./types.js";

/**
 * How to serve, in the order it is needed. What a standard asks for carries its name; the rest is club
 * practice and a recommendation.
 *
 * Sources: ISO 4120:2021 (clauses read in a public extract); ISO 13299:2016 and AS 2542.1.1:2014, of the
 * family of ISO 6658 (extracts); ASTM E1879 (title and extract). Published.
 */
export const SERVING_RULES: readonly ServingRule[] = [
  { says: "Ask every taster beforehand: is it known what is in the beer, is there an allergy, a medicine, a pregnancy, a drive home? Taking part is free, and so is stopping at any cup.", standard: "ASTM E1879 asks for informed consent" },
  { says: "Settle how everybody gets home before the first cup. Nobody who has tasted drives, spitting or not." },
  { says: "Say beforehand whether to swallow or to spit. A spit cup stands at every place.", standard: "ISO 4120, 5.8 (say which)" },
  { says: "Pour out of the tasters' sight. Who pours doesn't serve, and who serves doesn't know.", standard: "ISO 4120, 5.3 (out of sight)" },
  { says: "All cups of a set at the same temperature, the one the beer is usually drunk at; take it with a thermometer.", standard: "ISO 4120, 5.6" },
  { says: "The same volume in every cup, measured.", standard: "ISO 4120, 5.7" },
  { says: "The same kind of glass or cup for all, clean, without smell, marked with its code and nothing else." },
  { says: "The same carbonation. A flat sample beside a sparkling one is told by its bubbles: carbonate the held-back one too, or let both go flat, and pour with the same foam." },
  { says: "Where colour or haze gives it away, taste in dim or coloured light or from opaque cups.", standard: "ISO 4120, 5.4" },
  { says: "Three-digit codes drawn at random, each on one cup; the orders as on the pouring sheet.", standard: "ISO 4120, 5.5 and 7.1" },
  { says: "Still water and plain unsalted crackers at every place, before the first cup and between cups.", standard: "AS 2542.1.1, after ISO 6658" },
  { says: "No talking and no faces until the last ballot is in; places apart.", standard: "AS 2542.1.1, after ISO 6658" },
  { says: "Every question gets an answer, guessed if need be, and a guess is marked as one. Tasting again within a set is fine; going back to an earlier set or answer is not.", standard: "ISO 4120, 7.2, 7.4 and 7.5" },
  { says: "The first cup of an evening always stands out: one more cup of some other beer for all beforehand takes that place." },
  { says: "No more than six to eight beers or two to four triangles at a sitting, fewer where they are bitter, sour or strong." },
  { says: "What was in the cups is told when all have finished, not before.", standard: "ISO 13299" },
];

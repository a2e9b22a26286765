import type { Batch } from "../../records/index.js";

/** Words of a recipe that point to an allergen, as food labels name them; from memory, and no substitute for asking. */
const POINTERS: readonly (readonly [allergen: string, words: RegExp])[] = [
  ["wheat", /\b(?:wheat|spelt|durum|emmer)/iu],
  ["oats", /\boat/iu],
  ["rye", /\brye\b/iu],
  ["milk", /\b(?:milk|lactose|whey)/iu],
  ["nuts", /\b(?:nut|nuts|hazelnut|almond|pecan|walnut|pistachio|cashew)\b/iu],
  ["peanuts", /\bpeanut/iu],
  ["soya", /\bsoya?\b/iu],
  ["sesame", /\bsesame/iu],
  ["fish", /\bisinglass/iu],
  ["crustaceans", /\b(?:shrimp|crab|lobster|crustacean)/iu],
  ["molluscs", /\b(?:oyster|mussel|mollusc)/iu],
  ["sulphites", /\b(?:metabisulphite|metabisulfite|sulphite|sulfite|campden)/iu],
];

/** Names that are malt made of another grain, or none at all. */
const NOT_BARLEY = /\b(?:wheat|oat|rye|spelt|rice|maize|corn|buckwheat|millet|sorghum)|sugar|syrup|dextrose|honey|lactose/iu;

/** Allergens that the grist and the additions point to. Malt that names no other grain is taken as barley's. */
export function allergensOf({ grist = [], additions = [] }: Batch): string[] {
  const malts = grist.flatMap(({ malt }) => (malt === undefined ? [] : [malt]));
  const words = [...malts, ...additions.flatMap(({ what }) => (what === undefined ? [] : [what]))];
  const barley = malts.some((malt) => !NOT_BARLEY.test(malt)) ? ["barley"] : [];
  return [...barley, ...POINTERS.filter(([, pattern]) => words.some((word) => pattern.test(word))).map(([allergen]) => allergen)];
}

/** Whether a list names an allergen, however it is spelt: "oat" or "oats". */
export function names(list: readonly string[], allergen: string): boolean {
  const stem = allergen.replace(/s$/u, "");
  return list.some((each) => each.toLowerCase().includes(stem));
}

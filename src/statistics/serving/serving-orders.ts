import { requireCount } from "../numerics/arguments.js";
import { type SeededGenerator } from "./seeded-generator.js";

export type ServingDesign = "triangle" | "tetrad" | "duo-trio" | "duo-trio-constant" | "pair";

/**
 * Orders of samples A and B for each design; in a duo-trio the first letter is the reference.
 *
 * Source: ISO 4120:2021, 7.1 (triangle); ISO 10399, ISO 5495, ASTM E3009. Published.
 */
const sequences: Readonly<Record<ServingDesign, readonly string[]>> = {
  triangle: ["AAB", "ABA", "BAA", "ABB", "BAB", "BBA"],
  tetrad: ["AABB", "ABAB", "ABBA", "BAAB", "BABA", "BBAA"],
  "duo-trio": ["AAB", "ABA", "BAB", "BBA"],
  "duo-trio-constant": ["AAB", "ABA"],
  pair: ["AB", "BA"],
};

/** The different orders of a design. */
export function servingSequences(design: ServingDesign): readonly string[] {
  return sequences[design];
}

/**
 * Deals orders to tasters: every order once per block in random sequence, so counts of orders
 * never differ by more than one.
 *
 * @returns one order a taster, such as "ABA"
 */
export function dealServingOrders(design: ServingDesign, tasters: number, generator: SeededGenerator): string[] {
  requireCount("dealServingOrders", "tasters", tasters, 1);
  const dealt: string[] = [];
  while (dealt.length < tasters) dealt.push(...generator.shuffle(sequences[design]));
  return dealt.slice(0, tasters);
}

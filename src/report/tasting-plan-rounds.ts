import { dealSampleOrders, dealServingOrders, drawBlindCodes, seededGenerator, type SeededGenerator, type ServingDesign } from "../statistics/index.js";
import type { CountedTest, PlannedCup, PlannedSample, PlannedServing, TastingRound } from "./types.js";

/** One round before anything is dealt. */
export type RoundAsked = Pick<TastingRound, "kind" | "attributes" | "preference" | "needed" | "attribute" | "hoped">;

const DESIGNS: Readonly<Record<CountedTest, ServingDesign>> = { pair: "pair", tetrad: "tetrad", triangle: "triangle", "duo-trio": "duo-trio" };
const ORDERS: Readonly<Record<CountedTest, number>> = { pair: 2, tetrad: 6, triangle: 6, "duo-trio": 4 };

/** Codes that can be told apart at a glance: so many can be drawn before two look alike. */
const MOST_CODES = 156;

/** How many cups of a round one taster gets. */
export function cupsOf(kind: RoundAsked["kind"], samples: number): number {
  if (kind === "scores" || kind === "ranking") return samples;
  return DESIGNS[kind] === "pair" ? 2 : DESIGNS[kind] === "tetrad" ? 4 : 3;
}

/**
 * Deals serving orders and blind codes to every taster of every round. A code is on one cup only; with
 * so many cups that the codes run out, they are drawn afresh for the next group of tasters, and no
 * taster sees one twice.
 *
 * @param seed any text; the same text deals the same again
 */
export function dealRounds(asked: readonly RoundAsked[], samples: readonly PlannedSample[], tasters: number, seed: string): TastingRound[] {
  const generator = seededGenerator(seed);
  // The reference of a duo-trio bears an R and needs no code.
  const each = asked.reduce((total, { kind }) => total + cupsOf(kind, samples.length) - (kind === "duo-trio" ? 1 : 0), 0);
  const codes = codesOf(each, tasters, generator);
  const dealt = asked.map((round) => ({ round, ...ordersOf(round, samples, tasters, generator) }));
  return dealt.map(({ round, orders, balanced }) => ({
    ...round, balanced,
    servings: orders.map((order, index) => servingOf(round, index, order, codes[index] ?? [])),
  }));
}

/** A stack of codes a taster, taken from as the cups are filled. */
function codesOf(each: number, tasters: number, generator: SeededGenerator): string[][] {
  const group = Math.max(1, Math.floor(MOST_CODES / each));
  const stacks: string[][] = [];
  while (stacks.length < tasters) {
    const drawn = drawBlindCodes(Math.min(group, tasters - stacks.length) * each, generator);
    while (drawn.length > 0) stacks.push(drawn.splice(0, each));
  }
  return stacks;
}

interface Orders {
  /** One a taster: sample names from left to right. */
  readonly orders: readonly (readonly string[])[];
  readonly balanced: boolean;
}

function ordersOf({ kind }: RoundAsked, samples: readonly PlannedSample[], tasters: number, generator: SeededGenerator): Orders {
  if (kind === "scores" || kind === "ranking") {
    const { orders, balanced } = dealSampleOrders(samples.length, tasters, generator);
    return { orders: orders.map((order) => order.map((place) => samples[place]?.name ?? "")), balanced };
  }
  const [first, second] = [samples[0]?.name ?? "", samples[1]?.name ?? ""];
  const orders = dealServingOrders(DESIGNS[kind], tasters, generator).map((order) => [...order].map((letter) => (letter === "A" ? first : second)));
  return { orders, balanced: tasters % ORDERS[kind] === 0 };
}

function servingOf({ kind }: RoundAsked, index: number, order: readonly string[], codes: string[]): PlannedServing {
  const cups = order.map((sample, place): PlannedCup => ({ sample, code: kind === "duo-trio" && place === 0 ? REFERENCE : codes.shift() ?? "" }));
  const right = rightAnswer(kind, cups);
  return { taster: tasterName(index), cups, ...(right === undefined ? {} : { right }) };
}

const REFERENCE = "R";

export const tasterName = (index: number): string => `T${String(index + 1).padStart(2, "0")}`;

/** What the codes of a right answer are. A pair has none: what counts is which sample was named. */
function rightAnswer(kind: RoundAsked["kind"], cups: readonly PlannedCup[]): string | undefined {
  const codesWith = (sample: string | undefined): string[] => cups.filter((cup) => cup.sample === sample && cup.code !== REFERENCE).map(({ code }) => code);
  if (kind === "triangle") return cups.find(({ sample }) => codesWith(sample).length === 1)?.code;
  if (kind === "duo-trio") return codesWith(cups[0]?.sample)[0];
  if (kind !== "tetrad") return undefined;
  const first = cups[0]?.sample;
  return `${codesWith(first).join(" + ")}, ${codesWith(cups.find(({ sample }) => sample !== first)?.sample).join(" + ")}`;
}

import { z } from "zod";
import { about, choice, civilTime, count, fields, fileName, list, MOST_TASTERS, named, oneOrList, text, texts, yesNo } from "./kinds/index.js";

const people = (says: string, example = "12") => count(says, { low: 0, high: MOST_TASTERS, example });
const fewer = people("Tasters who took this test, where fewer than in the tasting").exactOptional();

const discrimination = (says: string) => fields(says, {
  correct: people("Correct answers", "9").exactOptional(),
  tasters: fewer,
}).exactOptional();

/** Answers for each sample, beside the fields that a vote has of its own. */
interface Votes {
  readonly counts: readonly { readonly sample: string; readonly count: number }[];
  readonly tasters?: number;
}

const answer = people("Answers for this sample", "10");

function votesOf(written: Readonly<Record<string, unknown>>, own: readonly string[]): Votes {
  const counts = Object.entries(written)
    .filter(([name]) => !own.includes(name))
    .map(([sample, count]) => ({ sample, count: Number(count) }));
  return { counts, ...(typeof written["tasters"] === "number" ? { tasters: written["tasters"] } : {}) };
}

const pair = about(
  z.object({ attribute: text("The attribute asked about", { example: "orange peel" }), tasters: fewer })
    .catchall(answer)
    .transform((written) => ({ attribute: written.attribute, ...votesOf(written, ["attribute", "tasters"]) })),
  { says: "Which of two samples has more of a named attribute: the attribute, and how many named each sample", expects: "fields: attribute, and a count for each sample", example: "{attribute: orange peel, after: 10, before: 2}" },
);

const preference = about(
  z.object({ none: people("Tasters without a preference", "1").exactOptional(), tasters: fewer })
    .catchall(answer)
    .transform((written) => ({ ...votesOf(written, ["none", "tasters"]), ...(typeof written.none === "number" ? { none: written.none } : {}) })),
  { says: "How many preferred each sample, and how many none", expects: "a count for each sample, and for none", example: "{before: 3, after: 8, none: 1}" },
);

export const tasting = fields("One tasting", {
  name: text("What it is called", { example: "Before and after the dry hop" }).exactOptional(),
  date: civilTime("When it was held", "2026-04-02").exactOptional(),
  samples: named("Names of the samples poured, each with where it was drawn from: a kept sample, a package (keg, bottles, cask), or another batch's, TP-02/keg",
    { name: "sample", value: text("Where the sample was drawn from", { example: "keg" }) }).exactOptional(),
  differs: texts("What differs between the samples besides what is being tested; [] means nothing did", { example: "[carbonation]" }).exactOptional(),
  asked: choice("The question, decided before: is there a difference, or are they alike enough", ["difference", "similarity"]).exactOptional(),
  tasters: people("How many took part").exactOptional(),
  triangle: discrimination("Pick the odd one of three"),
  tetrad: discrimination("Sort four into two pairs"),
  duo_trio: discrimination("Pick which of two matches a reference"),
  pair: oneOrList("Which of two samples has more of a named attribute", pair).exactOptional(),
  preference: preference.exactOptional(),
  scores: fileName("A file of scores: taster, sample, attribute, score from 0 to 10, and serving where servings repeat", "tasting-2026-04-02.csv").exactOptional(),
  ranking: fileName("A file of ranks: taster, sample, rank", "ranks.csv").exactOptional(),
  order: texts("The samples in order of dose, where doses are ordered", { example: "[a, b, c]" }).exactOptional(),
  seed: text("What serving orders and blind codes are drawn from, so that they can be drawn again; else the batch number", { example: "4711" }).exactOptional(),
  public: yesNo("false keeps it out of the site", { default: "true" }).default(true),
});

export const tastings = list("Tastings of this batch", tasting);

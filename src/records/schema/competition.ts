import type { z } from "zod";
import type { CamelCased } from "../camel-case.js";
import { choice, civilTime, count, fields, named, number, text } from "./kinds/index.js";

/** The 50-point sheet used where a competition names none (common practice). */
export const DEFAULT_SHEET = [
  { section: "aroma", value: 12 }, { section: "appearance", value: 3 }, { section: "flavor", value: 20 },
  { section: "mouthfeel", value: 5 }, { section: "overall", value: 10 },
];

/** The front matter of a competition's index.md. */
export const competitionSchema = fields("A competition", {
  name: text("What it is called", { example: "Tideline Cup 2026" }),
  date: civilTime("The day it is held", "2026-09-12"),
  release: civilTime("When results may appear; until then, and without it, they stay out of the site", "2026-09-13 18:00").exactOptional(),
  sheet: named("The score sheet: sections in order, each with its maximum",
    { name: "section", value: number("The most points the section gives", { low: 0.5, high: 100, example: "12" }) })
    .default(DEFAULT_SHEET).meta({ default: "aroma 12, appearance 3, flavor 20, mouthfeel 5, overall 10" }),
  agree_within: number("How many points two judges of one entry may be apart before they talk it over", { low: 0, high: 100, example: "7", default: "7" }).default(7),
  places: count("How many places each flight gives", { low: 1, high: 20, example: "3", default: "3" }).default(3),
  feedback: choice("Who sees scores and comments", ["private", "entrants", "public"], { default: "private" }).default("private"),
  handles: choice("Whether brewers' handles are shown with results", ["shown", "hidden"], { default: "hidden" }).default("hidden"),
  seed: text("What blind codes, flights and pull orders are drawn from, so that they can be drawn again", { example: "4711" }).exactOptional(),
});

export type Competition = CamelCased<z.output<typeof competitionSchema>>;

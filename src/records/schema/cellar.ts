import { choice, civilTime, fields, list, massOrVolume, quantity, text, yesNo } from "./kinds/index.js";
import { hopLot } from "./recipe.js";

const when = (says: string, example = "2026-03-18 18:30") => civilTime(says, example).exactOptional();

/** What happens to the beer between fermentation and packaging. */
export const additions = list("Anything else that goes in later", fields("One addition", {
  what: text("What it is", { example: "boiled sugar syrup" }).exactOptional(),
  amount: massOrVolume("How much went in").exactOptional(),
  volume: quantity("volume", "Volume it adds to the beer, where the amount is a mass", { example: "0.3 L" }).exactOptional(),
  extract: quantity("share", "Extract in it, by weight", { example: "70 %" }).exactOptional(),
  at: when("When it went in", "2026-03-10 09:00"),
}));

export const samples = list("Beer drawn off", fields("One sample", {
  at: when("When it was drawn"),
  volume: quantity("volume", "How much", { example: "0.5 L" }).exactOptional(),
  kept: text("The name it is kept under for a tasting", { example: "control" }).exactOptional(),
  stored: text("How it is kept until then", { example: "1 C, purged bottle" }).exactOptional(),
}));

export const dryHops = list("Hops added on the cold side", fields("One addition", {
  ...hopLot,
  added: when("When they went in", "2026-03-18 19:00"),
  removed: when("When they were taken out, only if before the transfer", "2026-03-22 19:00"),
  held: choice("Whether they were free in the beer or in a bag", ["loose", "bag"]).exactOptional(),
  into: choice("Which vessel they went into", ["fermenter", "keg"], { default: "fermenter" }).default("fermenter"),
  purged: yesNo("Whether air was purged from the hops or the headspace").exactOptional(),
}));

export const crash = fields("The cold crash", {
  set: quantity("temperature", "What the cooling was set to", { example: "2 C" }).exactOptional(),
  from: when("When cooling began", "2026-03-22 19:00"),
  vent: choice("How gas came in while the beer cooled: fed with gas, through an airlock, or sealed", ["gas", "airlock", "sealed"]).exactOptional(),
});

export const dumps = list("Sediment drawn off from below", fields("One dump", {
  at: when("When it was dumped", "2026-03-23 19:00"),
  volume: quantity("volume", "How much came out, sediment and beer", { example: "0.6 L" }).exactOptional(),
  beer: quantity("share", "The part of it that was beer, if settled out and read", { example: "60 %" }).exactOptional(),
}));

export const transfer = fields("A move of the beer out of the fermenter", {
  at: when("When it was moved", "2026-03-24 19:00"),
  volume: quantity("volume", "How much was moved", { example: "19.0 L at 2 C ± 0.1 L" }).exactOptional(),
  left: quantity("volume", "What was left in the vessel, sediment included", { example: "1.4 L" }).exactOptional(),
  closed: yesNo("Whether it was moved without air").exactOptional(),
  sanitised: yesNo("Whether everything it touched was sanitised").exactOptional(),
});

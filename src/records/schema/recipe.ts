import { choice, civilTime, count, fields, list, massOrVolume, number, quantity, text } from "./kinds/index.js";

/** What the beer is made of and how the wort was made, up to the fermenter. */
export const grist = list("The malts, sugars and other sources of extract", fields("One malt or sugar", {
  malt: text("Its name, as in malts.yaml", { example: "Pale malt" }).exactOptional(),
  amount: quantity("mass", "How much went in", { example: "4.60 kg" }).exactOptional(),
  extract: quantity("share", "Extract it can give: fine grind, dry basis; else from malts.yaml", { example: "80.5 %" }).exactOptional(),
  moisture: quantity("share", "Water in it; else from malts.yaml, else 4 % (0 % for sugars), and said", { example: "4 %" }).exactOptional(),
  color: quantity("color", "Its colour; else from malts.yaml", { example: "5 EBC" }).exactOptional(),
  into: choice("Where it went in", ["mash", "kettle", "fermenter"], { default: "mash" }).default("mash"),
}));

const ion = (says: string, example: string) => quantity("concentration", says, { example }).exactOptional();

export const water = fields("Brewing water, as used", {
  salts: list("Salts and acids added", fields("One addition", {
    salt: text("Its name", { example: "gypsum" }).exactOptional(),
    amount: massOrVolume("How much went in", "4 g").exactOptional(),
  })).exactOptional(),
  ions: fields("What the finished brewing water holds", {
    calcium: ion("Calcium", "85 mg/L"),
    magnesium: ion("Magnesium", "6 mg/L"),
    sodium: ion("Sodium", "20 mg/L"),
    alkalinity: ion("Alkalinity, as calcium carbonate", "40 mg/L"),
    sulfate: ion("Sulfate", "120 mg/L"),
    chloride: ion("Chloride", "60 mg/L"),
  }).exactOptional(),
});

export const mash = fields("The mash", {
  water: quantity("volume", "Strike water", { example: "15 L" }).exactOptional(),
  ph: number("pH of the mash, at room temperature", { low: 3, high: 9, example: "5.35" }).exactOptional(),
  rests: list("Rests, in order", fields("One rest", {
    temperature: quantity("temperature", "What the mash was held at", { example: "66 C" }).exactOptional(),
    for: quantity("time", "For how long", { example: "60 min" }).exactOptional(),
  })).exactOptional(),
});

const kettleReading = (when: string, volume: string, gravity: string) => fields(`What the kettle held ${when} the boil`, {
  volume: quantity("volume", "Volume, with the temperature it was read at", { example: volume }).exactOptional(),
  gravity: quantity("gravity", "Gravity of the wort", { example: gravity }).exactOptional(),
}).exactOptional();

export const boil = fields("The boil", {
  for: quantity("time", "How long it boiled", { example: "60 min" }).exactOptional(),
  before: kettleReading("before", "27.5 L at 70 C", "1.042"),
  after: kettleReading("after", "24.0 L at 98 C", "1.0495"),
});

/** What is known of a hop addition wherever it goes in. */
export const hopLot = {
  hop: text("The hop's name, as in hops.yaml", { example: "Cascade" }).exactOptional(),
  form: choice("What was added", ["pellet", "cone", "concentrate"]).exactOptional(),
  amount: quantity("mass", "How much went in", { example: "70 g" }).exactOptional(),
  alpha: quantity("share", "Alpha acids of this lot; else from hops.yaml", { example: "6.2 %", high: 80 }).exactOptional(),
  oil: quantity("oil", "Oil of this lot; else from hops.yaml", { example: "1.3 mL/100g" }).exactOptional(),
  crop: count("Year of harvest", { low: 1990, high: 2199, example: "2025" }).exactOptional(),
  lot: text("The supplier's lot", { example: "A17" }).exactOptional(),
};

export const kettleHops = list("Hops added on the hot side", fields("One addition", {
  ...hopLot,
  boil: quantity("time", "How long it boiled", { example: "60 min" }).exactOptional(),
  stand: quantity("time", "How long it stood in hot wort after the boil", { example: "20 min" }).exactOptional(),
  temperature: quantity("temperature", "What the wort stood at", { example: "80 C" }).exactOptional(),
}));

export const yeast = fields("The yeast", {
  strain: text("Strain, in the brewer's own words", { example: "English ale" }).exactOptional(),
  form: choice("What was pitched", ["dry", "liquid", "slurry"]).exactOptional(),
  amount: massOrVolume("How much was pitched", "11 g").exactOptional(),
  pitched: civilTime("When it was pitched", "2026-03-07 16:00").exactOptional(),
  generation: count("How often it has fermented, this time included", { low: 1, high: 100, example: "2" }).exactOptional(),
  from: text("The batch it was taken from when repitched", { example: "TP-01" }).exactOptional(),
});

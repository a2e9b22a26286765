import type { z } from "zod";
import type { CamelCased } from "../camel-case.js";
import { additions, crash, dryHops, dumps, samples, transfer } from "./cellar.js";
import { fermentation, fermenter } from "./fermentation.js";
import { aim, plan } from "./intent.js";
import { choice, civilTime, fields, list, oneOrList, text, texts, yesNo } from "./kinds/index.js";
import { packaged } from "./package.js";
import { boil, grist, kettleHops, mash, water, yeast } from "./recipe.js";
import { tastings } from "./tasting.js";

const enter = list("Competition entry notes wanted for this batch", fields("One entry", {
  competition: text("The competition's folder in shared/competitions/", { example: "2026-tideline-cup" }).exactOptional(),
  style: text("The style it is entered as", { example: "American Pale Ale" }).exactOptional(),
  declare: texts("What is to be declared", { example: "[orange peel]" }).exactOptional(),
  allergens: texts("Allergens", { example: "[barley, wheat]" }).exactOptional(),
}));

/** The front matter of a batch record, in the order a brewer writes it. */
export const batchSchema = fields("A batch record", {
  title: text("What the beer is called", { example: "Tideline Pale, third go" }),
  batch: text("The batch number, unique in the log", { example: "TP-03" }),
  brewed: civilTime("The brew day", "2026-03-07"),
  status: choice("How far it is; else the furthest step recorded", ["planned", "brewing", "fermenting", "conditioning", "packaged", "dumped"]).exactOptional(),
  brewer: text("Who brewed it, by handle", { example: "quayside" }).exactOptional(),
  season: text("Groups batches on a season page", { example: "pales-2026" }).exactOptional(),
  series: text("Batches meant as versions of one beer, in order of brew date", { example: "tideline" }).exactOptional(),
  style: text("A name in styles", { example: "American Pale Ale" }).exactOptional(),
  equipment: text("A name in equipment.yaml", { example: "quayside-40" }).exactOptional(),
  publish: yesNo("false: no page, no row, no trace in the site", { default: "true" }).default(true),
  repeats: text("The batch this one is compared with; else the one before in its series", { example: "TP-02" }).exactOptional(),
  aim: aim.exactOptional(),
  plan: plan.exactOptional(),
  grist: grist.exactOptional(),
  water: water.exactOptional(),
  mash: mash.exactOptional(),
  boil: boil.exactOptional(),
  hops: kettleHops.exactOptional(),
  yeast: yeast.exactOptional(),
  fermenter: fermenter.exactOptional(),
  fermentation: fermentation.exactOptional(),
  additions: additions.exactOptional(),
  samples: samples.exactOptional(),
  dry_hops: dryHops.exactOptional(),
  crash: crash.exactOptional(),
  dumps: dumps.exactOptional(),
  transfer: oneOrList("Moves of the beer out of the fermenter", transfer).exactOptional(),
  package: oneOrList("What the beer was packaged into", packaged).exactOptional(),
  tastings: tastings.exactOptional(),
  enter: enter.exactOptional(),
});

/** A batch as the rest of the program sees it: inferred from the schema, camelCase. */
export type Batch = CamelCased<z.output<typeof batchSchema>>;

/** What could be read of a batch that has problems: enough to look for further ones. */
export type PartialBatch = Partial<Batch>;

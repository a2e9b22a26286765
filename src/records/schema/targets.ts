import type { z } from "zod";
import type { CamelCased } from "../camel-case.js";
import { fields, named, numberRange, quantity, quantityRange, text } from "./kinds/index.js";

const style = fields("A style's targets", {
  code: text("Its code in the guidelines", { example: "18B" }).exactOptional(),
  original_gravity: quantityRange("gravity", "Original gravity, low to high", { example: "1.045 to 1.060" }).exactOptional(),
  final_gravity: quantityRange("gravity", "Final gravity, low to high", { example: "1.010 to 1.015" }).exactOptional(),
  abv: quantityRange("share", "Alcohol by volume, low to high", { example: "4.5 % to 6.2 %" }).exactOptional(),
  bitterness: numberRange("Bitterness in IBU, low to high", { low: 0, high: 1000, unit: "IBU", example: "30 to 50" }).exactOptional(),
  color: quantityRange("color", "Colour, low to high", { example: "5 SRM to 10 SRM" }).exactOptional(),
});

const hop = fields("A hop's usual values", {
  alpha: quantity("share", "Alpha acids", { example: "6.3 %", high: 80 }).exactOptional(),
  oil: quantity("oil", "Oil", { example: "1.2 mL/100g" }).exactOptional(),
});

const malt = fields("A malt's usual values", {
  extract: quantity("share", "Extract, fine grind, dry basis", { example: "80.5 %" }).exactOptional(),
  moisture: quantity("share", "Moisture", { example: "4 %" }).exactOptional(),
  color: quantity("color", "Colour", { example: "5 EBC" }).exactOptional(),
});

/** shared/styles.yaml, shared/hops.yaml and shared/malts.yaml: what a record may leave out, by name. */
export const stylesSchema = named("Style targets, by name", { name: "name", value: style });
export const hopsSchema = named("Hops, by name", { name: "name", value: hop });
export const maltsSchema = named("Malts, by name", { name: "name", value: malt });

export type StyleTargets = CamelCased<z.output<typeof style>>;
export type HopDefaults = CamelCased<z.output<typeof hop>>;
export type MaltDefaults = CamelCased<z.output<typeof malt>>;

import { choice, civilTime, fields, number, quantity, quantityRange, text, texts } from "./kinds/index.js";

/** What the brewer wanted, decided before tasting. */
export const aim = fields("What the batch is to change, decided before tasting", {
  words: text("The aim in the brewer's words", { example: "More orange peel on the nose" }).exactOptional(),
  raise: texts("Attributes to be stronger than in the batch it is compared with").exactOptional(),
  lower: texts("Attributes to be weaker").exactOptional(),
  hold: texts("Attributes to stay as they were", { example: "[bitterness]" }).exactOptional(),
  primary: text("The attribute that decides", { example: "orange peel" }).exactOptional(),
  margin: number("What counts as moved, and as held, on the scale from 0 to 10", { low: 0, high: 10, example: "0.8" }).exactOptional(),
});

const step = (says: string) => civilTime(`When ${says} is planned`).exactOptional();

/** What was intended; compared with what happened. */
export const plan = fields("What was intended", {
  original_gravity: quantity("gravity", "Gravity in the fermenter", { example: "1.050" }).exactOptional(),
  final_gravity: quantity("gravity", "Gravity at the end", { example: "1.011" }).exactOptional(),
  fermenter: quantity("volume", "Wort in the fermenter", { example: "22 L" }).exactOptional(),
  dry_hop: quantity("dose", "Dry hops for each litre of beer", { example: "5 g/L" }).exactOptional(),
  dry_hop_when: choice("Whether the dry hop waits for the end of fermentation; fermenting means early on purpose", ["terminal", "fermenting"]).exactOptional(),
  dry_hop_temperature: quantityRange("temperature", "Beer temperature while in contact; one value means ± 1 °C", { example: "12 C to 14 C" }).exactOptional(),
  dry_hop_for: quantityRange("time", "Contact time; one value means ± 12 h", { example: "4 d" }).exactOptional(),
  crash: quantity("temperature", "What the beer is cooled to", { example: "2 C" }).exactOptional(),
  crash_for: quantityRange("time", "How long it is held cold; one value means ± 12 h", { example: "2 d" }).exactOptional(),
  package: quantity("volume", "Beer in the package", { example: "19 L" }).exactOptional(),
  carbonation: quantity("carbonation", "Carbonation of the packaged beer", { example: "2.4 vol" }).exactOptional(),
  dates: fields("When each step is due", {
    dry_hop: step("the dry hop"),
    dump: step("the dump"),
    crash: step("the crash"),
    transfer: step("the transfer"),
    package: step("packaging"),
    tasting: step("the tasting"),
  }).exactOptional(),
});

import type { Log } from "../records/index.js";
import type { Quantity } from "../units/index.js";
import type { GristLine } from "./batch-parts.js";
import { assumed, missing, readingOf, withNote, type Result } from "./known.js";

/** What a grist line is worth: its own numbers, else the log's or the tool's defaults, said as such. */
export interface MaltValues {
  readonly extract: Result;
  readonly moisture: Result;
  readonly color: Result;
}

/** Common practice for kilned malt; sugars hold none unless the record says so. */
const USUAL_MOISTURE = 4;

/** Extract, moisture and colour of a grist line. */
export function maltValues(log: Log, line: GristLine, index: number): MaltValues {
  const name = line.malt ?? "malt";
  const usual = line.malt === undefined ? undefined : log.malts.get(line.malt);
  const field = `grist[${index}]`;
  const from = (key: "extract" | "color", unit: string): Result =>
    ownOrUsual(`${field}.${key}`, line[key], usual?.[key], unit, name);
  return { extract: from("extract", "%"), moisture: moisture(field, line, usual?.moisture, name), color: from("color", "EBC") };
}

function moisture(field: string, line: GristLine, usual: Quantity | undefined, name: string): Result {
  const written = line.moisture ?? usual;
  if (written !== undefined) return ownOrUsual(`${field}.moisture`, line.moisture, usual, "%", name);
  return assumed(`${name} moisture`, USUAL_MOISTURE, "%", `Moisture of ${name} isn't recorded: 4 % is taken, as is common for kilned malt.`);
}

/** Alpha acids, or oil, of a hop: its own lot's, else the usual value for its name. */
export function hopValue(log: Log, hop: string | undefined, key: "alpha" | "oil", own: Quantity | undefined, field: string): Result {
  const usual = hop === undefined ? undefined : log.hops.get(hop)?.[key];
  return ownOrUsual(field, own, usual, key === "alpha" ? "%" : "mL/100g", hop ?? "the hop");
}

function ownOrUsual(field: string, own: Quantity | undefined, usual: Quantity | undefined, unit: string, name: string): Result {
  if (own !== undefined) return readingOf(field, own.value, unit, own.limit, own.text);
  if (usual === undefined) return missing(`${field} isn't recorded, and there is no usual value for ${name}`);
  const says = `Not recorded for this lot: the usual value for ${name} is taken, ${usual.text}.`;
  return withNote(assumed(field, usual.value, unit, says), `${fieldWord(field)} of ${name} isn't recorded: the usual ${usual.text} is taken.`);
}

function fieldWord(field: string): string {
  const key = field.slice(field.lastIndexOf(".") + 1);
  const words: Readonly<Record<string, string>> = { alpha: "Alpha acids", oil: "Oil", extract: "Extract", color: "Colour", moisture: "Moisture" };
  return words[key] ?? key;
}

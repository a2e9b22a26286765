import { z } from "zod";
import { nearestName } from "../../../problems/index.js";
import { parseDifference, parseQuantity, unitsOf, type ParsedQuantity, type Quantity, type QuantityFault, type QuantityKind } from "../../../units/index.js";
import { about, refuse } from "./about.js";
import { quantityWords, type QuantityLimits, type QuantityWords } from "./quantity-words.js";

/** What was planned or allowed: `12 C to 14 C`, or one value. */
export interface QuantityRange<K extends QuantityKind = QuantityKind> {
  readonly low: Quantity<K>;
  readonly high: Quantity<K>;
  /** One value was written; `low` and `high` are both that value, and the field's own tolerance applies. */
  readonly single: boolean;
  readonly text: string;
}

/** A number with its unit, of one kind. */
export function quantity<K extends QuantityKind>(kind: K, says: string, limits: QuantityLimits = {}) {
  const words = quantityWords(kind, limits);
  const schema = z.string().transform((written, context) => checked(parseQuantity(written, kind), words, context));
  return about(schema, fieldAbout(says, words, kind));
}

/** A width: an instrument's limit. */
export function difference<K extends QuantityKind>(kind: K, says: string, limits: QuantityLimits = {}) {
  const own = quantityWords(kind, { ...limits, low: 0, ...(kind === "gravity" ? { high: 0.1 } : {}) });
  const words = { ...own, range: `0${own.ownUnit} or more` };
  const schema = z.string().transform((written, context) => checked(parseDifference(written, kind), words, context));
  return about(schema, fieldAbout(says, words, kind));
}

/** `low to high`, or one value. */
export function quantityRange<K extends QuantityKind>(kind: K, says: string, limits: QuantityLimits = {}) {
  const words = quantityWords(kind, limits);
  const schema = z.string().transform((written, context): QuantityRange<K> => {
    const ends = written.trim().split(/\s+to\s+/u).map((end) => parseQuantity(end, kind));
    const wrong = ends.find((end) => !end.ok);
    if (wrong?.ok === false && wrong.fault.reason === "unit-missing") return refuse(context, "record/unit-missing", { expects: words.expects, repaired: withUnits(written, words) });
    const [low, high] = (wrong === undefined ? ends : [wrong]).map((end) => checked(end, words, context));
    if (wrong !== undefined || low === undefined || low === z.NEVER || high === z.NEVER) return z.NEVER;
    if (ends.length > 2) return refuse(context, "record/not-a-quantity", words);
    if (high !== undefined && high.value < low.value) return refuse(context, "record/range-backwards", { repaired: `${high.text} to ${low.text}` });
    return { low, high: high ?? low, single: high === undefined, text: written.trim() };
  });
  return about(schema, { ...fieldAbout(says, words, kind), pattern: ".+" });
}

/** Weighed or measured out: a mass, or a volume. */
export function massOrVolume(says: string, example = "200 g") {
  const words = { ...quantityWords("mass", { example }), expects: `a mass or a volume such as "${example}"`, high: Number.POSITIVE_INFINITY };
  const unit = [...unitsOf("mass"), ...unitsOf("volume")];
  const schema = z.string().transform((written, context): Quantity<"mass"> | Quantity<"volume"> => {
    const volume = parseQuantity(written, "volume");
    if (volume.ok) return checked(volume, quantityWords("volume", {}), context);
    return checked(parseQuantity(written, "mass"), words, context, unit);
  });
  return about(schema, { ...fieldAbout(says, words, "mass"), unit: unit.join(", "), range: "0 or more", pattern: patternOf(unit, false) });
}

function fieldAbout(says: string, words: QuantityWords, kind: QuantityKind) {
  const { example, expects, unit, range } = words;
  return {
    says, example, expects, unit, range, pattern: patternOf(unitsOf(kind), kind === "gravity"),
    holds: kind === "gravity" ? "text or number" as const : "text" as const, ...(words.default === undefined ? {} : { default: words.default }),
  };
}

function patternOf(units: readonly string[], bare: boolean): string {
  const unit = units.join("|");
  return String.raw`^\s*[+-]?(\d+(\.\d+)?|\.\d+)\s*(${unit})${bare ? "?" : ""}(\s+at\s.+)?(\s*(±|\+/-).+)?\s*$`;
}

function checked<K extends QuantityKind>(parsed: ParsedQuantity<K>, words: QuantityWords, context: z.RefinementCtx, units?: readonly string[]): Quantity<K> {
  if (!parsed.ok) return refuseFault(parsed.fault, words, context, units ?? words.unit.split(", "));
  const { value, kind, unit } = parsed.quantity;
  const inside = kind === "gravity" && unit !== "SG" ? true : value >= words.low && value <= words.high;
  return inside ? parsed.quantity : refuse(context, "record/out-of-range", { between: between(words) });
}

const between = ({ noun, low, high, ownUnit }: QuantityWords): string => `${noun} between ${low}${ownUnit} and ${high}${ownUnit}`;

function refuseFault(fault: QuantityFault, words: QuantityWords, context: z.RefinementCtx, units: readonly string[]): never {
  const { expects, example } = words;
  const listed = units.join(", ");
  switch (fault.reason) {
    case "unit-missing":
      return refuse(context, "record/unit-missing", { expects, repaired: `${fault.number} ${unitIn(example)}` });
    case "unit-wrong-kind":
      return refuse(context, "record/unit-wrong-kind", { expects, unit: fault.unit, kind: fault.kind === "color" ? "colour" : fault.kind, units: listed });
    case "unit-unknown":
      return refuse(context, "record/unit-unknown", { expects, units: listed, nearest: nearestName(fault.unit, units) });
    case "decimal-comma":
      return refuse(context, "record/decimal-comma", { expects, repaired: withoutComma(fault.repaired, words) });
    case "gravity-without-point":
      return refuse(context, "record/gravity-without-point", { repaired: fault.repaired });
    case "out-of-range":
      return refuse(context, "record/out-of-range", { between: `${words.noun} between ${fault.low} and ${fault.high} ${fault.unit}` });
    case "negative":
      return refuse(context, "record/negative", { expects });
    case "temperature-not-allowed":
      return refuse(context, "record/temperature-not-allowed", { expects });
    case "not-a-quantity":
      return refuse(context, "record/not-a-quantity", { expects, example });
  }
}

/** `1,500 g` may mean one and a half or fifteen hundred: both are offered, neither is taken. */
function withoutComma(repaired: string, { noun }: QuantityWords): string {
  const thousands = /^(\d{1,3})\.(\d{3})(?=\D|$)/u;
  return noun !== "a gravity" && thousands.test(repaired) ? `${repaired}; or, if thousands were meant, ${repaired.replace(thousands, "$1$2")}` : repaired;
}

/** `12 to 14 C` with the unit at both ends. */
function withUnits(written: string, { example }: QuantityWords): string {
  const ends = written.trim().split(/\s+to\s+/u);
  const unit = ends.map(unitIn).find((one) => one !== "") ?? unitIn(example.split(" to ")[0] ?? "");
  return ends.map((end) => (unitIn(end) === "" ? `${end} ${unit}` : end)).join(" to ");
}

const unitIn = (example: string): string => example.replace(/^[+-]?[\d.]+\s*/u, "");

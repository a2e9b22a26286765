import { z } from "zod";
import { nearestName } from "../../../problems/index.js";
import { about, refuse, type FieldWords } from "./about.js";

/** One line or paragraph of text. */
export function text(says: string, { example = "Cascade" }: FieldWords = {}) {
  const schema = z.string().transform((written, context) =>
    written.trim() === "" ? refuse(context, "record/nothing", { expects: "text", example }) : written.trim());
  return about(schema, { says, expects: `text such as "${example}"`, example, holds: "text or number" });
}

/** A list of texts; an empty list means there was none. */
export function texts(says: string, { example = "[orange peel, pine]" }: FieldWords = {}) {
  return about(z.array(text(says)), { says, expects: `a list such as ${example}`, example });
}

/** true or false. */
export function yesNo(says: string, words: FieldWords = {}) {
  return about(z.boolean(), { says, expects: "true or false", example: "true", ...words });
}

/** One of a few words. */
export function choice<const Choices extends readonly [string, ...string[]]>(says: string, choices: Choices, words: FieldWords = {}) {
  const listed = choices.join(", ");
  const schema = z.string().transform((written, context): Choices[number] => {
    const found = choices.find((one) => one === written.trim());
    return found ?? refuse(context, "record/choice", { choices: listed, nearest: nearestName(written, choices) });
  });
  return about(schema, {
    says, expects: `one of ${listed}`, example: choices[0], range: listed, choices, holds: "text", ...words,
  });
}

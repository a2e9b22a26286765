import { z } from "zod";
import type { CamelCased } from "../camel-case.js";
import { about, choice, civilTime, fields, quantity, refuse, text, texts, timeZone } from "./kinds/index.js";

const address = about(
  z.string().transform((written, context) => (isWebAddress(written) ? written.trim() : refuse(context, "record/address", {}))),
  { says: "Where the site will be published; only feeds, calendars and share cards need it", expects: "a web address such as https://example.org/beer/", example: "https://example.org/beer/", holds: "text", pattern: "^https?://" },
);

function isWebAddress(written: string): boolean {
  return /^https?:\/\//u.test(written.trim()) && URL.canParse(written.trim());
}

/** shared/club.yaml */
export const clubSchema = fields("The club", {
  name: text("The club's name", { example: "Saltings Homebrewers" }).exactOptional(),
  zone: timeZone("The club's time zone: dates in records are civil time there", { default: "UTC" }).default("UTC"),
  units: choice("Which units come first on a page; the other follow in brackets", ["metric", "us"], { default: "metric" }).default("metric"),
  url: address.exactOptional(),
  altitude: quantity("length", "Height above the sea, for pressures", { example: "0 m", default: "0 m" }).exactOptional(),
  as_of: civilTime("The day the site is built for; else the clock's. Decides what is due and what is released; hides no reading", "2026-10-20 12:00").exactOptional(),
  cautions: texts("Cautions for this place, printed where brewers will see them", { example: "[The cold room has no window: open both doors]" }).exactOptional(),
});

export type Club = CamelCased<z.output<typeof clubSchema>>;

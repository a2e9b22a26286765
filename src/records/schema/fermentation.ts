import { z } from "zod";
import { about, choice, civilTime, datePattern, fields, fileName, list, number, quantity, text, timeZone } from "./kinds/index.js";

const column = (what: string, example: string) => text(`The header of the column that holds ${what}`, { example }).exactOptional();
const UNIT_SAYS = "The unit its numbers are in, where the header doesn't say";

/** How to read a log that another device wrote, so that it need not be edited. */
export const logMapping = fields("How to read a file that another device wrote", {
  file: fileName("The file, relative to the record", "probe-export.csv"),
  zone: timeZone("The time zone its times are in; else the club's", { example: "UTC" }).exactOptional(),
  time: column("the time", "Date"),
  temperature: column("the beer's temperature", "Beer temp (F)"),
  gravity: column("the gravity", "SG"),
  pressure: column("the head pressure", "psi"),
  units: fields("The units of its columns", {
    temperature: choice(UNIT_SAYS, ["C", "F", "K"]).exactOptional(),
    gravity: choice(UNIT_SAYS, ["SG", "P"]).exactOptional(),
    pressure: choice(UNIT_SAYS, ["kPa", "bar", "psi"]).exactOptional(),
  }).exactOptional(),
  dates: datePattern("The pattern its times are written in, in the Unicode field symbols; else 2026-03-18 19:00").exactOptional(),
  separator: choice("What stands between its columns", [",", ";", "tab"], { default: "," }).default(","),
  decimal: choice("What its numbers write for the decimal point", [".", ","], { default: "." }).default("."),
});

const plainLog = fileName("The log's file, relative to the record", "fermentation.csv");
const oneLog = z.union([plainLog, logMapping]);

const log = about(
  z.union([plainLog, logMapping, z.array(oneLog)]).transform((written) =>
    (Array.isArray(written) ? written : [written]).map((one) => (typeof one === "string" ? { file: one, standard: true as const } : { ...one, standard: false as const }))),
  { says: "The log of temperature, gravity and pressure: a file, or how to read one from another device; or a list of them", expects: "the name of a file such as \"fermentation.csv\", or fields with file", example: "fermentation.csv" },
);

export const fermentation = fields("How it fermented", {
  log: log.exactOptional(),
  pressure: quantity("pressure", "Head pressure held, if any (gauge); a pressure column in the log overrides it", { example: "0 kPa" }).exactOptional(),
  readings: list("Readings taken by hand", fields("One reading", {
    at: civilTime("When it was read", "2026-03-14 08:00").exactOptional(),
    gravity: quantity("gravity", "Gravity; a hydrometer's with the temperature it was read at", { example: "1.012" }).exactOptional(),
    temperature: quantity("temperature", "Temperature of the beer", { example: "19 C" }).exactOptional(),
    ph: number("pH of the beer", { low: 2, high: 8, example: "4.4" }).exactOptional(),
    diacetyl: choice("A forced test's result", ["clear", "present"]).exactOptional(),
  })).exactOptional(),
});

/** What went into the fermenter. */
export const fermenter = fields("What went into the fermenter", {
  volume: quantity("volume", "Wort in the fermenter", { example: "22.4 L" }).exactOptional(),
  gravity: quantity("gravity", "Gravity of the wort", { example: "1.0495" }).exactOptional(),
  temperature: quantity("temperature", "The wort's temperature at pitching", { example: "18 C" }).exactOptional(),
});


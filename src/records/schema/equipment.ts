import type { z } from "zod";
import type { CamelCased } from "../camel-case.js";
import { difference, fields, named, number, quantity, text, yesNo } from "./kinds/index.js";

const within = "How far a reading can be off, ±, read as a rectangular distribution";

const equipment = fields("A brewery", {
  fermenter: fields("The fermenter, with what its maker rates it for", {
    shape: text("Its shape", { example: "conical" }).exactOptional(),
    volume: quantity("volume", "What it holds when full", { example: "40 L" }).exactOptional(),
    sealed: yesNo("Whether it can be closed gas-tight").exactOptional(),
    pressure: quantity("pressure", "Rated over-pressure; leave out if unknown", { example: "100 kPa" }).exactOptional(),
    vacuum: quantity("pressure", "Rated under-pressure; leave out if unknown", { example: "20 kPa", high: 101.325 }).exactOptional(),
  }).exactOptional(),
  boil_off: quantity("rate", "Water lost in the boil", { example: "3.2 L/h" }).exactOptional(),
  readings: fields("What each instrument can be trusted to", {
    hydrometer: fields("The hydrometer", {
      within: difference("gravity", within, { example: "0.001" }).exactOptional(),
      calibrated: quantity("temperature", "The temperature it is made for", { example: "20 C", default: "20 C" }).exactOptional(),
    }).exactOptional(),
    refractometer: fields("The refractometer", {
      within: difference("gravity", within, { example: "0.2 Bx" }).exactOptional(),
      factor: number("Its wort correction: a Brix reading over the true extract", { low: 0.8, high: 1.3, example: "1.04" }).exactOptional(),
    }).exactOptional(),
    thermometer: fields("The thermometer or probe", { within: difference("temperature", within, { example: "0.3 C" }).exactOptional() }).exactOptional(),
    scale: fields("The scale", { within: difference("mass", within, { example: "1 g" }).exactOptional() }).exactOptional(),
    volume: fields("The volume marks", { within: difference("volume", within, { example: "0.25 L" }).exactOptional() }).exactOptional(),
    ph: fields("The pH meter", { within: number(within, { low: 0, high: 2, example: "0.05" }).exactOptional() }).exactOptional(),
  }).exactOptional(),
});

/** shared/equipment.yaml: vessels and instruments by name. */
export const equipmentSchema = named("Vessels and instruments, by name", { name: "name", value: equipment });

export type Equipment = CamelCased<z.output<typeof equipment>>;

import { choice, civilTime, count, fields, quantity } from "./kinds/index.js";

/** A keg, a cask, or a number of bottles filled in one go. */
export const packaged = fields("What the beer was packaged into", {
  date: civilTime("When it was packaged", "2026-03-24").exactOptional(),
  into: choice("What it was filled into", ["keg", "bottles", "cask"]).exactOptional(),
  volume: quantity("volume", "Beer in it, all of them together; never taken from the vessel's size", { example: "18.6 L" }).exactOptional(),
  count: count("How many of them", { low: 1, high: 100_000, example: "1" }).exactOptional(),
  vessel: fields("One of them", {
    volume: quantity("volume", "What it holds when full", { example: "19 L" }).exactOptional(),
    limit: quantity("pressure", "The pressure it is rated for (gauge), as stamped on it", { example: "400 kPa" }).exactOptional(),
  }).exactOptional(),
  purge: fields("How air was driven out before filling", {
    by: choice("By liquid: pushed out with gas from full; or by cycles of filling with gas and venting", ["liquid", "cycles"]).exactOptional(),
    left: quantity("volume", "The pocket of air left when pushed out by liquid", { example: "0.02 L" }).exactOptional(),
    cycles: count("How many cycles", { low: 0, high: 1000, example: "8" }).exactOptional(),
    pressure: quantity("pressure", "Pressure of each cycle (gauge)", { example: "200 kPa" }).exactOptional(),
  }).exactOptional(),
  carbonation: quantity("carbonation", "Carbonation asked for", { example: "2.4 vol" }).exactOptional(),
  measured: quantity("carbonation", "Carbonation found later", { example: "2.35 vol" }).exactOptional(),
  temperature: quantity("temperature", "What it is carbonated or served at", { example: "4 C" }).exactOptional(),
  priming: fields("Sugar for carbonation in the package", {
    sugar: choice("Which sugar", ["sucrose", "dextrose monohydrate", "dextrose anhydrous"]).exactOptional(),
    amount: quantity("mass", "What was really added, all packages together", { example: "110 g" }).exactOptional(),
  }).exactOptional(),
});

import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Wort to collect for a boil. */
export const volumeBeforeBoil = defineMethod(
  {
    id: "volume-before-boil",
    title: "Volume before the boil",
    subject: "brewhouse",
    says: "How much wort to collect so that the wanted volume is left after the boil, all at 20 °C.",
    inputs: [input.volume("V2", "volume wanted after the boil"), { symbol: "b", meaning: "boil-off", unit: "L/h", low: 0, high: 1000 }, input.hours("h", "length of the boil", { high: 24 })],
    output: { symbol: "V1", unit: "L" },
    formula: "V1 = V2 + b h",
    range: "a kettle whose boil-off is known for this volume and heat",
    source: "boil-off, solved for the volume before",
    status: "common practice",
    checks: [{ given: [24, 3, 1], gives: 27, within: 1e-9, source: "common practice: 24 L wanted, 3 L an hour boiled away" }],
  },
  (afterL: number, boilOffLPerH: number, hours: number) => afterL + boilOffLPerH * hours,
);

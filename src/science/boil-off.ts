import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Water boiled away an hour. */
export const boilOff = defineMethod(
  {
    id: "boil-off",
    title: "Boil-off",
    subject: "brewhouse",
    says: "Water boiled away an hour, from the volumes before and after, both at 20 °C.",
    inputs: [input.volume("V1", "volume before the boil"), input.volume("V2", "volume after the boil"), input.hours("h", "length of the boil", { low: 0.01, high: 24 })],
    output: { symbol: "b", unit: "L/h" },
    formula: "b = (V1 - V2) / h",
    range: "2 to 5 L/h is usual in a home kettle (common practice)",
    source: "difference of two volumes over time",
    status: "common practice",
    checks: [{ given: [27, 24, 1], gives: 3, within: 1e-9, source: "common practice: 27 L boiled to 24 L in an hour" }],
  },
  (beforeL: number, afterL: number, hours: number) => (beforeL - afterL) / hours,
  (beforeL, afterL) => (afterL > beforeL ? "volume after the boil must not be above the volume before it" : undefined),
);

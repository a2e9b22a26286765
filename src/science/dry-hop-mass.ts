import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** Hops to weigh for a dose. */
export const dryHopMass = defineMethod(
  {
    id: "dry-hop-mass",
    title: "Hops for a dose",
    subject: "dry hop",
    says: "The mass of hops that gives a dose in this much beer.",
    inputs: [input.dose("d", "dose wanted"), input.volume("V", "beer in the vessel at 20 °C")],
    output: { symbol: "m", unit: "g" },
    formula: "m = d V",
    range: "any dose",
    source: "definition",
    status: "published",
    checks: [{ given: [3.86, 117.348], gives: 453.6, within: 5, source: "Hauser, Lafontaine & Shellhammer 2019: 386 g/hL printed as 1 lb a barrel (453.6 g in 117.348 L)" }],
  },
  (doseGPerL: number, volumeL: number) => doseGPerL * volumeL,
);

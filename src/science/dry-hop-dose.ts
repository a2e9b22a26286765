import { toOwnUnit } from "../units/index.js";
import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

/** Hops over beer. */
export const dryHopDose = defineMethod(
  {
    id: "dry-hop-dose",
    title: "Dry-hop dose",
    subject: "dry hop",
    says: "Grams of hops to a litre of the beer that is in the vessel when they go in.",
    inputs: [input.massG("m", "mass of hops"), input.volume("V", "beer in the vessel at 20 °C", { low: leastAmount })],
    output: { symbol: "d", unit: "g/L" },
    formula: "d = m / V",
    range: "aroma grows little beyond about 8 g/L in a still vessel (Lafontaine & Shellhammer 2018, read through a lecture summary)",
    source: "definition",
    status: "published",
    checks: [
      { given: [toOwnUnit(1, "lb"), toOwnUnit(1, "bbl")], gives: 3.86, within: 0.04, source: "Hauser, Lafontaine & Shellhammer, J. Am. Soc. Brew. Chem. 77:188 (2019): 386 g/hL printed as 1 lb a barrel" },
      { given: [toOwnUnit(10.7, "oz"), toOwnUnit(5, "gal")], gives: 16, within: 0.08, source: "lecture summary 2019 (Shellhammer): 16 g/L printed as 10.7 oz in 5 gal" },
    ],
  },
  (massG: number, volumeL: number) => massG / volumeL,
);

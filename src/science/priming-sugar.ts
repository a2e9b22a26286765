import { CO2_GRAMS_PER_VOLUME } from "../units/index.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

export type SugarKind = "sucrose" | "dextrose monohydrate" | "dextrose anhydrous";

/** Grams of carbon dioxide a gram of sugar ferments to, by molar masses: 4 CO2 from sucrose, 2 from dextrose. */
const yields: Readonly<Record<SugarKind, number>> = {
  sucrose: (4 * 44.0095) / 342.297,
  "dextrose monohydrate": (2 * 44.0095) / 198.171,
  "dextrose anhydrous": (2 * 44.0095) / 180.156,
};

/** Grams of sugar that lift one litre by one volume, all of it fermented. */
export const primingSugars: Readonly<Record<SugarKind, number>> = {
  sucrose: CO2_GRAMS_PER_VOLUME / yields.sucrose,
  "dextrose monohydrate": CO2_GRAMS_PER_VOLUME / yields["dextrose monohydrate"],
  "dextrose anhydrous": CO2_GRAMS_PER_VOLUME / yields["dextrose anhydrous"],
};

/** Sugar to prime with. */
export const primingSugar = defineMethod(
  {
    id: "priming-sugar",
    title: "Priming sugar",
    subject: "carbonation",
    says: "Sugar that takes beer from the carbon dioxide left in it to the carbonation asked. Only for beer whose gravity is terminal: what is still to ferment comes on top, and bottles burst.",
    inputs: [
      input.volume("V", "beer to prime"),
      input.carbonation("C", "carbonation asked"),
      input.carbonation("C0", "carbonation left after fermentation"),
      { symbol: "g", meaning: "sugar for one volume", unit: "g/L", low: 3, high: 6 },
    ],
    output: { symbol: "m", unit: "g" },
    formula: "m = V (C - C0) g, with g = 3.84 (sucrose), 4.45 (dextrose monohydrate) or 4.05 (dextrose anhydrous)",
    range: "sugar that ferments completely; 3.7 g/L for glucose is in print and refers the volume to 20 °C",
    source: "stoichiometry, with 1.977 g/L for one volume of carbon dioxide at 0 °C (real gas, from memory)",
    status: "published",
    checks: [
      { given: [19, 2.4, 0.861, 4.45], gives: 130, within: 3, source: "stoichiometry by hand: (2.4 - 0.861) × 1.977 × 19 / 0.444" },
      { given: [1, 1, 0, 4.05], gives: 3.7, within: 0.36, source: "Draper's priming article prints 3.7 g/L of glucose a volume, of gas at about 20 °C: 8 % below the definition at 0 °C" },
    ],
  },
  (beerL: number, askedVol: number, residualVol: number, gramsPerLitreVolume: number) => beerL * (askedVol - residualVol) * gramsPerLitreVolume,
  (_beer, askedVol, residualVol) => (askedVol < residualVol ? "the beer already holds more carbon dioxide than is asked" : undefined),
);

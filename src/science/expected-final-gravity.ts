import { gravityFromPlato } from "./gravity-from-plato.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";
import { platoFromGravity } from "./plato-from-gravity.js";

/** Gravity a wort ferments to at a given attenuation. */
export const expectedFinalGravity = defineMethod(
  {
    id: "expected-final-gravity",
    title: "Expected final gravity",
    subject: "alcohol",
    says: "The gravity a wort ends at when the yeast leaves a given apparent attenuation.",
    inputs: [input.gravity("OG", "original gravity", { low: 1 }), input.percent("ADF", "apparent attenuation")],
    output: { symbol: "FG", unit: "SG" },
    formula: "FG = S(P(OG) (1 - ADF/100)), with plato-from-gravity and its inverse",
    range: "as good as the attenuation it is given",
    source: "apparent degree of fermentation, ASBC Beer-6 as given by Speers 2015, solved for the final gravity",
    status: "published",
    checks: [{ given: [1.08, 73.72], gives: 1.02, within: 0.0001, source: "1.080 to 1.020 is 19.331 to 5.081 P by the ASBC cubic: 73.72 %" }],
  },
  (originalSg: number, attenuationPercent: number) => gravityFromPlato(platoFromGravity(originalSg) * (1 - attenuationPercent / 100)),
);

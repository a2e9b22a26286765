import { input } from "./input.js";
import { defineMethod } from "./method.js";

const tableSource = "USDA File Code 135-A-50, sucrose conversion table: printed row";

/**
 * The ASBC and NBS cubics cross here, at 19.1 P; changing over at the crossing leaves no step,
 * which a derivative would see. The two agree within 0.002 P from 0 to 20 P.
 */
const crossingSg = 1.0789700174630708;

/** Apparent extract from specific gravity 20/20. */
export const platoFromGravity = defineMethod(
  {
    id: "plato-from-gravity",
    title: "Extract from specific gravity",
    subject: "gravity",
    says: "The extract in % by weight (degrees Plato) that a specific gravity at 20 °C over water at 20 °C stands for: the ASBC table's cubic up to 19.1 P, the NBS sucrose table's beyond.",
    inputs: [input.gravity("S", "specific gravity 20/20")],
    output: { symbol: "P", unit: "P" },
    formula: "P = 135.997 S^3 - 630.272 S^2 + 1111.14 S - 616.868 up to S = 1.07897, then P = 182.4601 S^3 - 775.6821 S^2 + 1262.7794 S - 669.5622",
    range: "1.000 to 1.179; below 1.000, where fermented-out beer reads, the cubic is carried on and no longer rests on a table",
    source: "ASBC extract cubic and NBS sucrose table cubic, both as given in a reference article on degrees Brix; the original Plato tables were not seen",
    status: "published",
    checks: [
      { given: [1.0149], gives: 3.8, within: 0.008, source: tableSource },
      { given: [1.01569], gives: 4.0, within: 0.008, source: tableSource },
      { given: [1.03058], gives: 7.7, within: 0.008, source: tableSource },
      { given: [1.03139], gives: 7.9, within: 0.008, source: tableSource },
      { given: [1.1], gives: 23.774, within: 0.002, source: "NBS cubic worked out apart; checks the arithmetic, not the table" },
    ],
  },
  (gravitySg: number) => (gravitySg <= crossingSg ? asbcPlato(gravitySg) : nbsBrix(gravitySg)),
);

function asbcPlato(sg: number): number {
  return ((135.997 * sg - 630.272) * sg + 1111.14) * sg - 616.868;
}

function nbsBrix(sg: number): number {
  return ((182.4601 * sg - 775.6821) * sg + 1262.7794) * sg - 669.5622;
}

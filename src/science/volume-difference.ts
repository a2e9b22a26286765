import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** One volume less another. */
export const volumeDifference = defineMethod(
  {
    id: "volume-difference",
    title: "Difference of volumes",
    subject: "balance",
    says: "What went in less what is known to have come out: a loss, or the litres the ledger can't account for. Below zero means that more was read coming out than went in.",
    inputs: [input.volume("V0", "volume that went in"), input.volume("V", "volumes that came out")],
    output: { symbol: "ΔV", unit: "L" },
    formula: "ΔV = V0 - V",
    range: "volumes brought to 20 °C",
    source: "definition",
    status: "common practice",
    checks: [{ given: [22, 19], gives: 3, within: 1e-9, source: "definition by hand: 22 L in, 19 L out" }],
  },
  (wholeL: number, partL: number) => wholeL - partL,
);

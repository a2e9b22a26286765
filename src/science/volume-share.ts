import { input, leastAmount } from "./input.js";
import { defineMethod } from "./method.js";

/** One volume as a share of another. */
export const volumeShare = defineMethod(
  {
    id: "volume-share",
    title: "Share of the volume",
    subject: "balance",
    says: "What came through, of what went in: transfer efficiency from the volume transferred, package yield from the volume packaged. Both at 20 °C.",
    inputs: [input.volume("V", "volume that came through"), input.volume("V0", "volume that went in", { low: leastAmount })],
    output: { symbol: "s", unit: "%" },
    formula: "s = 100 V / V0",
    range: "volumes brought to 20 °C; above 100 % means a reading is wrong",
    source: "definition",
    status: "common practice",
    checks: [{ given: [19, 20], gives: 95, within: 1e-9, source: "definition by hand: 19 of 20 L" }],
  },
  (partL: number, wholeL: number) => (100 * partL) / wholeL,
);

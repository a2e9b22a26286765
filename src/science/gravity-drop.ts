import { input } from "./input.js";
import { defineMethod } from "./method.js";

/** How far gravity fell between two readings. */
export const gravityDrop = defineMethod(
  {
    id: "gravity-drop",
    title: "Fall in gravity",
    subject: "gravity",
    says: "One gravity less a later one. After a dry hop a fall beyond the readings' own uncertainty is called hop creep.",
    inputs: [input.gravity("S1", "gravity before"), input.gravity("S2", "gravity after")],
    output: { symbol: "ΔS", unit: "SG" },
    formula: "ΔS = S1 - S2",
    range: "any two readings brought to 20/20; below zero when gravity rose",
    source: "difference of two readings",
    status: "common practice",
    checks: [{ given: [1.012, 1.01], gives: 0.002, within: 1e-9, source: "common practice: two points from 1.012 to 1.010" }],
  },
  (beforeSg: number, afterSg: number) => beforeSg - afterSg,
);

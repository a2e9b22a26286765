import { type SourceStatus } from "./method-about.js";

export type HopForm = "pellet" | "cone" | "concentrate";
export type HopHeld = "loose" | "bag";

/** Beer a kilogram of hops keeps, as a range. */
export interface HopLossRange {
  readonly lowLPerKg: number;
  readonly highLPerKg: number;
  readonly source: string;
  readonly status: SourceStatus;
}

const loose: Readonly<Record<HopForm, HopLossRange>> = {
  pellet: {
    lowLPerKg: 7,
    highLPerKg: 8.35,
    source: "an equipment vendor's article for 7 to 8 L/kg, and the trade's rule of a US gallon a pound (8.35 L/kg)",
    status: "published",
  },
  cone: { lowLPerKg: 10, highLPerKg: 15, source: "common practice, cones not pressed", status: "common practice" },
  concentrate: { lowLPerKg: 3.5, highLPerKg: 4.2, source: "common practice: about half of what pellets keep", status: "common practice" },
};

const pressedBag = { lowLPerKg: 0.8, source: "one brewer's measurement of a weighted bag (0.8 L/kg)" };

/**
 * Beer lost to a kilogram of hops. A bag may be pressed out, so its range reaches lower; whether it was isn't recorded.
 *
 * @param form how the hops were made up
 * @param held loose in the beer or in a bag
 * @returns litres a kilogram, low and high, with the source of both ends
 */
export function dryHopLoss(form: HopForm, held: HopHeld = "loose"): HopLossRange {
  const range = loose[form];
  if (held === "loose") return range;
  return { ...range, lowLPerKg: pressedBag.lowLPerKg, source: `${pressedBag.source}; ${range.source}`, status: "common practice" };
}

import { defineMethod } from "./method.js";

const clock = (symbol: string, meaning: string) => ({ symbol, meaning, unit: "h", low: -1e6, high: 1e6 });

/** Hours between two events. */
export const elapsedTime = defineMethod(
  {
    id: "elapsed-time",
    title: "Elapsed time",
    subject: "log",
    says: "The hours that really passed between two events, a change of the clocks counted.",
    inputs: [clock("t1", "when it began"), clock("t2", "when it ended")],
    output: { symbol: "Δt", unit: "h" },
    formula: "Δt = t2 - t1",
    range: "a date without a time is taken as noon",
    source: "definition",
    status: "common practice",
    checks: [{ given: [24, 120], gives: 96, within: 1e-9, source: "definition by hand: four days" }],
  },
  (fromHours: number, toHours: number) => toHours - fromHours,
  (fromHours, toHours) => (toHours < fromHours ? "the end must not be before the beginning" : undefined),
);

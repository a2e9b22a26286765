import { figureEntry } from "./figure-table.js";
import type { BatchReport } from "./types.js";

/** What a season tells of each batch: a figure, or what follows from one and its plan. */
export interface Measured {
  readonly value: number;
  readonly plusMinus?: number;
}

interface Measure {
  readonly title: string;
  readonly unit: string;
  readonly reportOf: (batch: BatchReport) => Measured | undefined;
  /** Why a batch has none. */
  readonly whyNot: (batch: BatchReport) => string;
}

export const GRAVITY_OFF_PLAN = "original-gravity-off-plan";

/** @throws RangeError for an id that is neither a figure nor known here */
export function measureOf(id: string): Measure {
  if (id !== GRAVITY_OFF_PLAN) return { ...figureEntry(id), reportOf: ({ figures }) => figures[id], whyNot: ({ missing }) => missing[id] ?? "not measured" };
  return {
    title: "Original gravity less its plan", unit: "SG",
    reportOf: ({ figures, planned }) => {
      const [actual, plan] = [figures["original-gravity"], planned["original-gravity"]];
      if (actual === undefined || plan === undefined) return undefined;
      return { value: actual.value - plan.value, ...(actual.plusMinus === undefined ? {} : { plusMinus: actual.plusMinus }) };
    },
    whyNot: ({ figures, missing }) => figures["original-gravity"] === undefined ? missing["original-gravity"] ?? "not measured" : "no plan for it is recorded",
  };
}

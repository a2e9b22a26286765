import { formatNumber } from "../units/index.js";
import { figureEntry } from "./figure-table.js";
import type { FigureReport, PlannedReport, PlanRow } from "./types.js";

/** Figures that only restate the recipe, and so can't differ from it. */
const RESTATED = new Set(["potential-extract"]);

/** Each planned figure beside what the readings gave, and whether the difference is more than they can be off by. */
export function planRows(planned: Readonly<Record<string, PlannedReport>>, figures: Readonly<Record<string, FigureReport>>): PlanRow[] {
  return Object.entries(planned).filter(([id]) => !RESTATED.has(id)).map(([id, plan]) => {
    const { title } = figureEntry(id);
    const actual = figures[id];
    if (actual === undefined) return { figure: id, title, planned: plan, verdict: "open", says: "not read yet" };
    const difference = differenceFrom(plan, actual.value);
    const within = Math.hypot(actual.plusMinus ?? 0, actual.model ?? 0);
    const differs = Math.abs(difference) > within + ROUNDING;
    return { figure: id, title, planned: plan, actual, difference, verdict: differs ? "differs" : "as planned", says: sayDifference(difference, actual.unit, within, differs) };
  });
}

const ROUNDING = 1e-9;

/** How far outside the plan, 0 inside its band. */
function differenceFrom(plan: PlannedReport, value: number): number {
  const low = plan.low ?? plan.value;
  const high = plan.high ?? plan.value;
  if (value < low) return value - low;
  return value > high ? value - high : 0;
}

function sayDifference(difference: number, unit: string, within: number, differs: boolean): string {
  const { value, unit: printed } = formatNumber(Math.abs(difference), unit, within > 0 ? within : undefined);
  if (Number(value) === 0) return "as planned";
  const amount = `${value} ${printed}`.trim();
  const side = difference > 0 ? "above" : "below";
  return differs ? `${amount} ${side} the plan` : `${amount} ${side}, within what the readings can be off by`;
}

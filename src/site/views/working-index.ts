import type { BatchReport, WorkingStep } from "../../report/index.js";

/**
 * Which steps of a working are figures with a working of their own: told once, linked from everywhere else.
 * A step inside a working may be such a figure without bearing its id; then method, value and unit give it away.
 */
export interface WorkingIndex {
  /** The figure that a step is, when its working stands elsewhere than in `inside`. */
  readonly figureOf: (step: WorkingStep, inside: string) => string | undefined;
}

export function indexWorking(report: BatchReport): WorkingIndex {
  const told = new Set(report.working.map(({ id }) => id));
  const bySignature = new Map(report.working.map(({ id, step }) => [signature(step), id]));
  return {
    figureOf: (step, inside) => {
      const figure = step.kind === "figure" && told.has(step.label) ? step.label : bySignature.get(signature(step));
      return figure === inside || step.kind === "reading" || step.kind === "assumed" ? undefined : figure;
    },
  };
}

function signature({ method = "", value, unit }: WorkingStep): string {
  return `${method} ${value} ${unit}`;
}

/** Whether a step only adds up its inputs: parts in its own unit whose values sum to its own. */
export function isSum({ value, unit, inputs = [] }: WorkingStep): boolean {
  const sum = inputs.reduce((total, input) => total + input.value, 0);
  return inputs.length > 1 && inputs.every((input) => input.kind === "step" && input.unit === unit) && Math.abs(sum - value) <= 1e-9 * Math.abs(value);
}

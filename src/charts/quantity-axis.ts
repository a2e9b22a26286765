import type { Scale } from "./ticks.js";

/** The x channel of a chart of rows: a quantity, with its axis under the plot. A grid stays away where it would run through words. */
export function quantityX(field: string, title: string, style: { readonly decimals: number; readonly hasGrid: boolean }) {
  return {
    field, type: "quantitative" as const,
    scale: { domain: [{ expr: "low" }, { expr: "high" }], nice: false as const, zero: false },
    axis: {
      title, titleAnchor: "start" as const, titlePadding: 6, values: { expr: "ticks" }, format: `.${style.decimals}f`, grid: style.hasGrid, domain: !style.hasGrid, ticks: !style.hasGrid,
    },
  };
}

/** What `quantityX` takes its ends and ticks from. */
export function scaleParams(scale: Scale): { readonly low: number; readonly high: number; readonly ticks: readonly number[] } {
  return { low: scale.low, high: scale.high, ticks: scale.ticks };
}

/** "Dose, g/L"; the name alone where it has no unit. */
export function axisTitle(name: string, unit: string): string {
  return unit === "" ? name : `${name}, ${unit}`;
}

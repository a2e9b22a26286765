import type { TopLevelSpec } from "vega-lite";
import type { UnitSystem } from "../units/index.js";

/** One drawing of a chart at one width; the viewBox is `width` × `height`, px. */
export interface Drawing {
  readonly spec: TopLevelSpec;
  readonly width: number;
  readonly height: number;
}

/** What a chart draws, in numbers. Cells are rounded text; "" means not measured. */
export interface ChartTable {
  readonly columns: readonly { readonly title: string; readonly unit?: string }[];
  readonly rows: readonly (readonly string[])[];
}

/** A chart before it is drawn: plain JSON, so that its hash says whether it must be drawn again. */
export interface Chart {
  /** Kebab-case, unique on a page. */
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  /** States the trend; it stands in for the drawing where the drawing can't be seen. */
  readonly description: string;
  readonly table: ChartTable;
  /** Like `narrow`, drawn up each time it is asked for: a season's lines would fill the memory, and a chart that is kept isn't asked. */
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

export interface ChartOptions {
  /** In place of the chart's own id, where one kind appears twice on a page. */
  readonly id?: string;
  /** Units of axes, labels and table; metric where not given. */
  readonly system?: UnitSystem;
}

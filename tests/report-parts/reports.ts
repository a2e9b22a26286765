import type { AttributeReport, BatchReport, FigureReport, TastingReport } from "../../src/report/types.js";

/** A figure, exact where no half-width is given. */
export function figure(value: number, unit: string, plusMinus?: number): FigureReport {
  return { value, unit, basis: "measured", method: "direct-reading", from: [], ...(plusMinus === undefined ? {} : { plusMinus }) };
}

/** A batch report that holds nothing but its name, and what a test adds. */
export function reportOf(batch: string, fields: Partial<BatchReport> = {}): BatchReport {
  return {
    batch, slug: batch.toLowerCase(), title: `Pale ${batch}`, status: "packaged", brewed: "2026-03-07", file: `batches/${batch.toLowerCase()}.md`,
    summary: "", figures: {}, missing: {}, planned: {}, checks: [], tastings: [], ledger: [], dryHops: [], packages: [], styleRows: [],
    recipe: { grist: [], kettleHops: [], dryHops: [], water: [], mash: [], additions: [] },
    next: [], planRows: [], outlook: [], working: [], photos: [], notes: "", assumptions: [],
    ...fields,
  };
}

/** Brew dates a fortnight apart, the first on 2026-01-03. */
export function brewedOn(place: number): string {
  return new Date(Date.UTC(2026, 0, 3 + 14 * place)).toISOString().slice(0, 10);
}

/** A season whose batches carry a dose and a total loss each. */
export function seasonOf(points: readonly (readonly [dose: number, loss: number])[]): BatchReport[] {
  return points.map(([dose, loss], index) => reportOf(`B-${String(index + 1).padStart(2, "0")}`, {
    brewed: brewedOn(index), figures: { "dry-hop-dose": figure(dose, "g/L"), "loss-total": figure(loss, "L") },
  }));
}

/** A tasting in which each taster's difference in one attribute is given. */
export function liftTasting(attribute: string, differences: readonly number[], fields: Partial<AttributeReport> = {}): TastingReport {
  const lift = differences.reduce((sum, difference) => sum + difference, 0) / differences.length;
  return {
    name: "Before and after", samples: { before: "control", after: "keg" }, says: [], differs: [],
    attributes: [{
      attribute, primary: false, tasters: differences.length, meanBefore: 3, meanAfter: 3 + lift, lift,
      pairs: differences.map((difference, index) => [`T${index + 1}`, 3, 3 + difference] as const),
      ...fields,
    }],
  };
}

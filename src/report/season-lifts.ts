import type { AttributeReport, BatchReport, TastingReport } from "./types.js";

/** How far one attribute moved from before to after in one batch. */
export interface BatchLift {
  readonly batch: BatchReport;
  readonly attribute: AttributeReport;
}

/**
 * The lift of an attribute in each batch that has one. Each batch counts once, by its first tasting
 * that scored the attribute; tastings against another batch say nothing of this one's dry hop.
 *
 * @param batches in brew order
 */
export function liftsOf(attribute: string, batches: readonly BatchReport[]): BatchLift[] {
  return batches.flatMap((batch) => {
    const scored = ownTastings(batch).flatMap(({ attributes }) => attributes.filter((one) => one.attribute === attribute));
    return scored[0] === undefined ? [] : [{ batch, attribute: scored[0] }];
  });
}

/** Tastings that compare samples of the batch itself. */
export function ownTastings({ batch, tastings }: BatchReport): readonly TastingReport[] {
  return tastings.filter(({ samples }) => Object.values(samples).every((drawn) => !drawn.includes("/") || drawn.startsWith(`${batch}/`)));
}

/** Attributes scored in the season: in most batches first, then those that were most often meant to decide, then by name. */
export function scoredAttributes(batches: readonly BatchReport[]): string[] {
  const names = new Set(batches.flatMap((batch) => ownTastings(batch).flatMap(({ attributes }) => attributes.map(({ attribute }) => attribute))));
  const ranked = [...names].map((name) => {
    const lifts = liftsOf(name, batches);
    return { name, batches: lifts.length, primary: lifts.filter(({ attribute }) => attribute.primary).length };
  });
  return ranked.sort((one, other) => other.batches - one.batches || other.primary - one.primary || (one.name < other.name ? -1 : 1)).map(({ name }) => name);
}

import type { BatchReport, PlannedDrink, PlannedSample } from "./types.js";

/** Small, and enough for a second sip: 50 to 100 mL are usual (common practice). */
const POUR_ML = 50;
/** Of ethanol at 20 °C, g/mL (OIML R 22; from memory). */
const ETHANOL_DENSITY = 0.7893;

/**
 * What one taster drinks if nothing is spat out, by the strongest of the samples.
 *
 * @param reportOf a batch of the log by its number
 */
export function plannedDrink(cups: number, samples: readonly PlannedSample[], own: string, reportOf: (batch: string) => BatchReport | undefined): PlannedDrink {
  const batches = new Set(samples.map(({ drawnFrom }) => drawnFrom.includes("/") ? drawnFrom.slice(0, drawnFrom.lastIndexOf("/")) : own));
  const strengths = [...batches].map((batch) => strengthOf(batch, reportOf(batch)));
  const known = strengths.filter((strength) => strength !== undefined).toSorted((a, b) => b.percent - a.percent);
  const [abv] = known.length === strengths.length ? known : [];
  return { pourMl: POUR_ML, cups, ...(abv === undefined ? {} : { abv, alcoholG: (cups * POUR_ML * abv.percent * ETHANOL_DENSITY) / 100 }) };
}

function strengthOf(batch: string, report: BatchReport | undefined): PlannedDrink["abv"] {
  const measured = report?.figures["abv"];
  if (measured !== undefined) return { percent: measured.value, batch, basis: measured.basis };
  const planned = report?.planned["abv"];
  return planned === undefined ? undefined : { percent: planned.value, batch, basis: "planned" };
}

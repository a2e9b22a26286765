import type { BatchRecord, Log } from "../records/index.js";
import type { PlannedSample } from "./types.js";

/** What is in the beers poured, as far as the records say, and what was declared of them: to be told before anyone drinks. */
export function contentsOf(samples: readonly PlannedSample[], own: BatchRecord, { batches }: Log): string[] {
  const poured = new Set(samples.map(({ drawnFrom }) => drawnFrom.slice(0, Math.max(0, drawnFrom.lastIndexOf("/")))));
  const records = batches.filter(({ data }) => data.batch === own.data.batch || poured.has(data.batch));
  return [...new Set(records.flatMap(({ data }) => [
    ...(data.grist ?? []).flatMap(({ malt }) => malt ?? []),
    ...[...data.hops ?? [], ...data.dryHops ?? []].flatMap(({ hop }) => hop ?? []),
    ...(data.additions ?? []).flatMap(({ what }) => what ?? []),
    ...(data.enter ?? []).flatMap(({ allergens = [], declare = [] }) => [...allergens, ...declare]),
  ]))];
}

import type { Batch } from "../records/index.js";

/** Names for the parts of a batch record: each is the schema's own type. */
export type GristLine = NonNullable<Batch["grist"]>[number];
export type KettleHop = NonNullable<Batch["hops"]>[number];
export type DryHop = NonNullable<Batch["dryHops"]>[number];
export type PackageEntry = NonNullable<Batch["package"]>[number];
export type Transfer = NonNullable<Batch["transfer"]>[number];

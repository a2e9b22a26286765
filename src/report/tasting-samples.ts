import type { Batch } from "../records/index.js";
import { capitalised, listed } from "./season-words.js";
import { keptSampleOf, visibleDifferences } from "./tasting-history.js";
import type { TastingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Which sample stands as "before" and which as "after", by the names the record gave them. */
export interface Roles {
  readonly before: string;
  readonly after: string;
}

/** The samples named before and after, else the first and second as recorded. */
export function tastingRoles({ samples = [] }: Tasting): Roles {
  const names = samples.map(({ sample }) => sample);
  const before = names.includes("before") ? "before" : names.find((name) => name !== "after") ?? "before";
  const after = names.includes("after") ? "after" : names.find((name) => name !== before) ?? "after";
  return { before, after };
}

/** Where a sample was drawn from; the batch's own number before it says nothing more. */
function drawnFrom({ samples = [] }: Tasting, name: string, ownBatch: string): string | undefined {
  const value = samples.find(({ sample }) => sample === name)?.value;
  return value?.startsWith(`${ownBatch}/`) === true ? value.slice(ownBatch.length + 1) : value;
}

/**
 * Whether the samples can be told apart by what is tested alone: what the record says differed, what
 * it shows of how they were kept, and what it doesn't say.
 */
export function tastingSamples(batch: Batch, tasting: Tasting, roles: Roles): Pick<TastingReport, "differs" | "comparable" | "reservation" | "cautions"> {
  const drawn = [roles.before, roles.after].map((name) => drawnFrom(tasting, name, batch.batch));
  const visible = visibleDifferences(batch, tasting, drawn);
  const recorded = [...tasting.differs ?? [], ...otherBatch(drawn)];
  const reservation = reservationOf(tasting, recorded, visible);
  const cautions = keptCautions(batch, tasting, roles);
  return {
    differs: [
      ...recorded.map((difference) => `${capitalised(difference)} also differed.`),
      ...visible,
      ...(tasting.differs === undefined ? ["Not recorded: what else differed between the samples."] : []),
    ],
    comparable: recorded.length > 0 ? "differs" : tasting.differs === undefined ? "not recorded" : "nothing else",
    ...(reservation === undefined ? {} : { reservation }),
    ...(cautions.length === 0 ? {} : { cautions }),
  };
}

const KEPT_CAUTION =
  "A sample of live beer that is held back can go on fermenting, and a closed bottle of it can burst: keep it cold, in a bottle rated for pressure, and open it away from the face.";

/** A sample of another batch differs in all that the two batches differ in. */
function otherBatch(drawn: readonly (string | undefined)[]): string[] {
  const batches = drawn.map((source) => source?.includes("/") ? source.slice(0, source.lastIndexOf("/")) : "");
  return new Set(batches).size < 2 ? [] : [`all that ${otherName(batches.find((name) => name !== "") ?? "")} differs in`];
}

/** What the record already shows while the tasting is still to come: what it says differs, and how the samples come to the glass. */
export function differencesToCome(batch: Batch, tasting: Tasting, roles: Roles): string[] {
  const drawn = [roles.before, roles.after].map((name) => drawnFrom(tasting, name, batch.batch));
  const recorded = [...tasting.differs ?? [], ...otherBatch(drawn)];
  return [...recorded.map((difference) => `They differ in ${difference}.`), ...visibleDifferences(batch, tasting, drawn)];
}

/** Whether one of the samples was held back. */
export function keptCautions(batch: Batch, tasting: Tasting, roles: Roles): string[] {
  const drawn = [roles.before, roles.after].map((name) => drawnFrom(tasting, name, batch.batch));
  return drawn.some((source) => keptSampleOf(batch, source) !== undefined) ? [KEPT_CAUTION] : [];
}

function reservationOf({ differs }: Tasting, recorded: readonly string[], visible: readonly string[]): string | undefined {
  if (recorded.length > 0) return `the samples also differed in ${listed(recorded)}`;
  if (differs === undefined) return "what else differed between the samples isn't recorded";
  return visible.length > 0 ? "the samples weren't kept alike" : undefined;
}

/** A batch that isn't published stands without its number. */
function otherName(batch: string): string {
  return batch.startsWith("(") ? "another batch" : `batch ${batch}`;
}

import type { Batch, BatchRecord, Log } from "../records/index.js";
import { listed } from "./season-words.js";
import type { PlannedSample } from "./types.js";

export type Tasting = NonNullable<Batch["tastings"]>[number];

/** How many are invited where the record doesn't say. */
const USUAL_TASTERS = 8;
/** More than these can't be put in balanced orders; fewer is wiser. */
const MOST_SAMPLES = 12;
const MOST_ATTRIBUTES = 6;

/** A tasting with nothing left open, and sentences on what was filled in. */
export interface SettledTasting {
  readonly tasters: number;
  readonly asked: "difference" | "similarity";
  readonly samples: readonly PlannedSample[];
  /** To be scored, the one that decides first. */
  readonly attributes: readonly string[];
  readonly filledIn: readonly string[];
}

/** Fills in what a planned tasting leaves open, from the aim and from what was held back. */
export function settledTasting(record: BatchRecord, tasting: Tasting, log: Log): SettledTasting {
  const samples = samplesOf(record, tasting, log);
  const attributes = attributesOf(record.data.aim);
  return {
    tasters: Math.max(1, tasting.tasters ?? USUAL_TASTERS),
    asked: tasting.asked ?? "difference",
    samples: samples.samples.slice(0, MOST_SAMPLES),
    attributes: attributes.slice(0, MOST_ATTRIBUTES),
    filledIn: [
      ...(tasting.tasters === undefined ? [`The record doesn't say how many will taste: ${USUAL_TASTERS} are taken. Write tasters: and run this again.`] : []),
      ...(tasting.asked === undefined ? ["The record doesn't say what is asked: whether there is a difference is taken."] : []),
      ...samples.filledIn,
      ...(samples.samples.length > MOST_SAMPLES ? [`Only the first ${MOST_SAMPLES} samples are served: more can't be told apart at one sitting.`] : []),
      ...(attributes.length === 0 ? ["The record has no aim, so no attribute is asked about. Written under aim: before the tasting, it makes the tasting far sharper."] : []),
      ...(attributes.length > MOST_ATTRIBUTES ? [`Only the first ${MOST_ATTRIBUTES} attributes are asked about (${listed(attributes.slice(0, MOST_ATTRIBUTES))}): every further one tires the tasters and weakens the rest.`] : []),
    ],
  };
}

function attributesOf(aim: Batch["aim"]): string[] {
  if (aim === undefined) return [];
  return [...new Set([...aim.primary === undefined ? [] : [aim.primary], ...aim.raise ?? [], ...aim.lower ?? [], ...aim.hold ?? []])];
}

interface FoundSamples {
  readonly samples: readonly PlannedSample[];
  readonly filledIn: readonly string[];
}

function samplesOf(record: BatchRecord, { samples = [] }: Tasting, log: Log): FoundSamples {
  if (samples.length > 1) return { samples: samples.map(({ sample, value }) => ({ name: sample, drawnFrom: value })), filledIn: [] };
  const after = record.data.package?.find(({ into }) => into !== undefined)?.into ?? "keg";
  const before = earlierSample(record, log);
  return {
    samples: [{ name: "before", drawnFrom: before ?? "a sample to be named" }, { name: "after", drawnFrom: after }],
    filledIn: [before === undefined
      ? "The record holds back no sample and has no batch to compare with: what is poured as \"before\" must be settled first, and written under samples:."
      : `The record doesn't say what is poured: ${before} as "before" and ${after} as "after" are taken.`],
  };
}

/** A sample of this batch that was held back, else the package of the batch it is compared with. */
function earlierSample({ data }: BatchRecord, { batches }: Log): string | undefined {
  const kept = data.samples?.find((sample) => sample.kept !== undefined)?.kept;
  if (kept !== undefined) return kept;
  const earlier = batches.map((other) => other.data).filter(({ batch, brewed }) => batch !== data.batch && brewed.text < data.brewed.text);
  const before = data.repeats === undefined
    ? earlier.findLast(({ series }) => series !== undefined && series === data.series)
    : earlier.find(({ batch }) => batch === data.repeats);
  return before === undefined ? undefined : `${before.batch}/${before.package?.find(({ into }) => into !== undefined)?.into ?? "keg"}`;
}

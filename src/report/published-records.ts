import type { Batch, BatchRecord, Log } from "../records/index.js";

/** Stands where a record names a batch that isn't published. */
const UNNAMED = "(not published)";

/**
 * The records to publish, in the log's order. Where one says that its yeast or a tasting's sample
 * came from a batch that isn't published, it no longer says from which. (What it `repeats` stays:
 * no report is written of a batch that isn't there to compare with.)
 */
export function publishedRecords({ batches }: Log): BatchRecord[] {
  const hidden = batches.filter(({ data }) => !data.publish).map(({ data }) => data.batch);
  return batches.filter(({ data }) => data.publish).map((record) => (namesAny(record.data, hidden) ? unnamed(record, hidden) : record));
}

const kept = new WeakMap<BatchRecord, { readonly hidden: string; readonly record: BatchRecord }>();

/** The same copy again while neither the record nor what is hidden has changed. */
function unnamed(record: BatchRecord, hidden: readonly string[]): BatchRecord {
  const name = JSON.stringify(hidden);
  const held = kept.get(record);
  if (held?.hidden === name) return held.record;
  const copy = { ...record, data: withoutNames(record.data, hidden) };
  kept.set(record, { hidden: name, record: copy });
  return copy;
}

function namesAny({ yeast, tastings = [] }: Batch, hidden: readonly string[]): boolean {
  return mentions(yeast?.from, hidden)
    || tastings.some(({ samples = [] }) => samples.some(({ value }) => hidden.includes(batchOf(value))));
}

function withoutNames(batch: Batch, hidden: readonly string[]): Batch {
  const { yeast, tastings, ...rest } = batch;
  return {
    ...rest,
    ...(yeast === undefined ? {} : { yeast: mentions(yeast.from, hidden) ? withoutFrom(yeast) : yeast }),
    ...(tastings === undefined ? {} : {
      tastings: tastings.map((tasting) => tasting.samples === undefined ? tasting : {
        ...tasting, samples: tasting.samples.map((sample) => hidden.includes(batchOf(sample.value)) ? { ...sample, value: `${UNNAMED}/sample` } : sample),
      }),
    }),
  };
}

function withoutFrom({ from: _from, ...yeast }: NonNullable<Batch["yeast"]>): NonNullable<Batch["yeast"]> {
  return yeast;
}

/** `TP-02` of `TP-02/keg`; empty for a sample of the batch itself. */
function batchOf(source: string): string {
  return source.slice(0, Math.max(0, source.lastIndexOf("/")));
}

/** Whether a text names one of the batches, alone or among other words. */
function mentions(text: string | undefined, batches: readonly string[]): boolean {
  const words = wordsOf(text ?? "");
  return batches.some((batch) => words.includes(wordsOf(batch)));
}

function wordsOf(text: string): string {
  return ` ${text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, " ").trim()} `;
}

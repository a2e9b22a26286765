import type { Batch, BatchRecord, RankRow, ScoreRow, TastingRows } from "../../src/records/index.js";
import { parseQuantity, type Quantity, type QuantityKind } from "../../src/units/index.js";

export type Tasting = NonNullable<Batch["tastings"]>[number];

/** What a brewer would have written: `q("4.60 kg", "mass")`. */
export function q<K extends QuantityKind>(text: string, kind: K): Quantity<K> {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text} is no ${kind}`);
  return parsed.quantity;
}

/** `at("2026-03-18 19:00")` */
export function at(text: string): { text: string; date: string; time?: string } {
  const [date = "", time] = text.split(" ");
  return { text, date, ...(time === undefined ? {} : { time }) };
}

/** A batch with its required fields only, and what a test adds. */
export function batchOf(fields: Partial<Batch> = {}): Batch {
  return { title: "Tideline Pale, third go", batch: "TP-03", brewed: at("2026-03-07"), publish: true, ...fields };
}

export function recordOf(data: Batch, tastings: readonly TastingRows[] = []): BatchRecord {
  return { file: "batches/tp-03.md", slug: "tp-03", data, body: "", bodyLine: 1, logs: [], photos: [], tastings, placeOf: () => undefined };
}

/** A tasting of the kept control against the keg, with what a test adds. */
export function tastingOf(fields: Partial<Tasting> = {}): Tasting {
  return {
    name: "Before and after the dry hop", date: at("2026-04-02"), public: true, differs: [],
    samples: [{ sample: "before", value: "control" }, { sample: "after", value: "keg" }],
    ...fields,
  };
}

/** Scores of one attribute: before 0-based so that `after − before` is the difference asked for. */
export function scoresOf(attribute: string, differences: readonly number[], before = 3): ScoreRow[] {
  return differences.flatMap((difference, index) => [
    { taster: `T${index + 1}`, sample: "before", attribute, score: before, serving: 1 },
    { taster: `T${index + 1}`, sample: "after", attribute, score: before + difference, serving: 1 },
  ]);
}

/** One row of ranks a taster, in the order of the samples. */
export function ranksOf(samples: readonly string[], rows: readonly (readonly number[])[]): RankRow[] {
  return rows.flatMap((row, taster) => samples.map((sample, index) => ({ taster: `T${taster + 1}`, sample, rank: row[index] ?? 0 })));
}

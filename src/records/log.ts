import type { Batch, Club, Equipment, HopDefaults, MaltDefaults, StyleTargets } from "./schema/index.js";
import type { CompetitionRecord } from "./competition-record.js";

/** Where a default comes from, for the page that uses it. */
export interface Sourced {
  /** The log's own file, or the published source with how far it has been seen. */
  readonly source: string;
  readonly status: "own" | "published" | "common practice" | "from memory";
}

export type Style = StyleTargets & Sourced;
export type Hop = HopDefaults & Sourced;
export type Malt = MaltDefaults & Sourced;

/** One photo that the notes show. */
export interface Photo {
  /** As written in the notes. */
  readonly written: string;
  /** Path inside the log. */
  readonly file: string;
  readonly alt: string;
  /** In the record's file, from 1. */
  readonly line: number;
}

/**
 * A device's readings, row by row; times never run backwards (two rows may share one).
 * A reading that isn't there is undefined; a column that the file doesn't have is absent.
 */
export interface FermentationLog {
  /** Path inside the log. */
  readonly file: string;
  /** Instants, in milliseconds since 1970-01-01T00:00Z. */
  readonly timesMs: readonly number[];
  readonly temperatureC?: readonly (number | undefined)[];
  readonly gravity?: readonly (number | undefined)[];
  readonly gravityUnit: "SG" | "P";
  /** Gauge. */
  readonly pressureKPa?: readonly (number | undefined)[];
}

export interface ScoreRow {
  readonly taster: string;
  readonly sample: string;
  readonly attribute: string;
  /** 0 to 10. */
  readonly score: number;
  /** From 1; 1 where servings don't repeat. */
  readonly serving: number;
}

export interface RankRow {
  readonly taster: string;
  readonly sample: string;
  /** 1 is first; equal ranks share the mean of their places. */
  readonly rank: number;
}

/** What the files named by one tasting hold; in the order of the batch's tastings. */
export interface TastingRows {
  readonly scores?: readonly ScoreRow[];
  readonly ranking?: readonly RankRow[];
}

export interface LineAndColumn {
  readonly line: number;
  readonly column: number;
}

/** One batch record without a problem, with all it refers to. */
export interface BatchRecord {
  /** Path inside the log. */
  readonly file: string;
  /** The batch number as page addresses use it: `TP-03` → `tp-03`. */
  readonly slug: string;
  readonly data: Batch;
  /** The notes, in Markdown; untrusted. */
  readonly body: string;
  /** The file's line on which the notes begin. */
  readonly bodyLine: number;
  /** In the order of `data.fermentation.log`. */
  readonly logs: readonly FermentationLog[];
  readonly photos: readonly Photo[];
  /** In the order of `data.tastings`. */
  readonly tastings: readonly TastingRows[];
  /** Where a field stands: `dry_hops[0].amount`, keys as in the file. */
  readonly placeOf: (field: string) => LineAndColumn | undefined;
}

/** A record that can't be built, and what is known of it all the same. */
export interface BrokenRecord {
  readonly file: string;
  /** false where the record says so: then nothing of it may be named on a page. */
  readonly publish: boolean;
  readonly batch?: string;
}

/** A whole log: typed, checked, complete with the tool's defaults. */
export interface Log {
  readonly club: Club;
  readonly equipment: ReadonlyMap<string, Equipment>;
  /** The tool's own, with the log's over them. */
  readonly styles: ReadonlyMap<string, Style>;
  readonly hops: ReadonlyMap<string, Hop>;
  readonly malts: ReadonlyMap<string, Malt>;
  /** In order of brew date, then batch number. */
  readonly batches: readonly BatchRecord[];
  readonly competitions: readonly CompetitionRecord[];
  readonly broken: readonly BrokenRecord[];
}

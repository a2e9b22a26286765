import type { BatchReport, BatchSummary } from "./types.js";

/** By brew date, then by batch number; a date without a time is noon. Letters by code, the same in every locale. */
export function inBrewOrder(batches: readonly BatchReport[]): BatchReport[] {
  return [...batches].sort((one, other) => compareText(brewedKey(one), brewedKey(other)) || compareText(one.batch, other.batch));
}

/** Days since 1970-01-01 of the brew date: civil dates, so that no zone plays a part. */
export function brewedDay({ brewed }: BatchReport): number {
  return Date.parse(`${brewed.slice(0, DATE_LENGTH)}T00:00Z`) / DAY_MS;
}

const DATE_LENGTH = "2026-03-07".length;
const DAY_MS = 86_400_000;

/** What lists need of a batch. */
export function batchSummary(batch: BatchReport): BatchSummary {
  const { batch: number, slug, title, status, brewed, brewer, season, series, style, summary, figures, swatch } = batch;
  return {
    batch: number, slug, title, status, brewed,
    ...(brewer === undefined ? {} : { brewer }),
    ...(season === undefined ? {} : { season }),
    ...(series === undefined ? {} : { series }),
    ...(style === undefined ? {} : { style }),
    hops: hopsOf(batch),
    summary, figures,
    ...(swatch === undefined ? {} : { swatch }),
  };
}

/** Dry hops first: they are what the lists are read for. */
function hopsOf({ dryHops, recipe }: BatchReport): string[] {
  return [...new Set([...dryHops.map(({ hop }) => hop), ...recipe.kettleHops.map(({ what }) => what)])];
}

function brewedKey({ brewed }: BatchReport): string {
  return brewed.length > DATE_LENGTH ? brewed : `${brewed} 12:00`;
}

function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

import type { FermentationLog } from "../records/index.js";
import { gravityFromPlato, type TimedValue } from "../science/index.js";

/** One column of a batch's log. */
export interface LogColumn {
  readonly series: readonly TimedValue[];
  /** Steps longer than this are gaps: nothing is said of what happened in them. */
  readonly longestGapHours: number;
}

/** The columns of all a batch's logs, on one axis of hours since pitching. */
export interface LogColumns {
  readonly temperature?: LogColumn;
  readonly gravity?: LogColumn;
  readonly pressure?: LogColumn;
}

/** A step counts as a gap when it is longer than this and than 2.5 usual steps. */
const LEAST_GAP_H = 2;
const GAP_STEPS = 2.5;

function logColumn(series: readonly TimedValue[]): LogColumn {
  return { series, longestGapHours: Math.max(LEAST_GAP_H, GAP_STEPS * medianStep(series)) };
}

/**
 * Joins the logs of a batch. Rows that repeat a time (two devices, or a clock
 * set back) are averaged, so that the series rises strictly.
 *
 * @param startMs the instant of hour 0
 */
export function columnsOf(logs: readonly FermentationLog[], startMs: number): LogColumns {
  const column = (values: (log: FermentationLog) => readonly (number | undefined)[] | undefined): LogColumn | undefined => {
    const rows = logs.flatMap((log) => {
      const held = values(log);
      return held === undefined ? [] : log.timesMs.map((ms, index) => ({ hours: (ms - startMs) / HOUR_MS, value: held[index] }));
    });
    return rows.some((row) => row.value !== undefined) ? logColumn(risingRows(rows)) : undefined;
  };
  const found = {
    temperature: column((log) => log.temperatureC),
    gravity: column((log) => log.gravity?.map((value) => gravityOf(value, log.gravityUnit))),
    pressure: column((log) => log.pressureKPa),
  };
  return Object.fromEntries(Object.entries(found).filter(([, held]) => held !== undefined));
}

const HOUR_MS = 3_600_000;

function gravityOf(value: number | undefined, unit: "SG" | "P"): number | undefined {
  return value === undefined || unit === "SG" || gravityFromPlato.refuses(value) !== undefined ? value : gravityFromPlato(value);
}

/** In order of time, one value a time; rows without a value left out. */
function risingRows(rows: readonly { readonly hours: number; readonly value: number | undefined }[]): TimedValue[] {
  const held = rows.filter((row): row is TimedValue => row.value !== undefined).sort((a, b) => a.hours - b.hours);
  const rising: TimedValue[] = [];
  let same: number[] = [];
  for (const [index, row] of held.entries()) {
    same.push(row.value);
    if (held[index + 1]?.hours === row.hours) continue;
    rising.push({ hours: row.hours, value: same.reduce((sum, value) => sum + value, 0) / same.length });
    same = [];
  }
  return rising;
}

/** Half of all steps are shorter: a few gaps don't stretch it. 0 for fewer than two rows. */
function medianStep(series: readonly TimedValue[]): number {
  const steps: number[] = [];
  for (let index = 1; index < series.length; index += 1) {
    steps.push((series[index]?.hours ?? 0) - (series[index - 1]?.hours ?? 0));
  }
  steps.sort((a, b) => a - b);
  return steps[Math.floor(steps.length / 2)] ?? 0;
}

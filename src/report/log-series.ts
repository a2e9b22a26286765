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
    const series = risingRows(logs.map((log) => rowsOf(log.timesMs, values(log) ?? [], startMs)));
    return series.length === 0 ? undefined : logColumn(series);
  };
  const found = {
    temperature: column((log) => log.temperatureC),
    gravity: column((log) => log.gravityUnit === "SG" ? log.gravity : log.gravity?.map(gravityOfPlato)),
    pressure: column((log) => log.pressureKPa),
  };
  return Object.fromEntries(Object.entries(found).filter(([, held]) => held !== undefined));
}

const HOUR_MS = 3_600_000;

function gravityOfPlato(value: number | undefined): number | undefined {
  return value === undefined || gravityFromPlato.refuses(value) !== undefined ? undefined : gravityFromPlato(value);
}

/** The rows of one log that hold a value. */
function rowsOf(timesMs: readonly number[], values: readonly (number | undefined)[], startMs: number): TimedValue[] {
  const rows: TimedValue[] = [];
  for (let index = 0; index < values.length; index += 1) {
    const ms = timesMs[index];
    const value = values[index];
    if (value !== undefined && ms !== undefined) rows.push({ hours: (ms - startMs) / HOUR_MS, value });
  }
  return rows;
}

/** Several logs in order of time, one value a time. One log is in order already. */
function risingRows(logs: readonly (readonly TimedValue[])[]): readonly TimedValue[] {
  const held = logs.filter((rows) => rows.length > 0);
  const rows = held.length > 1 ? held.flat().sort((a, b) => a.hours - b.hours) : held[0] ?? [];
  const rises = rows.every((row, index) => index === 0 || row.hours > (rows[index - 1]?.hours ?? 0));
  return rises ? rows : oneATime(rows);
}

/** The mean of the rows of one time. */
function oneATime(rows: readonly TimedValue[]): TimedValue[] {
  const rising: TimedValue[] = [];
  let same: number[] = [];
  for (const [index, row] of rows.entries()) {
    same.push(row.value);
    if (rows[index + 1]?.hours === row.hours) continue;
    rising.push({ hours: row.hours, value: same.reduce((sum, value) => sum + value, 0) / same.length });
    same = [];
  }
  return rising;
}

/** Half of all steps are shorter: a few gaps don't stretch it. 0 for fewer than two rows. */
function medianStep(series: readonly TimedValue[]): number {
  const steps = new Float64Array(Math.max(0, series.length - 1));
  for (let index = 1; index < series.length; index += 1) {
    steps[index - 1] = (series[index]?.hours ?? 0) - (series[index - 1]?.hours ?? 0);
  }
  return steps.sort()[Math.floor(steps.length / 2)] ?? 0;
}

import { hoursWithin, type Band, type HoursWithin, type MethodAbout, type TimedValue, type TimeWindow } from "../science/index.js";
import { rectangular, type Contributions } from "../statistics/index.js";
import { formatNumber } from "../units/index.js";
import { computedBy, missing, readingOf, withNote, type Known, type Missing, type Result } from "./known.js";
import type { LogColumn } from "./log-series.js";
import { remembered } from "./remembered.js";

/** A relation over a series that can say beforehand why it can't be computed. */
export interface SeriesRelation<Answer> {
  (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number): Answer;
  readonly about: MethodAbout;
  readonly refuses: (series: readonly TimedValue[], window: TimeWindow, longestGapHours: number) => string | undefined;
}

/** A probe's column and what it can be trusted to. */
export interface Probe {
  readonly column: LogColumn | undefined;
  readonly limitC: number;
  /** Names an hour as civil time. */
  readonly civilAt: (hour: number) => string;
}

/**
 * What the probe's one error, shared by its whole column, leaves in an answer:
 * a mean or an extreme moves with the column, a fall doesn't.
 */
export type ProbeShare = "whole" | "none";

export const PROBE_FIELD = "fermentation.log temperature";

/**
 * A number taken from the temperature log over a stretch of time. Missing where the log covers
 * less than half of it; a longer silence than the log's usual step is said in a note.
 */
export function overTemperature<Answer>(
  probe: Probe, relation: SeriesRelation<Answer>, window: TimeWindow | Missing, pick: (answer: Answer) => number, share: ProbeShare = "whole",
): Result {
  const stretch = stretchOf(probe, window);
  if ("missing" in stretch) return stretch;
  const answer = asked(stretch, relation.about.id, ({ series, longestGapHours }, hours): Answer | Missing => {
    const refusal = relation.refuses(series, hours, longestGapHours);
    return refusal === undefined ? relation(series, hours, longestGapHours) : missing(`the log doesn't give it: ${refusal}`);
  });
  if (isReason(answer)) return answer;
  const value = pick(answer);
  const contributions: Contributions = share === "none" ? {} : { [PROBE_FIELD]: rectangular(probe.limitC) };
  return withNote(computedBy(relation.about, value, contributions, [probeReading(probe.limitC)]), stretch.note);
}

/** Hours by where the log was. A probe that reads too high is a band that lies too low: the band is moved by its error. */
export function hoursInBand(probe: Probe, window: TimeWindow | Missing, band: Band, pick: (hours: HoursWithin) => number): Result {
  const stretch = stretchOf(probe, window);
  if ("missing" in stretch) return stretch;
  const moved = (by: number): number => {
    const [low, high] = [band.low - by, band.high - by];
    return pick(asked(stretch, `${hoursWithin.about.id} ${low} ${high}`, ({ series, longestGapHours }, hours) => hoursWithin(series, hours, longestGapHours, { low, high })));
  };
  const u = rectangular(probe.limitC);
  const sensitivity = (moved(u) - moved(-u)) / 2;
  const contributions: Contributions = sensitivity === 0 ? {} : { [PROBE_FIELD]: sensitivity };
  return withNote(computedBy(hoursWithin.about, moved(0), contributions, [probeReading(probe.limitC)]), stretch.note);
}

/** What has been asked of a stretch of a log before: several figures and checks ask the same. */
const answers = remembered((_stretch: Stretch) => new Map<string, unknown>());

function asked<Answer>(stretch: Stretch, question: string, answer: (column: LogColumn, window: TimeWindow) => Answer): Answer {
  const known = answers(stretch);
  if (!known.has(question)) known.set(question, answer(stretch.column, stretch.window));
  // One question of one stretch has one kind of answer.
  return known.get(question) as Answer;
}

function isReason(answer: unknown): answer is Missing {
  return typeof answer === "object" && answer !== null && "missing" in answer;
}

/** The probe itself, where a value taken from its column rests on it. */
export function probeReading(limitC: number): Known {
  return readingOf(PROBE_FIELD, limitC, "C", undefined, `within ± ${limitC} °C, one error for the whole column`);
}

interface Stretch {
  readonly column: LogColumn;
  readonly window: TimeWindow;
  readonly note?: string;
}

/** Of a stretch that a log covers for less than this, a number would say more than is known. */
const LEAST_COVERED = 0.5;

const stretches = remembered((_column: LogColumn) => new Map<string, Stretch | Missing>());

function stretchOf({ column, civilAt }: Probe, window: TimeWindow | Missing): Stretch | Missing {
  if (column === undefined) return missing("fermentation.log isn't recorded");
  if ("missing" in window) return window;
  const known = stretches(column);
  const name = `${window.fromHours} ${window.toHours}`;
  const stretch = known.get(name) ?? cutOut(column, window, civilAt);
  known.set(name, stretch);
  return stretch;
}

function cutOut(column: LogColumn, window: TimeWindow, civilAt: Probe["civilAt"]): Stretch | Missing {
  const { fromHours, toHours } = window;
  if (fromHours >= toHours) return missing("the log doesn't give it: the stretch of time ends before it begins");
  const held = { ...column, series: around(column.series, window) };
  const [covered, whole] = [coveredHours(held, window), toHours - fromHours];
  const when = `${civilAt(fromHours)} to ${civilAt(toHours)}`;
  if (covered < LEAST_COVERED * whole) {
    return missing(covered > 0 ? `fermentation.log covers only ${hours(covered)} of the ${hours(whole)} from ${when}` : `fermentation.log has no unbroken readings from ${when}`);
  }
  const note = whole - covered > column.longestGapHours
    ? `The log has no readings for ${hours(whole - covered)} of the ${hours(whole)} from ${when}: those are left out.` : undefined;
  return { column: held, window, ...(note === undefined ? {} : { note }) };
}

function hours(value: number): string {
  return `${formatNumber(value, "h").value} h`;
}

/** The readings of a stretch with one on either side, for the lines that cross its edges. */
function around(series: readonly TimedValue[], { fromHours, toHours }: TimeWindow): readonly TimedValue[] {
  const first = firstFrom(series, fromHours);
  const beyond = firstFrom(series, toHours);
  return series.slice(Math.max(0, first - 1), beyond + 1);
}

/** Where the first reading at or after an hour stands in a series whose times rise. */
function firstFrom(series: readonly TimedValue[], hour: number): number {
  let [low, high] = [0, series.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((series[middle]?.hours ?? Number.POSITIVE_INFINITY) < hour) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Hours of a stretch that lie between two readings without a gap. */
function coveredHours({ series, longestGapHours }: LogColumn, { fromHours, toHours }: TimeWindow): number {
  let covered = 0;
  let [before] = series;
  for (const reading of series) {
    if (before !== undefined && reading.hours - before.hours <= longestGapHours + SAME_HOURS) {
      covered += Math.max(0, Math.min(reading.hours, toHours) - Math.max(before.hours, fromHours));
    }
    before = reading;
  }
  return covered;
}

/** Slack for times that were computed from minutes or days, as the relations allow. */
const SAME_HOURS = 1e-9;

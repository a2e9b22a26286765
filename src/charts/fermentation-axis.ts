import type { EventReport, TimelineReport } from "../report/index.js";
import { dayTicks } from "./ticks.js";

/** The shared axis of days, and which events stand on it. */
export interface DayAxis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** "Days since pitching" */
  readonly title: string;
  readonly onAxis: readonly EventReport[];
  /** Events so much later that room for them would squeeze the rest. */
  readonly later: readonly EventReport[];
}

const HOURS = 24;
/** Packaging and tastings stretch the axis by at most this share of it. */
const STRETCH = 0.1;

/** The axis of a timeline: from pitching, or the first row before it, to the last thing that happened to the beer in its vessel. */
export function buildDayAxis(timeline: TimelineReport, wantedTicks: number): DayAxis {
  const marked = timeline.events.filter((event) => event.kind !== "reading");
  const atCellar = timeline.events.filter((event) => event.kind !== "tasting" && event.kind !== "package");
  const hours = [
    ...[timeline.temperature, timeline.gravity, timeline.gravityReadings].flatMap((series) => endsOf(series?.runs ?? [])),
    ...timeline.phases.flatMap((phase) => [phase.fromHour, phase.toHour]), ...atCellar.map((event) => event.hour),
  ];
  const low = hours.reduce((a, b) => Math.min(a, b), 0);
  const last = hours.reduce((a, b) => Math.max(a, b), low);
  const limit = last > low ? last + (last - low) * STRETCH : Infinity;
  const onAxis = marked.filter((event) => event.hour <= limit);
  const high = Math.max(onAxis.reduce((most, event) => Math.max(most, event.hour), last), low + 1);
  return {
    low: low / HOURS, high: high / HOURS, ticks: dayTicks(low / HOURS, high / HOURS, wantedTicks),
    title: timeline.events.some((event) => event.kind === "pitch") ? "Days since pitching" : "Days since brewing",
    onAxis, later: marked.filter((event) => event.hour > limit),
  };
}

function endsOf(runs: readonly (readonly (readonly [number, number])[])[]): readonly number[] {
  return runs.flatMap((run) => [run[0]?.[0], run[run.length - 1]?.[0]]).filter((hour) => hour !== undefined);
}

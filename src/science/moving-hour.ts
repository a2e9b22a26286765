import { between, sameHours, type TimedValue } from "./timed-series.js";
import { spanHours, type Run } from "./unbroken-runs.js";

/**
 * The starts of all 60-minute stretches of a run that begin or end on one of its readings, rising.
 * Between two of them the value at the start and the value an hour on both change in a straight line.
 */
export function hourStarts(run: Run): number[] {
  const first = run[0]?.hours ?? 0;
  const last = first + Math.max(0, spanHours(run) - 1);
  const starts: number[] = [];
  let ending = 0;
  const push = (hours: number) => {
    if (hours >= first - sameHours && hours <= last + sameHours) starts.push(Math.min(Math.max(hours, first), last));
  };
  for (const { hours } of run) {
    for (; (run[ending]?.hours ?? Infinity) - 1 < hours; ending += 1) push((run[ending]?.hours ?? 0) - 1);
    push(hours);
  }
  return starts;
}

/** What a run shows at times that never go back; the whole sweep takes time in proportion to the run. */
export function sweepValue(run: Run): (hours: number) => number {
  const lineAt = sweepLine(run);
  return (hours) => {
    const { a, b } = lineAt(hours);
    return between(a, b, hours);
  };
}

/** ∫ value dt from a run's first reading to times that never go back. */
export function sweepArea(run: Run): (hours: number) => number {
  const lineAt = sweepLine(run);
  return (hours) => {
    const { a, b, areaBefore } = lineAt(hours);
    return areaBefore + ((a.value + between(a, b, hours)) / 2) * (hours - a.hours);
  };
}

/** The straight line a moment lies on, and the area before that line begins. */
function sweepLine(run: Run): (hours: number) => { a: TimedValue; b: TimedValue; areaBefore: number } {
  const [a, b] = run;
  if (a === undefined || b === undefined) throw new RangeError("a run needs two readings to be read between them");
  const line = { a, b, areaBefore: 0 };
  let next = 2;
  return (hours) => {
    for (let after = run[next]; after !== undefined && line.b.hours < hours; after = run[next += 1]) {
      line.areaBefore += ((line.a.value + line.b.value) / 2) * (line.b.hours - line.a.hours);
      line.a = line.b;
      line.b = after;
    }
    return line;
  };
}

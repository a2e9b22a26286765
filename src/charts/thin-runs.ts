type Reading = readonly [hour: number, value: number];

/**
 * As many points of a run as a drawing can show: of every column only the lowest and the highest reading
 * stay, in order, so that no peak is lost, and the run's own first and last; then those that lie in the
 * middle of a level stretch go.
 *
 * @param run in order of time
 * @param columnHours width of a column of the drawing, hours, greater than 0
 */
export function thinRun(run: readonly Reading[], columnHours: number): readonly Reading[] {
  const kept: Reading[] = [];
  for (let from = 0; from < run.length;) {
    const to = endOfColumn(run, from, columnHours);
    for (const index of outline(run, from, to)) {
      const reading = run[index];
      if (reading !== undefined) kept.push(reading);
    }
    from = to;
  }
  return kept.filter((reading, index) => !isLevel(kept[index - 1], reading, kept[index + 1]));
}

function endOfColumn(run: readonly Reading[], from: number, columnHours: number): number {
  const column = Math.floor((run[from]?.[0] ?? 0) / columnHours);
  let to = from + 1;
  while (to < run.length && Math.floor((run[to]?.[0] ?? 0) / columnHours) === column) to += 1;
  return to;
}

function outline(run: readonly Reading[], from: number, to: number): readonly number[] {
  let low = from;
  let high = from;
  for (let index = from; index < to; index += 1) {
    const value = run[index]?.[1] ?? 0;
    if (value < (run[low]?.[1] ?? 0)) low = index;
    if (value > (run[high]?.[1] ?? 0)) high = index;
  }
  const kept = low === high ? [low] : [Math.min(low, high), Math.max(low, high)];
  if (from === 0 && kept[0] !== 0) kept.unshift(0);
  if (to === run.length && kept[kept.length - 1] !== to - 1) kept.push(to - 1);
  return kept;
}

function isLevel(before: Reading | undefined, reading: Reading, after: Reading | undefined): boolean {
  return before !== undefined && after !== undefined && before[1] === reading[1] && after[1] === reading[1];
}

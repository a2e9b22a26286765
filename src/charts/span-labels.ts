/** A stretch of the axis with a name, px. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly widthPx: number;
}

/** Row of a stretch and the left edge of its name, px; row 0 is the upper one. */
export interface PlacedSpan {
  readonly row: number;
  readonly left: number;
}

const GAP = 10;

/**
 * Puts stretches into rows so that neither they nor their names overlap. A name is centred on its
 * stretch, moved inwards at the ends of the plot.
 *
 * @returns one place a span, in the order of `spans`
 */
export function placeSpans(spans: readonly Span[], plotWidthPx: number): readonly PlacedSpan[] {
  const rowEnds: number[] = [];
  const order = spans.map((_, index) => index).sort((a, b) => (spans[a]?.from ?? 0) - (spans[b]?.from ?? 0) || a - b);
  const places = new Map<number, PlacedSpan>();
  for (const index of order) {
    const span = spans[index];
    if (span === undefined) continue;
    const left = Math.max(0, Math.min((span.from + span.to - span.widthPx) / 2, plotWidthPx - span.widthPx));
    const from = Math.min(left, span.from);
    const free = rowEnds.findIndex((end) => end + GAP <= from || end <= from && left > span.from);
    const row = free < 0 ? rowEnds.length : free;
    rowEnds[row] = Math.max(left + span.widthPx, span.to);
    places.set(index, { row, left });
  }
  return spans.map((_, index) => places.get(index) ?? { row: 0, left: 0 });
}

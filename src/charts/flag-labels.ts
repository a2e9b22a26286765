/** A label that names a rule standing at `x`, px. */
export interface Flag {
  readonly x: number;
  readonly widthPx: number;
}

/** Where the label goes: from `left` to `right`, px; row 0 is next to the plot. */
export interface PlacedFlag {
  readonly left: number;
  readonly right: number;
  readonly row: number;
}

/** Between a rule and the label beside it. */
const RULE_GAP = 4;
/** Between two labels of one row. */
const WORD_GAP = 8;
/** What it costs to interrupt a rule for a label, and to hang a label left of its rule, in rows. */
const CROSSING_COST = 2.5;
const LEFT_COST = 0.4;
/** What it costs to stand in the way of a rule whose label has no place yet, in rows. */
const BLOCKING_COST = 1.5;

interface Standing extends PlacedFlag {
  readonly x: number;
}

/**
 * Hangs one label on each rule, in as few rows as it takes that no label overlaps another. Labels hang to
 * the right of their rule where there is room, else to its left, else above it; of rules that stand
 * together the earlier one has the higher label, so that they read downwards in order.
 *
 * @param flags any order; an equal x keeps the order given
 * @param plotWidthPx labels stay between 0 and this, those wider than that begin at 0
 * @returns one place a flag, in the order of `flags`
 */
export function placeFlags(flags: readonly Flag[], plotWidthPx: number): readonly PlacedFlag[] {
  const order = flags.map((_, index) => index).sort((a, b) => (flags[b]?.x ?? 0) - (flags[a]?.x ?? 0) || b - a);
  const standing: Standing[] = [];
  const places = new Map<number, PlacedFlag>();
  for (const index of order) {
    const flag = flags[index];
    if (flag === undefined) continue;
    const waiting = order.slice(order.indexOf(index) + 1).map((other) => flags[other]?.x ?? 0);
    const place = bestPlace(flag, plotWidthPx, standing, waiting);
    standing.push({ ...place, x: flag.x });
    places.set(index, place);
  }
  return flags.map((_, index) => places.get(index) ?? { left: 0, right: 0, row: 0 });
}

function bestPlace(flag: Flag, plotWidthPx: number, standing: readonly Standing[], waiting: readonly number[]): PlacedFlag {
  const rows = standing.reduce((most, each) => Math.max(most, each.row + 1), 0);
  let best: { readonly place: PlacedFlag; readonly cost: number } | undefined;
  for (const { left, cost: sideCost } of sides(flag, plotWidthPx)) {
    for (let row = 0; row <= rows; row += 1) {
      const place = { left, right: left + flag.widthPx, row };
      const blocked = waiting.filter((x) => x < flag.x - 2 && within(x, place)).length;
      const cost = row + sideCost + CROSSING_COST * crossings(place, flag.x, standing) + BLOCKING_COST * blocked;
      if ((best === undefined || cost < best.cost) && !standing.some((each) => overlaps(place, each))) best = { place, cost };
    }
  }
  return best?.place ?? { left: 0, right: flag.widthPx, row: rows };
}

function sides(flag: Flag, plotWidthPx: number): readonly { readonly left: number; readonly cost: number }[] {
  const right = flag.x + RULE_GAP;
  const left = flag.x - RULE_GAP - flag.widthPx;
  const fitting = [
    ...(right + flag.widthPx <= plotWidthPx ? [{ left: right, cost: 0 }] : []),
    ...(left >= 0 ? [{ left, cost: LEFT_COST }] : []),
  ];
  const above = Math.max(0, Math.min(flag.x - flag.widthPx / 2, plotWidthPx - flag.widthPx));
  return fitting.length > 0 ? fitting : [{ left: above, cost: 0 }];
}

/** How many rules would run through a label: this one's through those below it, and higher ones' through this label. */
function crossings(place: PlacedFlag, x: number, standing: readonly Standing[]): number {
  return standing.filter((each) =>
    (each.row > place.row && within(each.x, place)) || (each.row < place.row && within(x, each))).length;
}

function within(x: number, place: PlacedFlag): boolean {
  return x > place.left - 2 && x < place.right + 2;
}

function overlaps(one: PlacedFlag, other: PlacedFlag): boolean {
  return one.row === other.row && one.left < other.right + WORD_GAP && other.left < one.right + WORD_GAP;
}

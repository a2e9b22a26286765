/** A point with a name, px. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
}

/** The left end of a name and its foot, px. */
export interface PlacedName {
  readonly x: number;
  readonly y: number;
}

const TALL_PX = 12;
const POINT_PX = 5;
const GAP_PX = 3;

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Puts a name beside each point, on whichever side is free of other points and names, and of the fitted
 * line too where there is such a side.
 *
 * @param line points of the line, close together
 * @returns one place a point; undefined where no side is free
 */
export function placeNames(
  points: readonly NamedPoint[], plot: { readonly width: number; readonly height: number }, line: readonly { readonly x: number; readonly y: number }[] = [],
): readonly (PlacedName | undefined)[] {
  const taken: Box[] = points.map(({ x, y }) => ({ left: x - POINT_PX, right: x + POINT_PX, top: y - POINT_PX, bottom: y + POINT_PX }));
  return points.map((point) => {
    const sides = sidesOf(point).filter((box) =>
      box.left >= 0 && box.right <= plot.width && box.top >= 0 && box.bottom <= plot.height && !taken.some((other) => overlap(box, other)));
    const free = sides.find((box) => !line.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom)) ?? sides[0];
    if (free === undefined) return undefined;
    taken.push(free);
    return { x: free.left, y: free.bottom - GAP_PX };
  });
}

/** Right, left, above, below, then the corners. */
function sidesOf({ x, y, widthPx }: NamedPoint): readonly Box[] {
  const beside = POINT_PX + GAP_PX;
  const place = (left: number, middle: number): Box => ({ left, right: left + widthPx, top: middle - TALL_PX / 2 - 1, bottom: middle + TALL_PX / 2 + 2 });
  const apart = POINT_PX + TALL_PX / 2 + 2;
  return [
    place(x + beside, y), place(x - beside - widthPx, y), place(x - widthPx / 2, y - apart), place(x - widthPx / 2, y + apart),
    place(x + GAP_PX, y - apart), place(x + GAP_PX, y + apart), place(x - GAP_PX - widthPx, y - apart), place(x - GAP_PX - widthPx, y + apart),
  ];
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** A point with a name, px. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
}

/** The left end of a name and its foot, px, and the line that leads to it where it stands apart. */
export interface PlacedName {
  readonly x: number;
  readonly y: number;
  readonly leader?: { readonly x: number; readonly y: number; readonly x2: number; readonly y2: number };
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

/** How far from its point a name may stand where there is no room beside it. */
const APART_PX = [16, 30] as const;

/**
 * Puts a name beside each point, on whichever side is free of other points and names, and of the fitted
 * line too where there is such a side; else a little way off, with a line that leads to it.
 *
 * @param line points of the line, close together
 * @returns one place a point; undefined where there is no room at all
 */
export function placeNames(
  points: readonly NamedPoint[], plot: { readonly width: number; readonly height: number }, line: readonly { readonly x: number; readonly y: number }[] = [],
): readonly (PlacedName | undefined)[] {
  const taken: Box[] = points.map(({ x, y }) => ({ left: x - POINT_PX, right: x + POINT_PX, top: y - POINT_PX, bottom: y + POINT_PX }));
  const isFree = (box: Box): boolean =>
    box.left >= 0 && box.right <= plot.width && box.top >= 0 && box.bottom <= plot.height && !taken.some((other) => overlap(box, other));
  return points.map((point) => {
    const beside = sidesOf(point, 0).filter(isFree);
    const free = beside.find((box) => !line.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom)) ?? beside[0];
    const apart = free === undefined ? APART_PX.flatMap((far) => sidesOf(point, far)).find(isFree) : undefined;
    const box = free ?? apart;
    if (box === undefined) return undefined;
    taken.push(box);
    return { x: box.left, y: box.bottom - GAP_PX, ...(apart === undefined ? {} : { leader: leaderTo(apart, point) }) };
  });
}

/** Right, left, above, below, then the corners; `far` px further off. */
function sidesOf({ x, y, widthPx }: NamedPoint, far: number): readonly Box[] {
  const beside = POINT_PX + GAP_PX + far;
  const apart = POINT_PX + TALL_PX / 2 + 2 + far;
  const corner = GAP_PX + far;
  const place = (left: number, middle: number): Box => ({ left, right: left + widthPx, top: middle - TALL_PX / 2 - 1, bottom: middle + TALL_PX / 2 + 2 });
  return [
    place(x + beside, y), place(x - beside - widthPx, y), place(x - widthPx / 2, y - apart), place(x - widthPx / 2, y + apart),
    place(x + corner, y - apart), place(x + corner, y + apart), place(x - corner - widthPx, y - apart), place(x - corner - widthPx, y + apart),
  ];
}

/** From the edge of the point to the nearest place of the name's box. */
function leaderTo(box: Box, { x, y }: NamedPoint): NonNullable<PlacedName["leader"]> {
  const x2 = Math.min(box.right, Math.max(box.left, x));
  const y2 = Math.min(box.bottom, Math.max(box.top, y));
  const length = Math.hypot(x2 - x, y2 - y);
  return { x: x + (x2 - x) / length * POINT_PX, y: y + (y2 - y) / length * POINT_PX, x2, y2 };
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

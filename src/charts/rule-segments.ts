/** What a rule must not run through, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The parts of an upright rule that are left when it is interrupted for every box in its way.
 *
 * @returns [from, to] from top to bottom, px
 */
export function cutRule(x: number, top: number, bottom: number, boxes: readonly Box[]): readonly (readonly [number, number])[] {
  const inTheWay = boxes.filter((box) => x > box.left && x < box.right && box.bottom > top && box.top < bottom)
    .sort((a, b) => a.top - b.top);
  const parts: [number, number][] = [];
  let from = top;
  for (const box of inTheWay) {
    if (box.top > from) parts.push([from, box.top]);
    from = Math.max(from, box.bottom);
  }
  if (bottom > from) parts.push([from, bottom]);
  return parts;
}

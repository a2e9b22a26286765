import type { Box } from "./rule-segments.js";

/** Hatching of a box: strokes rising to the right at 45°, each from [x, y] to [x2, y2], px. */
export function hatchBox(box: Box, spacingPx: number): readonly { readonly x: number; readonly y: number; readonly x2: number; readonly y2: number }[] {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const strokes = [];
  for (let start = spacingPx / 2; start < width + height; start += spacingPx) {
    const enters = Math.min(start, height);
    const leaves = Math.max(0, start - width);
    strokes.push({ x: box.left + start - enters, y: box.top + enters, x2: box.left + start - leaves, y2: box.top + leaves });
  }
  return strokes;
}

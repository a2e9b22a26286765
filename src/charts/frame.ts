/** The outline of a drawing: where the plot sits in it, px. */
export interface Frame {
  readonly name: "wide" | "narrow";
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The text column of a page. */
export const WIDE_PX = 680;
/** A phone held upright, inside its page margins. */
export const NARROW_PX = 320;

/** Width of the plot inside its margins, px. */
export function plotWidthPx(frame: Frame): number {
  return frame.width - frame.left - frame.right;
}

import { TYPE_PX } from "./theme.js";

/**
 * Advance widths in thousandths of an em, of the house face (measured from its regular weight, tabular
 * figures), grouped by width. Other letters count as wide ones, so that a label's room is never too small.
 */
const GLYPHS: readonly (readonly [width: number, letters: string])[] = [
  [240, " '"],
  [305, "!,.:;j|·"],
  [345, "-/[\\]il°"],
  [385, "\"()IJft{}²"],
  [470, "*?`rs"],
  [540, "0123456789#$+<=>^_cez~−±–é×"],
  [600, "SZagkovxy≈"],
  [650, "EFLPTbdhnpqu→"],
  [700, "BCRXY"],
  [770, "&ADGKNOQUV"],
  [850, "@Hw—…"],
  [1005, "%MWm"],
];
const WIDTHS = new Map(GLYPHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));
const OTHER = 850;
/** A fallback face may run a little wider than the house face. */
const SAFETY = 1.04;

/**
 * Room a label needs, px.
 *
 * @param sizePx type size; the charts' own where not given
 */
export function textWidthPx(text: string, sizePx: number = TYPE_PX): number {
  let thousandths = 0;
  for (const letter of text) thousandths += WIDTHS.get(letter) ?? OTHER;
  return thousandths / 1000 * sizePx * SAFETY;
}

/** The text, or as much of it as fits into `roomPx` with an ellipsis. */
export function shortenText(text: string, roomPx: number): string {
  if (textWidthPx(text) <= roomPx) return text;
  const letters = [...text];
  while (letters.length > 1 && textWidthPx(`${letters.join("").trimEnd()}…`) > roomPx) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

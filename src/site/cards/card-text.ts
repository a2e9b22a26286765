import { readFileSync } from "node:fs";

/** Outlines of one serif face, in font units, y downwards; made by scripts/card-alphabet. */
interface Alphabet {
  readonly unitsPerEm: number;
  readonly letters: Readonly<Record<string, readonly [advance: number, path: string]>>;
}

let loaded: Alphabet | undefined;

function alphabet(): Alphabet {
  loaded ??= JSON.parse(readFileSync(new URL("../assets/card-alphabet.json", import.meta.url), "utf8")) as Alphabet;
  return loaded;
}

/** Spaces and hyphens that the face has no outline for, as those it has. */
function plainLetters(text: string): string[] {
  return [...text.normalize("NFC").replaceAll(/\s+/gu, " ").replaceAll("\u2011", "-").trim()];
}

/** Whether every letter can be drawn; a title in another script can't, and isn't drawn in part. */
export function canSet(text: string): boolean {
  const { letters } = alphabet();
  return plainLetters(text).every((letter) => Object.hasOwn(letters, letter));
}

/** Width of a line in px. */
export function widthOf(text: string, sizePx: number): number {
  const { letters, unitsPerEm } = alphabet();
  return plainLetters(text).reduce((sum, letter) => sum + (letters[letter]?.[0] ?? 0), 0) * (sizePx / unitsPerEm);
}

/** Breaks a text into lines of at most `widthPx`; what doesn't fit `mostLines` ends in an ellipsis. */
export function linesOf(text: string, sizePx: number, widthPx: number, mostLines: number): string[] {
  const lines: string[] = [];
  for (const word of plainLetters(text).join("").split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1) ?? ""} ${word}`;
    if (lines.length > 0 && widthOf(longer, sizePx) <= widthPx) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  const kept = lines.slice(0, mostLines);
  if (lines.length > mostLines) kept.push(`${kept.pop() ?? ""} …`);
  return kept.map((line) => fitted(line, sizePx, widthPx));
}

/** One endless word is cut where the line ends. */
function fitted(line: string, sizePx: number, widthPx: number): string {
  if (widthOf(line, sizePx) <= widthPx) return line;
  const letters = plainLetters(line.replace(/ ?…$/u, ""));
  while (letters.length > 1 && widthOf(`${letters.join("")}…`, sizePx) > widthPx) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/** A line drawn as outlines, so that it looks the same whatever fonts the machine has. `y` is its base line, px. */
export function drawLine(text: string, x: number, y: number, sizePx: number, fill: string): string {
  const { letters, unitsPerEm } = alphabet();
  const scale = sizePx / unitsPerEm;
  let at = 0;
  const drawn = plainLetters(text).map((letter) => {
    const [advance, path] = letters[letter] ?? [0, ""];
    const placed = path === "" ? "" : `<path transform="translate(${at} 0)" d="${path}"/>`;
    at += advance;
    return placed;
  });
  return `<g transform="translate(${x} ${y}) scale(${scale})" fill="${fill}">${drawn.join("")}</g>`;
}

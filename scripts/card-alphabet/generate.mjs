// Writes the outlines of one serif face as paths, src/site/assets/card-alphabet.json, for the words on social cards:
// a picture drawn from them is the same on every machine, whatever fonts it has.
//   node scripts/card-alphabet/generate.mjs latin-ext.woff latin.woff
// The files come from the package @fontsource/source-serif-4 (SIL Open Font License 1.1), weight 400, normal.
import { readFileSync, writeFileSync } from "node:fs";
import { advanceOf, contoursOf, glyphsByCodePoint, tablesOf } from "./open-type.mjs";

const alphabet = {};
let unitsPerEm = 0;
// European letters, their punctuation and the minus sign: a card leaves out words that need more.
for (const file of process.argv.slice(2)) {
  const tables = tablesOf(readFileSync(file));
  unitsPerEm = tables.get("head").readUInt16BE(18);
  for (const [code, glyph] of glyphsByCodePoint(tables.get("cmap"))) {
    const isWanted = code >= 0x20 && (code < 0x180 || (code >= 0x2010 && code < 0x2070) || code === 0x2212);
    if (isWanted) alphabet[String.fromCodePoint(code)] = [advanceOf(tables, glyph), contoursOf(tables, glyph).map(pathOf).join("")];
  }
}
const letters = Object.fromEntries(Object.entries(alphabet).sort(([one], [other]) => one.codePointAt(0) - other.codePointAt(0)));
writeFileSync(new URL("../../src/site/assets/card-alphabet.json", import.meta.url), `${JSON.stringify({ unitsPerEm, letters })}\n`);

/** A contour of quadratic curves as an SVG path; between two points off the curve lies one on it, half-way. */
function pathOf(contour) {
  const start = contour.findIndex(({ on }) => on);
  const turned = [...contour.slice(start), ...contour.slice(0, start + 1)];
  let path = `M${turned[0].x} ${-turned[0].y}`;
  for (let index = 1; index < turned.length; index += 1) {
    const point = turned[index];
    const next = turned[index + 1];
    if (point.on) path += `L${point.x} ${-point.y}`;
    else if (next.on) { path += `Q${point.x} ${-point.y} ${next.x} ${-next.y}`; index += 1; }
    else path += `Q${point.x} ${-point.y} ${(point.x + next.x) / 2} ${-(point.y + next.y) / 2}`;
  }
  return `${path}Z`;
}

// Reads outlines out of a font: as much of OpenType 1.9 and of WOFF 1.0 (W3C 2012) as one serif face needs.
import { inflateSync } from "node:zlib";

/** Tables of a WOFF 1.0 file by their tags, unpacked. */
export function tablesOf(file) {
  if (file.toString("latin1", 0, 4) !== "wOFF") throw new RangeError("not a WOFF 1.0 file");
  const tables = new Map();
  for (let index = 0; index < file.readUInt16BE(12); index += 1) {
    const at = 44 + 20 * index;
    const [offset, packed, length] = [4, 8, 12].map((field) => file.readUInt32BE(at + field));
    const bytes = file.subarray(offset, offset + packed);
    tables.set(file.toString("latin1", at, at + 4), packed < length ? inflateSync(bytes) : bytes);
  }
  return tables;
}

/** Code point → glyph, from the format 4 subtable of `cmap`. */
export function glyphsByCodePoint(cmap) {
  const glyphs = new Map();
  for (let record = 0; record < cmap.readUInt16BE(2); record += 1) {
    const at = cmap.readUInt32BE(4 + 8 * record + 4);
    if (cmap.readUInt16BE(at) === 4) readSegments(cmap.subarray(at), glyphs);
  }
  return glyphs;
}

function readSegments(table, glyphs) {
  const doubled = table.readUInt16BE(6);
  for (let at = 0; at < doubled; at += 2) {
    const end = table.readUInt16BE(14 + at);
    const start = table.readUInt16BE(16 + doubled + at);
    const delta = table.readUInt16BE(16 + 2 * doubled + at);
    const rangeAt = 16 + 3 * doubled + at;
    const range = table.readUInt16BE(rangeAt);
    for (let code = start; code <= end && code < 0xffff; code += 1) {
      const found = range === 0 ? code : table.readUInt16BE(rangeAt + range + 2 * (code - start));
      if (found !== 0) glyphs.set(code, (found + delta) & 0xffff);
    }
  }
}

/** Width of a glyph in font units, from `hmtx`. */
export function advanceOf(tables, glyph) {
  const metrics = tables.get("hhea").readUInt16BE(34);
  return tables.get("hmtx").readUInt16BE(4 * Math.min(glyph, metrics - 1));
}

/** Contours of a glyph: lists of points {x, y, on}, y upwards, in font units. */
export function contoursOf(tables, glyph) {
  const isLong = tables.get("head").readInt16BE(50) === 1;
  const loca = tables.get("loca");
  const [from, to] = [glyph, glyph + 1].map((place) => (isLong ? loca.readUInt32BE(4 * place) : 2 * loca.readUInt16BE(2 * place)));
  if (from === to) return [];
  const data = tables.get("glyf").subarray(from, to);
  return data.readInt16BE(0) < 0 ? composite(tables, data) : simple(data);
}

function composite(tables, data) {
  const contours = [];
  for (let at = 10, more = true; more;) {
    const flags = data.readUInt16BE(at);
    const part = data.readUInt16BE(at + 2);
    const isWide = (flags & 1) !== 0;
    const [dx, dy] = isWide ? [data.readInt16BE(at + 4), data.readInt16BE(at + 6)] : [data.readInt8(at + 4), data.readInt8(at + 5)];
    if ((flags & 2) === 0) throw new RangeError("a part that is placed by points");
    at += isWide ? 8 : 6;
    const scales = (flags & 8) !== 0 ? 1 : (flags & 64) !== 0 ? 2 : (flags & 128) !== 0 ? 4 : 0;
    const read = Array.from({ length: scales }, (_none, index) => data.readInt16BE(at + 2 * index) / 16384);
    at += 2 * scales;
    const [a, b, c, d] = scales === 4 ? read : scales === 2 ? [read[0], 0, 0, read[1]] : [read[0] ?? 1, 0, 0, read[0] ?? 1];
    contours.push(...contoursOf(tables, part).map((contour) => contour.map(({ x, y, on }) => ({ x: a * x + c * y + dx, y: b * x + d * y + dy, on }))));
    more = (flags & 32) !== 0;
  }
  return contours;
}

function simple(data) {
  const ends = Array.from({ length: data.readInt16BE(0) }, (_none, index) => data.readUInt16BE(10 + 2 * index));
  const count = ends.at(-1) + 1;
  let at = 10 + 2 * ends.length;
  at += 2 + data.readUInt16BE(at);
  const flags = [];
  while (flags.length < count) {
    const flag = data[at++];
    const times = (flag & 8) === 0 ? 1 : 1 + data[at++];
    flags.push(...Array(times).fill(flag));
  }
  const coordinates = (short, same) => {
    let value = 0;
    return flags.map((flag) => {
      if ((flag & short) !== 0) value += (flag & same) === 0 ? -data[at++] : data[at++];
      else if ((flag & same) === 0) { value += data.readInt16BE(at); at += 2; }
      return value;
    });
  };
  const xs = coordinates(2, 16);
  const ys = coordinates(4, 32);
  const points = flags.map((flag, index) => ({ x: xs[index], y: ys[index], on: (flag & 1) === 1 }));
  return ends.map((end, index) => points.slice(index === 0 ? 0 : ends[index - 1] + 1, end + 1));
}

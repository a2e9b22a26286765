import { nearestName, problemAt, type Place, type Problem } from "../problems/index.js";
import { resolveInLog } from "./files/index.js";
import type { Photo } from "./log.js";
import { blankCode } from "./text/blank-code.js";

/** A picture as the notes write it. */
export interface WrittenPhoto {
  readonly written: string;
  readonly alt: string;
  /** In the file, from 1. */
  readonly line: number;
  readonly column: number;
}

const SHOWN_KINDS = /\.(?:jpe?g|png|webp|avif|gif)$/iu;
const INLINE = /!\[((?:[^[\]\\]|\\.){0,2000})\]\(\s*(?:<([^<>\n]*)>|((?:[^\s()\\]|\\.|\([^\s()]*\))*))/gu;
const BY_REFERENCE = /!\[((?:[^[\]\\]|\\.){0,2000})\](?:\[([^\]\n]{0,200})\])?(?!\()/gu;
const DEFINITION = /^ {0,3}\[([^\]\n]{1,200})\]:[ \t]*<?([^\s>]+)>?/gmu;
/** More pictures than any notes hold; a limit keeps hostile notes from stopping the build. */
export const MOST_PHOTOS = 500;

/** The pictures that notes show, in order. */
export function writtenPhotos(body: string, bodyLine: number): WrittenPhoto[] {
  if (!body.includes("![")) return [];
  const text = blankCode(body);
  const definitions = new Map([...text.matchAll(DEFINITION)].map(([, label = "", target = ""]) => [label.toLowerCase(), target]));
  const inline = [...text.matchAll(INLINE)].map(({ 1: alt = "", 2: bracketed, 3: bare = "", index }) => ({ alt, target: bracketed ?? bare, index }));
  const referred = [...text.matchAll(BY_REFERENCE)].flatMap(({ 1: alt = "", 2: label, index }) => {
    const target = definitions.get((label === undefined || label === "" ? alt : label).toLowerCase());
    return target === undefined ? [] : [{ alt, target, index }];
  });
  const ordered = [...inline, ...referred].toSorted((a, b) => a.index - b.index).slice(0, MOST_PHOTOS + 1);
  return ordered.map(({ alt, target, index }) => {
    const before = text.slice(0, index).split("\n");
    return { alt, written: target, line: bodyLine + before.length - 1, column: (before.at(-1)?.length ?? 0) + 1 };
  });
}

/** Finds each picture in the log, or says why it can't be shown. */
export function findPhotos(file: string, pictures: readonly WrittenPhoto[], paths: ReadonlySet<string>): { photos: Photo[]; problems: Problem[] } {
  const photos: Photo[] = [];
  const problems: Problem[] = [];
  for (const [index, picture] of pictures.entries()) {
    if (index === MOST_PHOTOS) {
      problems.push(problemAt("photo/too-many", { file, line: picture.line, column: picture.column, field: "notes", found: picture.written }, { limit: `${MOST_PHOTOS}` }));
      break;
    }
    const found = findPhoto(file, picture, paths);
    if ("code" in found) {
      problems.push(found);
      continue;
    }
    photos.push(found);
    if (found.alt.trim() === "") problems.push(problemAt("photo/without-words", { file, line: picture.line, column: picture.column, field: "notes", found: picture.written }, {}));
  }
  return { photos, problems };
}

function findPhoto(file: string, { written, alt, line, column }: WrittenPhoto, paths: ReadonlySet<string>): Photo | Problem {
  const place: Place = { file, line, column, field: "notes", found: written };
  const name = unescaped(written);
  const resolved = resolveInLog(file, name);
  if (!resolved.ok) return problemAt(resolved.reason === "address" ? "photo/address" : "photo/outside", place, {});
  if (!SHOWN_KINDS.test(resolved.path)) return problemAt("photo/kind", place, {});
  const path = [resolved.path, resolved.path.normalize("NFC"), resolved.path.normalize("NFD")].find((one) => paths.has(one));
  if (path !== undefined) return { written, file: path, alt, line };
  const folder = resolved.path.slice(0, resolved.path.lastIndexOf("/") + 1);
  const beside = [...paths].filter((one) => one.startsWith(folder) && SHOWN_KINDS.test(one)).map((one) => one.slice(folder.length));
  return problemAt("photo/missing", place, { nearest: nearestName(name, beside) });
}

/** `krausen%20lid.jpg` and `krausen\_lid.jpg` as the names they stand for. */
function unescaped(written: string): string {
  const plain = written.replaceAll(/\\([!-/:-@[-`{-~])/gu, "$1");
  try {
    return decodeURIComponent(plain);
  } catch {
    return plain;
  }
}

import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import path from "node:path";
import type { Sharp } from "sharp";
import { writeCacheEntry } from "./cache-entry.js";

/** A photo as it lies in the site. */
export interface SitePhoto {
  /** `photos/<hash>.jpg`, relative to the site's root. */
  readonly path: string;
  /** px */
  readonly width: number;
  /** px */
  readonly height: number;
  readonly bytes: Uint8Array;
}

const LONGEST_SIDE_PX = 1200;
/** A larger picture is refused before it is unpacked: few bytes can unpack to gigabytes. */
const MOST_PIXELS = 100_000_000;
/** Part of the cache key: raise it when the way photos are processed changes. */
const RECIPE = "1: 1200 px, JPEG 80";

/**
 * Resizes a photo to at most 1200 px and drops everything but its pixels (place, camera, date).
 * The same bytes give the same photo. Results are kept in `cacheFolder` by content.
 *
 * @param original the file's bytes, untrusted: what it is is read from its content, not its name
 * @returns undefined when it isn't a picture that is shown (JPEG, PNG, WebP, AVIF, GIF) or can't be decoded
 */
export async function preparePhoto(original: Uint8Array, cacheFolder: string): Promise<SitePhoto | undefined> {
  if (!isRaster(original)) return undefined;
  const { default: sharp } = await import("sharp");
  const hash = createHash("sha256").update(`${RECIPE} ${JSON.stringify(sharp.versions)}\n`).update(original).digest("hex").slice(0, 20);
  const cached = path.join(cacheFolder, `${hash}.jpg`);
  const describe = async (bytes: Uint8Array): Promise<SitePhoto> => {
    const { width, height } = await sharp(bytes).metadata();
    return { path: `photos/${hash}.jpg`, width, height, bytes };
  };
  const encode = (): Promise<Uint8Array> => encodeInto(cached, sharp(original, { limitInputPixels: MOST_PIXELS, failOn: "error" }));
  // A cache entry that is missing or damaged is made again; a photo that can't be decoded is given up.
  return readFile(cached).then(describe).catch(() => encode().then(describe)).catch(() => undefined);
}

async function encodeInto(cached: string, picture: Sharp): Promise<Uint8Array> {
  const bytes = await picture
    .autoOrient()
    .resize({ width: LONGEST_SIDE_PX, height: LONGEST_SIDE_PX, fit: "inside", withoutEnlargement: true })
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .jpeg({ quality: 80, progressive: true })
    .toBuffer();
  await writeCacheEntry(cached, bytes);
  return bytes;
}

/** Byte patterns that files of each kind begin with (at the offset given). */
const SIGNATURES: readonly (readonly { readonly at: number; readonly text: string }[])[] = [
  [{ at: 0, text: "\u00ff\u00d8\u00ff" }], // JPEG
  [{ at: 0, text: "\u0089PNG\r\n\u001a\n" }],
  [{ at: 0, text: "RIFF" }, { at: 8, text: "WEBP" }],
  [{ at: 0, text: "GIF87a" }],
  [{ at: 0, text: "GIF89a" }],
  [{ at: 4, text: "ftypavif" }],
];

function isRaster(bytes: Uint8Array): boolean {
  const head = Buffer.from(bytes.subarray(0, 16)).toString("latin1");
  return SIGNATURES.some((parts) => parts.every(({ at, text }) => head.startsWith(text, at)));
}

import { createHash } from "node:crypto";
import type { LogFiles } from "../records/index.js";
import type { LogReport } from "../report/index.js";
import { type SitePhoto, preparePhoto } from "./photos.js";

export interface SitePhotos {
  /** By path inside the log. */
  readonly photos: ReadonlyMap<string, SitePhoto>;
  /** Paths inside the log of photos that can't be shown. */
  readonly refused: readonly string[];
}

/** What was prepared before in this process, by the original's hash. */
const prepared = new Map<string, Promise<SitePhoto | undefined>>();

/** Prepares the photos of every published batch. */
export async function preparePhotos(report: LogReport, files: LogFiles, cacheFolder: string): Promise<SitePhotos> {
  const names = [...new Set(report.batches.flatMap((batch) => batch.photos.map(({ file }) => file)))];
  const photos = new Map<string, SitePhoto>();
  const refused: string[] = [];
  for (const file of names) {
    const photo = await preparedOnce(readIfPossible(files, file), cacheFolder);
    if (photo === undefined) refused.push(file);
    else photos.set(file, photo);
  }
  return { photos, refused };
}

function preparedOnce(original: Uint8Array | undefined, cacheFolder: string): Promise<SitePhoto | undefined> {
  if (original === undefined) return Promise.resolve(undefined);
  const hash = createHash("sha256").update(original).digest("hex");
  const known = prepared.get(hash);
  if (known !== undefined) return known;
  const photo = preparePhoto(original, cacheFolder);
  prepared.set(hash, photo);
  return photo;
}

function readIfPossible(files: LogFiles, file: string): Uint8Array | undefined {
  try {
    return Buffer.from(files.read(file));
  } catch {
    return undefined;
  }
}

import { mkdir, rename, writeFile } from "node:fs/promises";
import path from "node:path";

/** Writes a cache entry so that a reader never sees a part of it. A cache that can't be written only costs time. */
export async function writeCacheEntry(file: string, bytes: Uint8Array): Promise<void> {
  const partial = `${file}.${process.pid}`;
  try {
    await mkdir(path.dirname(file), { recursive: true });
    await writeFile(partial, bytes);
    await rename(partial, file);
  } catch {
    // Read-only or full disk: go on without the cache.
  }
}

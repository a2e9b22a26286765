import { type FSWatcher, watch } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import path from "node:path";

/** Editors write a file in several steps: wait until it has been quiet for this long. */
const QUIET_MS = 40;
const LOG_FOLDERS = ["batches", "shared"];
/** What is never read as part of a log. */
const LEFT_OUT = /^[_.]/;

/**
 * Calls `changed` after files of a log were written, added, renamed or removed. One watcher a
 * folder: a watcher on a file would lose it when an editor saves by renaming a new one over it.
 *
 * @param log absolute path of the log
 * @param stop ends the watching
 */
export async function watchLog(log: string, changed: () => void, stop: AbortSignal): Promise<void> {
  const watchers = new FolderWatchers();
  let timer: NodeJS.Timeout | undefined;
  const follow = async (): Promise<void> => {
    const folders = await foldersOf(log);
    if (!stop.aborted) watchers.follow(folders, noticed);
  };
  const noticed = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void follow().then(changed, changed), QUIET_MS);
  };
  stop.addEventListener("abort", () => {
    clearTimeout(timer);
    watchers.follow(new Map(), noticed);
  });
  await follow();
}

/** The folders now watched. A folder is known by path and inode: one that was removed and made again needs a new watcher. */
class FolderWatchers {
  readonly #watchers = new Map<string, { readonly inode: number; readonly watcher: FSWatcher }>();

  /** Watches exactly `folders` (path → inode) from now on. */
  follow(folders: ReadonlyMap<string, number>, noticed: () => void): void {
    for (const [folder, { inode, watcher }] of this.#watchers) {
      if (folders.get(folder) === inode) continue;
      watcher.close();
      this.#watchers.delete(folder);
    }
    for (const [folder, inode] of folders) if (!this.#watchers.has(folder)) this.#begin(folder, inode, noticed);
  }

  #begin(folder: string, inode: number, noticed: () => void): void {
    try {
      const watcher = watch(folder, (_event, name) => {
        if (name === null || !LEFT_OUT.test(name)) noticed();
      });
      // A folder that vanished: its parent's watcher reports that, and the next look at the tree forgets it.
      watcher.on("error", () => watcher.close());
      this.#watchers.set(folder, { inode, watcher });
    } catch {
      // It vanished between the look and the watch.
    }
  }
}

/** The log's own folder and all folders below batches/ and shared/, with their inodes. */
async function foldersOf(log: string): Promise<Map<string, number>> {
  const found = new Map<string, number>();
  const visit = async (folder: string, below: (name: string) => boolean): Promise<void> => {
    try {
      const [entries, { ino }] = await Promise.all([readdir(folder, { withFileTypes: true }), stat(folder)]);
      found.set(folder, ino);
      const inner = entries.filter((entry) => entry.isDirectory() && below(entry.name));
      await Promise.all(inner.map(({ name }) => visit(path.join(folder, name), (inside) => !LEFT_OUT.test(inside))));
    } catch {
      // Not there, or not ours to read: the build says so where it matters.
    }
  };
  await visit(log, (name) => LOG_FOLDERS.includes(name));
  return found;
}

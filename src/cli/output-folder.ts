import { access, mkdir, readdir, realpath, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { ExpectedFailure, fileErrorCode } from "./expected-failure.js";

/** Marks a folder as one that a build may replace. Part of the output, so its text never changes with the log. */
export const MARKER = "gylebook.txt";
const MARKER_TEXT = "Written by gylebook. The next build replaces this folder whole: keep nothing of your own in it.\n";

/** The file that marks a folder as ours to replace, and what it says. */
export interface Marker {
  readonly name: string;
  readonly text: string;
}

const SITE_MARKER: Marker = { name: MARKER, text: MARKER_TEXT };

/** Folders of a log that hold what people wrote. */
const LOG_FOLDERS = ["batches", "shared"];

/**
 * Refuses an output folder that a build must not replace: one that holds the log, one inside
 * what people wrote, a file, or a folder with content that isn't ours.
 *
 * @param out absolute path of the output folder; need not exist
 * @param log absolute path of the log
 * @param marker of folders that may be replaced
 * @throws ExpectedFailure
 */
export async function refuseUnsafeOutput(out: string, log: string, marker: Marker = SITE_MARKER): Promise<void> {
  const [realOut, realLog] = await Promise.all([realFolder(out), realFolder(log)]);
  if (isInside(realLog, realOut)) {
    throw new ExpectedFailure(`${out} holds the log itself, and a build replaces its output folder whole.`, "give another folder with --out");
  }
  for (const folder of LOG_FOLDERS) {
    if (isInside(realOut, path.join(realLog, folder))) {
      throw new ExpectedFailure(`${out} lies in the log's ${folder}/ folder, and a build never writes into the log.`, "give another folder with --out");
    }
  }
  await refuseForeignFolder(out, marker);
}

async function refuseForeignFolder(out: string, marker: Marker): Promise<void> {
  const names = await readdir(out).catch((error: unknown): string[] => {
    if (fileErrorCode(error) === "ENOENT") return [];
    if (fileErrorCode(error) === "ENOTDIR") throw new ExpectedFailure(`${out} is a file, not a folder.`, "give another folder with --out");
    throw error;
  });
  if (names.length > 0 && !names.includes(marker.name)) {
    throw new ExpectedFailure(`${out} has files that gylebook didn't write, and a build replaces its output folder whole.`, "give an empty or new folder with --out");
  }
}

/**
 * Lets `fill` write a whole new folder beside `out`, then puts it in the place of `out`.
 * If `fill` throws, or the machine stops, what was in `out` stays as it was.
 *
 * @param out absolute path
 * @param fill writes into the folder it is given, which is empty
 * @param marker put into the new folder, so that it may be replaced the next time
 */
export async function replaceFolder(out: string, fill: (folder: string) => Promise<void>, marker: Marker = SITE_MARKER): Promise<void> {
  await mkdir(path.dirname(out), { recursive: true });
  await clearLeftovers(out);
  const fresh = `${out}.new-${process.pid}`;
  try {
    await mkdir(fresh);
    await fill(fresh);
    await writeMarker(fresh, marker);
    await swap(fresh, out);
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

/** Marks `folder` as written by a build. */
export async function writeMarker(folder: string, marker: Marker = SITE_MARKER): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, marker.name), marker.text);
}

async function swap(fresh: string, out: string): Promise<void> {
  const old = `${out}.old-${process.pid}`;
  const had = await rename(out, old).then(() => true, (error: unknown) => {
    if (fileErrorCode(error) === "ENOENT") return false;
    throw error;
  });
  try {
    await rename(fresh, out);
  } catch (error) {
    if (had) await rename(old, out);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

/** Clears what a build that was stopped left beside `out`; puts the last good site back if it was stopped in the middle of the swap. */
async function clearLeftovers(out: string): Promise<void> {
  const parent = path.dirname(out);
  for (const name of await readdir(parent)) {
    const leftover = leftoverOf(name, path.basename(out));
    if (leftover === undefined || isRunning(leftover.pid)) continue;
    const place = path.join(parent, name);
    if (leftover.kind === "old" && !(await exists(out))) await rename(place, out);
    else await rm(place, { recursive: true, force: true });
  }
}

function leftoverOf(name: string, base: string): { readonly kind: string; readonly pid: number } | undefined {
  if (!name.startsWith(`${base}.`)) return undefined;
  const [, kind, pid] = /^(new|old)-(\d+)$/.exec(name.slice(base.length + 1)) ?? [];
  return kind === undefined || pid === undefined ? undefined : { kind, pid: Number(pid) };
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return pid !== process.pid;
  } catch (error) {
    // EPERM: it runs, as someone else's.
    return fileErrorCode(error) === "EPERM";
  }
}

const exists = (place: string): Promise<boolean> => access(place).then(() => true, () => false);

/** Whether `inner` is `outer` or lies in it; both absolute. */
export function isInside(inner: string, outer: string): boolean {
  const way = path.relative(outer, inner);
  return way === "" || (!way.startsWith(`..${path.sep}`) && way !== ".." && !path.isAbsolute(way));
}

/** The path with symbolic links followed as far as it exists. */
export async function realFolder(folder: string): Promise<string> {
  try {
    return await realpath(folder);
  } catch (error) {
    const parent = path.dirname(folder);
    if (fileErrorCode(error) !== "ENOENT" || parent === folder) return folder;
    return path.join(await realFolder(parent), path.basename(folder));
  }
}

import type { Problem } from "../problems/index.js";
import { type Log, type LogFiles, type RecordCache, parseLog, readLogFolder } from "../records/index.js";

export interface ReadLog {
  readonly files: LogFiles;
  readonly log: Log;
  readonly problems: readonly Problem[];
}

/**
 * Reads and checks a log.
 *
 * @param folder absolute path
 * @param cache the same one again gives unchanged records back as the same objects
 */
export function readLog(folder: string, cache?: RecordCache): ReadLog {
  const files = readLogFolder(folder);
  return { files, ...parseLog(files, cache) };
}

import type { ProblemCode } from "../../problems/index.js";

/** Something in the folder that isn't read, with what is said about it. */
export interface RefusedFile {
  readonly path: string;
  readonly code: Extract<ProblemCode, "log/not-found" | "log/link-outside" | "log/file-unreadable">;
  readonly why: string;
}

/** A log's files, wherever they are kept. Paths are inside the log, with forward slashes. */
export interface LogFiles {
  /** Every file, and every folder with a slash at its end; of the top level, and of all below batches/ and shared/. */
  readonly list: () => readonly string[];
  /** Throws where the file can't be read. */
  readonly read: (path: string) => string | Uint8Array;
  readonly refused: () => readonly RefusedFile[];
}

/** A log in memory: texts or bytes by path. */
export function logFilesOf(files: Readonly<Record<string, string | Uint8Array>>): LogFiles {
  const folders = new Set(Object.keys(files).flatMap(foldersAround));
  return {
    list: () => [...folders, ...Object.keys(files)].toSorted(),
    read: (path) => {
      const content = Object.hasOwn(files, path) ? files[path] : undefined;
      if (content === undefined) throw new Error("no such file");
      return content;
    },
    refused: () => [],
  };
}

/** Paths in byte order, the same on every machine. */
export function byPath(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function foldersAround(path: string): string[] {
  const parts = path.split("/").slice(0, -1);
  return parts.map((_, index) => `${parts.slice(0, index + 1).join("/")}/`);
}

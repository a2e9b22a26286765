import { readdirSync } from "node:fs";
import path from "node:path";

/** Paths inside a folder of all files below it, forward slashes, sorted. */
export function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"))
    .sort();
}

/** The HTML pages among them. */
export const pagesOf = (folder: string): string[] => filesOf(folder).filter((file) => file.endsWith(".html"));

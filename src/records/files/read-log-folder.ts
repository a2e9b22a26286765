import { lstatSync, readdirSync, readFileSync, realpathSync, statSync, type Stats } from "node:fs";
import { join, sep } from "node:path";
import { byPath, type LogFiles, type RefusedFile } from "./log-files.js";
import { isLeftOut } from "./log-path.js";

const LARGEST = 64 * 1024 * 1024;
const DEEPEST = 8;
const READ_WHOLE: ReadonlySet<string> = new Set(["batches", "shared"]);

/**
 * A log on disk: the one place that reads a log's files. Links that leave the log, devices and pipes are
 * never opened; names that begin with _ or . are not looked at.
 */
export function readLogFolder(directory: string): LogFiles {
  const walk = new FolderWalk(directory);
  return { list: () => walk.paths(), read: (path) => walk.read(path), refused: () => walk.refusals() };
}

class FolderWalk {
  readonly #directory: string;
  #root = "";
  #walked = false;
  readonly #paths: string[] = [];
  readonly #refused: RefusedFile[] = [];

  constructor(directory: string) {
    this.#directory = directory;
  }

  paths(): readonly string[] {
    this.#walkOnce();
    return this.#paths;
  }

  refusals(): readonly RefusedFile[] {
    this.#walkOnce();
    return this.#refused;
  }

  read(path: string): Uint8Array {
    this.#walkOnce();
    const full = join(this.#directory, path);
    if (!this.#isInside(realpathSync(full))) throw new Error("a link to a place outside the log");
    const { size } = statSync(full);
    if (size > LARGEST) throw new Error(`larger than ${LARGEST / 1024 / 1024} MB`);
    return readFileSync(full);
  }

  #walkOnce(): void {
    if (this.#walked) return;
    this.#walked = true;
    try {
      this.#root = realpathSync(this.#directory);
      if (!statSync(this.#root).isDirectory()) throw new Error("a file, not a folder");
    } catch (error) {
      this.#refuse(".", "log/not-found", error);
      return;
    }
    this.#walk("", new Set([this.#root]));
    this.#paths.sort(byPath);
  }

  #walk(folder: string, above: ReadonlySet<string>): void {
    for (const name of this.#namesIn(folder)) {
      if (isLeftOut(name)) continue;
      const path = folder === "" ? name : `${folder}/${name}`;
      const kind = this.#kindOf(path);
      if (kind === "file") this.#paths.push(path);
      if (kind === "folder") this.#enter(path, above);
    }
  }

  #enter(path: string, above: ReadonlySet<string>): void {
    this.#paths.push(`${path}/`);
    const real = realpathSync(join(this.#directory, path));
    const isTop = !path.includes("/");
    if ((isTop && !READ_WHOLE.has(path)) || above.has(real) || above.size > DEEPEST) return;
    this.#walk(path, new Set([...above, real]));
  }

  #namesIn(folder: string): string[] {
    try {
      return readdirSync(join(this.#directory, folder)).toSorted(byPath);
    } catch (error) {
      this.#refuse(folder === "" ? "." : folder, "log/file-unreadable", error);
      return [];
    }
  }

  #kindOf(path: string): "file" | "folder" | "other" {
    const top = path.split("/")[0] ?? "";
    try {
      const full = join(this.#directory, path);
      const own = lstatSync(full);
      if (!own.isSymbolicLink()) return kindOfStats(own);
      if (this.#isInside(realpathSync(full))) return kindOfStats(statSync(full));
      if (READ_WHOLE.has(top)) this.#refuse(path, "log/link-outside", undefined);
    } catch (error) {
      if (READ_WHOLE.has(top)) this.#refuse(path, "log/file-unreadable", error);
    }
    return "other";
  }

  #isInside(real: string): boolean {
    return real === this.#root || real.startsWith(this.#root.endsWith(sep) ? this.#root : this.#root + sep);
  }

  #refuse(path: string, code: RefusedFile["code"], error: unknown): void {
    this.#refused.push({ path, code, why: error === undefined ? "" : whyUnreadable(error) });
  }
}

function kindOfStats(stats: Stats): "file" | "folder" | "other" {
  if (stats.isFile()) return "file";
  return stats.isDirectory() ? "folder" : "other";
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: "permission denied", EPERM: "permission denied", ENOENT: "nothing at that path", ELOOP: "links that go round in a circle",
  EISDIR: "a folder", ENOTDIR: "a file where a folder was expected", EMFILE: "too many open files",
};

/** A system error in plain words, without paths of the machine. */
export function whyUnreadable(error: unknown): string {
  if (!(error instanceof Error)) return "an unknown fault";
  const code = "code" in error && typeof error.code === "string" ? error.code : undefined;
  return code === undefined ? error.message : REASONS[code] ?? code;
}

import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import path from "node:path";
import type { LogFiles } from "../records/index.js";
import { civilTime } from "./as-of.js";
import type { ExitCode } from "./effects.js";
import { MARKER } from "./output-folder.js";

/** What is remembered of a build, so that the same build again costs next to nothing. */
export interface BuiltSite {
  /** Of everything the site was made from, the program included; see `fingerprint`. */
  readonly inputs: string;
  /** Where the clock said what today is: the site is the same only as long as it says the same. */
  readonly clock?: { readonly zone: string; readonly says: string };
  /** Path in the site → hash of its content. */
  readonly files: Readonly<Record<string, string>>;
  /** What was said of the log. */
  readonly said: string;
  readonly exit: ExitCode;
}

/** A short hash of a file's content. */
function contentHash(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

/**
 * A hash of everything a site is made from: the log's files, what was asked for, and the program itself.
 * Undefined where a file can't be read.
 */
export function fingerprint(files: LogFiles, asked: readonly unknown[]): string | undefined {
  const hash = createHash("sha256").update(JSON.stringify([process.version, programHash(), asked, files.refused()]));
  try {
    for (const file of files.list()) hash.update(`\n${file}\n`).update(file.endsWith("/") ? "" : contentHash(files.read(file)));
  } catch {
    return undefined;
  }
  return hash.digest("hex");
}

let ownHash: string | undefined;

/** A hash of the program's code, so that no change to it goes unnoticed, released or not. */
function programHash(): string {
  ownHash ??= hashOfCode();
  return ownHash;
}

function hashOfCode(): string {
  const root = path.resolve(import.meta.dirname, "..");
  const code = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) => /\.(?:js|tsx?|css)$/.test(file)).sort();
  return contentHash(code.map((file) => `${file}\n${contentHash(readFileSync(path.join(root, file)))}`).join("\n"));
}

const noteFile = (cacheFolder: string, out: string): string => path.join(cacheFolder, "built", `${contentHash(out).slice(0, 20)}.json`);

/**
 * The last build into `out`, if it was made from the same inputs, today still is what it was, and what it wrote is still there as written.
 *
 * @param out absolute path
 */
export async function builtBefore(out: string, inputs: string | undefined, now: Date, cacheFolder: string): Promise<BuiltSite | undefined> {
  if (inputs === undefined) return undefined;
  try {
    const built = JSON.parse(await readFile(noteFile(cacheFolder, out), "utf8")) as BuiltSite;
    const isCurrent = built.inputs === inputs && (built.clock === undefined || civilTime(now, built.clock.zone).text === built.clock.says);
    return isCurrent && isAsWritten(out, built.files) ? built : undefined;
  } catch {
    // No such note, a damaged one, or a site that is gone: build.
    return undefined;
  }
}

function isAsWritten(out: string, written: BuiltSite["files"]): boolean {
  const files = filesOf(out);
  return files.length === Object.keys(written).length && files.every((file) => written[file] === hashOfFile(out, file));
}

function filesOf(out: string): string[] {
  return readdirSync(out, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(out, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"))
    .filter((file) => file !== MARKER);
}

const hashOfFile = (out: string, file: string): string => contentHash(readFileSync(path.join(out, file)));

/**
 * Path in a site that was just written → hash of the file's content. Read back from the disk: of bytes a hash
 * costs next to nothing, and a text would first have to be turned into them once more.
 *
 * @param out absolute path
 */
export function hashesOf(out: string): Record<string, string> {
  return Object.fromEntries(filesOf(out).map((file) => [file, hashOfFile(out, file)]));
}

/** Remembers a build. Where that can't be kept, the next one is made anew. */
export async function noteBuilt(out: string, built: BuiltSite, cacheFolder: string): Promise<void> {
  const file = noteFile(cacheFolder, out);
  try {
    await mkdir(path.dirname(file), { recursive: true });
    await writeFile(`${file}.${process.pid}`, JSON.stringify(built));
    await rename(`${file}.${process.pid}`, file);
  } catch {
    // Read-only or full disk.
  }
}

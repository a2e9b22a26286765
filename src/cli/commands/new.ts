import { mkdir, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import type { Call } from "../arguments.js";
import { civilTime } from "../as-of.js";
import type { Effects, ExitCode } from "../effects.js";
import { ExpectedFailure, fileErrorCode } from "../expected-failure.js";
import { COMPETITION_TABLES, EQUIPMENT, GITIGNORE, batchRecord, clubFile, competitionRecord } from "../starting-points.js";

interface StartingPoint {
  /** The folder to make, below the working folder; must not be there yet. */
  readonly folder: string;
  /** File below that folder → text. */
  readonly files: Readonly<Record<string, string>>;
}

interface Wanted {
  readonly name: string;
  /** Today, `2026-03-18`. */
  readonly date: string;
  readonly zone: string;
}

const KINDS: Readonly<Record<string, (wanted: Wanted) => StartingPoint>> = {
  log: ({ name, date, zone }) => ({
    folder: name,
    files: { "batches/first/index.md": batchRecord("first", date), "shared/club.yaml": clubFile(plainText(name), zone), "shared/equipment.yaml": EQUIPMENT, ".gitignore": GITIGNORE },
  }),
  batch: ({ name, date }) => ({ folder: `batches/${name}`, files: { "index.md": batchRecord(plainText(name), date) } }),
  competition: ({ name, date }) => ({
    folder: `shared/competitions/${name}`,
    files: { "index.md": competitionRecord(plainText(name), date), ...COMPETITION_TABLES },
  }),
};

/** `gylebook new`: writes a commented starting point, and nothing when something of that name is there. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const [kind = "", name = ""] = call.words;
  const start = KINDS[kind]?.({ name: checkedName(name), date: civilTime(effects.now(), effects.zone).date, zone: effects.zone });
  if (start === undefined) throw new ExpectedFailure(`gylebook new makes a log, a batch or a competition, not "${kind}".`, "usage: gylebook new log|batch|competition NAME");
  if (kind !== "log") await refuseOutsideLog(effects.workingFolder);
  await writeNew(effects.workingFolder, start);
  effects.print(Object.keys(start.files).map((file) => `Wrote ${start.folder}/${file}\n`).join(""));
  return 0;
}

function checkedName(name: string): string {
  if (/^[\p{L}\p{N}][\p{L}\p{N}-]*$/u.test(name)) return name;
  throw new ExpectedFailure(`A name is made of letters, digits and hyphens and begins with a letter or digit, not "${name}".`);
}

async function refuseOutsideLog(folder: string): Promise<void> {
  const found = await stat(path.join(folder, "batches")).catch(() => undefined);
  if (found?.isDirectory() !== true) throw new ExpectedFailure(`${folder} isn't a log: it has no folder batches/.`, "go into a log's folder first, or make one: gylebook new log NAME");
}

async function writeNew(workingFolder: string, { folder, files }: StartingPoint): Promise<void> {
  const place = path.join(workingFolder, folder);
  if (await isThere(place)) throw new ExpectedFailure(`${folder} is there already, and nothing is ever overwritten.`, "give another name");
  for (const [file, text] of Object.entries(files)) {
    const target = path.join(place, file);
    await mkdir(path.dirname(target), { recursive: true });
    // wx: fails rather than overwrite, even when the file came a moment ago.
    await writeFile(target, text, { flag: "wx" });
  }
}

async function isThere(place: string): Promise<boolean> {
  try {
    await stat(place);
    return true;
  } catch (error) {
    if (fileErrorCode(error) === "ENOENT") return false;
    throw error;
  }
}

/** A name as YAML reads it as text: quoted where it would be a number, a date or a yes or no. */
function plainText(name: string): string {
  return /^\d|^(?:true|false|null|yes|no|on|off|y|n)$/i.test(name) ? `"${name}"` : name;
}

import { type Problem, nearestName } from "../problems/index.js";
import { slugOf } from "../records/index.js";
import type { PrivateTarget } from "../report/index.js";
import { ExpectedFailure } from "./expected-failure.js";
import type { ReadLog } from "./read-log.js";

/** What a name on the command line stands for. */
export interface SheetsTarget {
  /** Path of its record inside the log. */
  readonly file: string;
  /** Absent where problems keep its record from being read. */
  readonly record?: PrivateTarget;
}

interface Named extends SheetsTarget {
  /** What it may be called by; the first one is how it is listed. */
  readonly names: readonly string[];
}

/**
 * The batch or the competition that a name stands for: a batch number as written or as in an
 * address, or the name of a competition's folder, with the folders before it where both have one name.
 *
 * @throws ExpectedFailure when nothing has that name, or more than one thing
 */
export function sheetsTarget(name: string, read: ReadLog): SheetsTarget {
  const known = [...batches(read), ...competitions(read)];
  const asked = tidied(name);
  const found = known.filter(({ names }) => names.some((each) => tidied(each) === asked));
  const [one, other] = found;
  if (one !== undefined && other === undefined) return one;
  if (one !== undefined) {
    throw new ExpectedFailure(`"${name}" names more than one record: ${found.map(({ file }) => file).join(", ")}.`, "give the path of the one that is meant, as listed here");
  }
  const nearest = nearestName(name, known.flatMap(({ names }) => names.slice(0, 1)));
  throw new ExpectedFailure(`The log has no batch and no competition "${name}".`, nearest === undefined ? advice(known) : `did you mean ${nearest}?`);
}

const MOST_LISTED = 12;

function advice(known: readonly Named[]): string {
  const names = known.flatMap(({ names: [first] }) => first ?? []);
  if (names.length === 0) return "the log has no batch and no competition yet";
  const more = names.length > MOST_LISTED ? `, and ${names.length - MOST_LISTED} more` : "";
  return `there are ${names.slice(0, MOST_LISTED).join(", ")}${more}`;
}

/** Capitals and a slash at the end make no difference. */
function tidied(name: string): string {
  return name.toLowerCase().replace(/\/$/u, "");
}

function batches({ log }: ReadLog): Named[] {
  return [
    ...log.batches.map((record): Named => ({ file: record.file, names: [record.data.batch, record.slug, ...paths(record.file)], record: { kind: "batch", record } })),
    ...log.broken.map(({ file, batch }): Named => ({ file, names: [...batch === undefined ? [] : [batch, slugOf(batch)], ...paths(file)] })),
  ];
}

const COMPETITION = /^shared\/competitions\/([^/]+)\/$/u;

function competitions({ log, files }: ReadLog): Named[] {
  return files.list().flatMap((folder): Named[] => {
    const [, slug] = COMPETITION.exec(folder) ?? [];
    if (slug === undefined) return [];
    const record = log.competitions.find((competition) => competition.slug === slug);
    const file = `${folder}index.md`;
    return [{ file, names: [slug, `competitions/${slug}`, ...paths(file)], ...(record === undefined ? {} : { record: { kind: "competition", record } }) }];
  });
}

/** A record may be named by its file, or by its folder where it is `index.md` in one. */
function paths(file: string): string[] {
  return file.endsWith("/index.md") ? [file, file.slice(0, -"/index.md".length)] : [file];
}

/** Problems of a record's own files, and of the files that all records share. */
export function problemsOf(file: string, problems: readonly Problem[]): Problem[] {
  const own = file.endsWith("/index.md") ? file.slice(0, -"index.md".length) : file;
  return problems.filter((problem) => problem.file.startsWith(own) || /^shared\/[^/]+$/u.test(problem.file));
}

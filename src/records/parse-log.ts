import { problemAt, type Problem } from "../problems/index.js";
import { attachFiles, type Surroundings } from "./attach-files.js";
import { slugOf } from "./batch-address.js";
import { remembered, type RecordCache } from "./cache.js";
import { byPath, isLeftOut, whyUnreadable, type LogFiles } from "./files/index.js";
import type { BatchRecord, BrokenRecord, Log } from "./log.js";
import { parseBatchFile, type ParsedBatch } from "./parse-batch.js";
import { parseCompetitions } from "./parse-competitions.js";
import { parseShared, SHARED_FILES, unknownShared, type Shared, type SharedContents } from "./parse-shared.js";
import { recordFiles } from "./record-files.js";
import { beerBalances, equipmentOf } from "./rules/beer-balance.js";
import { batchNumbersDiffer, namesAreDefined, samplesComeFromSomewhere, type KnownNames } from "./rules/in-log.js";
import { wallMs } from "./time/index.js";

export interface ParsedLogFolder {
  readonly log: Log;
  /** Every problem of every file, in order of file and place. */
  readonly problems: readonly Problem[];
}

/**
 * Reads a whole log. A record with an error is left out of `log.batches` and listed in `log.broken`, so that
 * the rest can be built; nothing a file holds makes it throw.
 *
 * @param files the log's files, on disk or in memory
 * @param cache pass the same one again and unchanged records come back as the same objects
 */
export function parseLog(files: LogFiles, cache: RecordCache = new Map()): ParsedLogFolder {
  return new LogParser(files, cache).parse();
}

class LogParser {
  readonly #files: LogFiles;
  readonly #cache: RecordCache;
  readonly #paths: readonly string[];
  readonly #problems: Problem[] = [];
  readonly #unreadable = new Set<string>();

  constructor(files: LogFiles, cache: RecordCache) {
    this.#files = files;
    this.#cache = cache;
    this.#paths = files.list().filter((path) => !path.split("/").some(isLeftOut)).toSorted(byPath);
  }

  parse(): ParsedLogFolder {
    for (const { path, code, why } of this.#files.refused()) this.#problems.push(code === "log/file-unreadable" ? problemAt(code, whole(path), { why }) : problemAt(code, whole(path, why), {}));
    const found = recordFiles(this.#paths, this.#files.refused());
    this.#problems.push(...found.problems);
    const shared = this.#parseShared();
    const { zone } = shared.club;
    const parsed = found.records.flatMap((file) => this.#parseBatch(file, zone));
    const known = this.#knownNames(parsed, shared);
    const competitions = parseCompetitions(this.#paths, { read: (path) => this.#read(path), zone, batches: numbersOf(parsed), cache: this.#cache });
    this.#problems.push(...shared.problems, ...batchNumbersDiffer(parsed), ...competitions.problems);
    const around: Surroundings = { paths: new Set(this.#paths), read: (path) => this.#read(path), zone, cache: this.#cache };
    const built = parsed.map((batch) => this.#complete(batch, around, shared, known));
    const problems = inOrder([...this.#problems, ...built.flatMap((one) => one.problems)]);
    const log = { club: shared.club, equipment: shared.equipment, styles: shared.styles, hops: shared.hops, malts: shared.malts, competitions: competitions.records };
    return { log: { ...log, ...sorted(built, problems) }, problems };
  }

  #parseShared(): Shared {
    const contents: [string, string | Uint8Array][] = SHARED_FILES.flatMap((name) => {
      const content = this.#paths.includes(`shared/${name}`) ? this.#read(`shared/${name}`) : undefined;
      return content === undefined ? [] : [[name, content]];
    });
    for (const path of this.#paths.filter((one) => /^shared\/[^/]+$/u.test(one))) {
      const problem = unknownShared(path);
      if (problem !== undefined) this.#problems.push(problem);
    }
    const inputs = SHARED_FILES.map((name) => contents.find(([one]) => one === name)?.[1]);
    return remembered(this.#cache, "shared", inputs, () => parseShared(Object.fromEntries(contents) as SharedContents));
  }

  #parseBatch(file: string, zone: string): ParsedBatch[] {
    const content = this.#read(file);
    return content === undefined ? [] : [remembered(this.#cache, `record ${file}`, [content, zone], () => parseBatchFile(file, content, zone))];
  }

  #knownNames(batches: readonly ParsedBatch[], { names }: Shared): KnownNames {
    const competitions = new Set(this.#paths.flatMap((path) => /^shared\/competitions\/([^/]+)\//u.exec(path)?.[1] ?? []));
    return { batches, numbers: numbersOf(batches), competitions: [...competitions], ...(names.styles === undefined ? {} : { styles: names.styles }) };
  }

  #complete(parsed: ParsedBatch, around: Surroundings, shared: Shared, known: KnownNames): BuiltBatch {
    const attached = attachFiles(parsed, around);
    const named = equipmentOf({ batch: parsed.partial, placeOf: parsed.placeOf }, shared.equipment);
    const isDefined = named.equipment !== undefined || shared.names.equipment === undefined || shared.names.equipment.includes(parsed.partial.equipment ?? "");
    const problems = [
      ...parsed.problems, ...attached.problems, ...(isDefined ? [] : named.problems),
      ...namesAreDefined(parsed, known), ...samplesComeFromSomewhere(parsed, known),
      ...beerBalances({ batch: parsed.partial, equipment: named.equipment, placeOf: parsed.placeOf }),
    ];
    const { data, file, body, bodyLine } = parsed;
    if (data === undefined) return { file, parsed, problems };
    const inputs = [parsed, ...attached.logs, ...attached.tastings.flatMap(({ scores, ranking }) => [scores, ranking]), JSON.stringify(attached.photos)];
    const record = remembered(this.#cache, `batch ${file}`, inputs, (): BatchRecord => ({
      file, slug: slugOf(data.batch), data, body, bodyLine,
      logs: attached.logs, photos: attached.photos, tastings: attached.tastings,
      placeOf: (field) => placeInFile(parsed, field),
    }));
    return { file, parsed, problems, record };
  }

  #read(path: string): string | Uint8Array | undefined {
    try {
      return this.#files.read(path);
    } catch (error) {
      if (!this.#unreadable.has(path)) this.#problems.push(problemAt("log/file-unreadable", whole(path), { why: whyUnreadable(error) }));
      this.#unreadable.add(path);
      return undefined;
    }
  }
}

interface BuiltBatch {
  readonly file: string;
  readonly parsed: ParsedBatch;
  readonly problems: readonly Problem[];
  readonly record?: BatchRecord;
}

/** Records in order of brew date; those with an error, or with a log that has one, apart. */
function sorted(built: readonly BuiltBatch[], problems: readonly Problem[]): Pick<Log, "batches" | "broken"> {
  const wrong = new Set(problems.filter(({ severity }) => severity === "error").map(({ file }) => file));
  const isBroken = (one: BuiltBatch): boolean => wrong.has(one.file) || one.problems.some(({ severity }) => severity === "error");
  const batches = built.flatMap((one) => (one.record === undefined || isBroken(one) ? [] : [one.record]));
  const broken = built.filter(isBroken).map(({ file, parsed: { partial: { batch, publish = true } } }): BrokenRecord => ({ file, publish, ...(batch === undefined ? {} : { batch }) }));
  return { batches: batches.toSorted((a, b) => wallMs(a.data.brewed) - wallMs(b.data.brewed) || byPath(a.data.batch, b.data.batch)), broken };
}

/** `dry_hops[0].amount` → its line and column; undefined where the record has no such field. */
function placeInFile({ placeOf }: ParsedBatch, field: string): { line: number; column: number } | undefined {
  const path = field.split(/[.[\]]+/u).filter((part) => part !== "").map((part) => (/^\d+$/u.test(part) ? Number(part) : part));
  const place = placeOf(path);
  return place.found === "" ? undefined : { line: place.line, column: place.column };
}

function inOrder(problems: readonly Problem[]): Problem[] {
  return problems.toSorted((a, b) => byPath(a.file, b.file) || a.line - b.line || a.column - b.column || byPath(a.code, b.code));
}

function numbersOf(batches: readonly ParsedBatch[]): string[] {
  return batches.flatMap(({ partial: { batch } }) => (batch === undefined ? [] : [batch]));
}

const whole = (file: string, found = ""): { file: string; line: number; column: number; field: string; found: string } => ({ file, line: 1, column: 1, field: "", found });

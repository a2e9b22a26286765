import { nearestName, problemAt, type Place, type Problem } from "../problems/index.js";
import { remembered, type RecordCache } from "./cache.js";
import { parseFermentationLog, type ParsedLog } from "./csv/fermentation-log.js";
import { parseRanking, parseScores, type ParsedRows, type RowsContent } from "./csv/tasting-rows.js";
import { folderOf, resolveInLog } from "./files/index.js";
import type { FermentationLog, Photo, TastingRows } from "./log.js";
import type { ParsedBatch } from "./parse-batch.js";
import { findPhotos } from "./photos.js";
import { scoredAttributesMatch } from "./rules/attributes.js";
import type { FieldPath } from "./text/yaml-places.js";

/** The files that a record names, read. */
export interface Attached {
  readonly logs: readonly FermentationLog[];
  readonly photos: readonly Photo[];
  readonly tastings: readonly TastingRows[];
  readonly problems: readonly Problem[];
}

/** What attaching needs to know of the rest of the log. */
export interface Surroundings {
  readonly paths: ReadonlySet<string>;
  /** A file's content; undefined, and reported elsewhere, where it can't be read. */
  readonly read: (path: string) => string | Uint8Array | undefined;
  readonly zone: string;
  readonly cache: RecordCache;
}

/** Reads the logs, score files and photos of a record. */
export function attachFiles(parsed: ParsedBatch, around: Surroundings): Attached {
  const logs = (parsed.partial.fermentation?.log ?? []).map((_, index) => attachLog(parsed, index, around));
  const tastings = (parsed.partial.tastings ?? []).map((_, index) => attachTasting(parsed, index, around));
  const { photos, problems } = findPhotos(parsed.file, parsed.pictures, around.paths);
  const scored = tastings.flatMap(({ attributes }) => attributes);
  return {
    logs: logs.flatMap(({ log }) => (log === undefined ? [] : [log])),
    tastings: tastings.map(({ rows }) => rows), photos,
    problems: [...logs, ...tastings].flatMap((one) => one.problems).concat(scoredAttributesMatch(parsed, scored), problems),
  };
}

function attachLog(parsed: ParsedBatch, index: number, around: Surroundings): ParsedLog {
  const source = parsed.partial.fermentation?.log?.[index];
  if (source === undefined) return { problems: [] };
  const path: FieldPath = ["fermentation", "log", index];
  const found = findFile(parsed.file, source.file, parsed.placeOf(source.standard ? path : [...path, "file"]), around);
  if (found.problem !== undefined) return { problems: [found.problem] };
  const { file, content } = found;
  if (file === undefined || content === undefined) return { problems: [] };
  const { zone, cache } = around;
  return remembered(cache, `log ${parsed.file} ${index}`, [file, content, JSON.stringify(source), zone], () => parseFermentationLog({ file, content, source, zone }));
}

interface AttachedTasting {
  readonly rows: TastingRows;
  readonly attributes: readonly Place[];
  readonly problems: readonly Problem[];
}

function attachTasting(parsed: ParsedBatch, index: number, around: Surroundings): AttachedTasting {
  const tasting = parsed.partial.tastings?.[index];
  const samples = tasting?.samples?.map(({ sample }) => sample);
  const read = <Row>(name: string | undefined, key: "scores" | "ranking", parse: (content: RowsContent) => ParsedRows<Row>): ParsedRows<Row> => {
    const found: FoundFile = name === undefined ? {} : findFile(parsed.file, name, parsed.placeOf(["tastings", index, key]), around);
    if (found.problem !== undefined) return { attributes: [], problems: [found.problem] };
    const { file, content } = found;
    if (file === undefined || content === undefined) return { attributes: [], problems: [] };
    return remembered(around.cache, `${key} ${parsed.file} ${index}`, [file, content, JSON.stringify(samples)], () => parse({ file, content, samples }));
  };
  const scores = read(tasting?.scores, "scores", parseScores);
  const ranking = read(tasting?.ranking, "ranking", parseRanking);
  return {
    rows: { ...(scores.rows === undefined ? {} : { scores: scores.rows }), ...(ranking.rows === undefined ? {} : { ranking: ranking.rows }) },
    attributes: scores.attributes,
    problems: [...scores.problems, ...ranking.problems],
  };
}

/** A file that a record names; without content where it couldn't be read, which is reported where it was tried. */
interface FoundFile {
  readonly problem?: Problem;
  readonly file?: string;
  readonly content?: string | Uint8Array;
}

function findFile(record: string, name: string, place: Place, { paths, read }: Surroundings): FoundFile {
  const resolved = resolveInLog(record, name);
  if (!resolved.ok) return { problem: problemAt("log/path-outside", place, {}) };
  if (paths.has(resolved.path)) {
    const content = read(resolved.path);
    return { file: resolved.path, ...(content === undefined ? {} : { content }) };
  }
  const folder = folderOf(resolved.path);
  const beside = [...paths].filter((path) => folderOf(path) === folder && path.endsWith(".csv")).map((path) => path.slice(folder.length + 1));
  return { problem: problemAt("log/file-missing", place, { nearest: nearestName(name, beside) }) };
}

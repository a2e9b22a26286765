import type { Problem } from "../problems/index.js";
import { writtenPhotos, type WrittenPhoto } from "./photos.js";
import { RECORD_RULES } from "./rules/index.js";
import { validateHours } from "./rules/skipped-hours.js";
import { batchSchema, type Batch, type PartialBatch } from "./schema/index.js";
import { validate } from "./schema/validate.js";
import { parseFrontMatter } from "./text/front-matter.js";
import { parseYaml, type YamlTree } from "./text/yaml-tree.js";

/** A record as far as its own file tells: before its logs, photos and the rest of the log are looked at. */
export interface ParsedBatch {
  readonly file: string;
  /** Absent when there was a problem. */
  readonly data?: Batch;
  /** What could be read in any case. */
  readonly partial: PartialBatch;
  readonly body: string;
  readonly bodyLine: number;
  readonly pictures: readonly WrittenPhoto[];
  readonly placeOf: YamlTree["placeOf"];
  readonly problems: readonly Problem[];
}

/** Reads one record. Depends on nothing but the file and the club's zone. */
export function parseBatchFile(file: string, content: string | Uint8Array, zone: string): ParsedBatch {
  const { tree, body, bodyLine, problems } = parseFrontMatter(file, content);
  const pictures = writtenPhotos(body, bodyLine);
  if (tree === undefined) return { file, partial: {}, body, bodyLine, pictures, placeOf: parseYaml("", file).placeOf, problems };
  const { value, partial, written, problems: wrong } = validate(batchSchema, tree);
  const { placeOf } = tree;
  const between = RECORD_RULES.flatMap((rule) => rule({ batch: partial, placeOf }));
  return {
    file, partial, body, bodyLine, pictures, placeOf,
    ...(value === undefined ? {} : { data: value }),
    problems: [...problems, ...wrong, ...validateHours(written, zone, placeOf), ...between],
  };
}

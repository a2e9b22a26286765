import { folded, nearestName, problemAt, type Place, type Problem } from "../../problems/index.js";
import { pagesOf, slugOf, TAKEN_PAGES } from "../batch-address.js";
import type { ParsedBatch } from "../parse-batch.js";

/** Names that a record may use; absent where the file that defines them can't be read, and nothing can be said. */
export interface KnownNames {
  readonly styles?: readonly string[];
  readonly competitions: readonly string[];
  readonly batches: readonly ParsedBatch[];
  /** Their batch numbers. */
  readonly numbers: readonly string[];
}

const LISTED = 8;

/** Names in a record that must be defined elsewhere in the log. */
export function namesAreDefined({ partial, placeOf }: ParsedBatch, { styles, competitions, numbers }: KnownNames): Problem[] {
  const others = partial.repeats === undefined ? [] : numbers.filter((number) => number !== partial.batch);
  const problems: Problem[] = [];
  const look = (code: "record/style-unknown" | "record/repeats-unknown" | "record/competition-unknown", name: string | undefined, known: readonly string[] | undefined, path: readonly PropertyKey[]): void => {
    if (name === undefined || known === undefined || known.includes(name)) return;
    const nearest = nearestName(name, known) ?? known.find((one) => folded(one).includes(folded(name)));
    problems.push(problemAt(code, placeOf(path), { nearest, known: known.length > LISTED ? "" : known.join(", ") }));
  };
  look("record/style-unknown", partial.style, styles, ["style"]);
  look("record/repeats-unknown", partial.repeats, others, ["repeats"]);
  for (const [index, entry] of (partial.enter ?? []).entries()) {
    look("record/competition-unknown", entry.competition, competitions, ["enter", index, "competition"]);
    look("record/style-unknown", entry.style, styles, ["enter", index, "style"]);
  }
  return problems;
}

/** Where tasting samples come from: a kept sample or a package, of this batch or another. */
export function samplesComeFromSomewhere(parsed: ParsedBatch, { batches }: KnownNames): Problem[] {
  return (parsed.partial.tastings ?? []).flatMap(({ samples }, index) => (samples ?? []).flatMap(({ sample, value }) => {
    const known = sourcesOf(parsed, value, batches);
    if (known.has(value)) return [];
    const place = parsed.placeOf(["tastings", index, "samples", sample]);
    return [problemAt("tasting/source-unknown", place, { nearest: nearestName(value, known), known: [...known].slice(0, LISTED).join(", ") })];
  }));
}

function sourcesOf(own: ParsedBatch, written: string, batches: readonly ParsedBatch[]): Set<string> {
  const slash = written.lastIndexOf("/");
  if (slash === -1) return drawnFrom(own);
  const other = batches.find(({ partial }) => partial.batch === written.slice(0, slash));
  if (other === undefined) return new Set(batches.flatMap(({ partial: { batch } }) => (batch === undefined ? [] : [`${batch}${written.slice(slash)}`])));
  return new Set([...drawnFrom(other)].map((source) => `${other.partial.batch ?? ""}/${source}`));
}

/** Until its packaging is recorded, a batch may be in any package. */
function drawnFrom({ partial: { samples, package: packages } }: ParsedBatch): Set<string> {
  const kept = (samples ?? []).flatMap((sample) => (sample.kept === undefined ? [] : [sample.kept]));
  const into = packages === undefined ? ["keg", "bottles", "cask"] : packages.flatMap(({ into: one }) => (one === undefined ? ["keg", "bottles", "cask"] : [one]));
  return new Set([...kept, ...into]);
}

/** One batch a number, and one page a batch. Both places are named, each in the other's message. */
export function batchNumbersDiffer(batches: readonly ParsedBatch[]): Problem[] {
  const pages = new Map<string, { place: Place; batch: string }>();
  const problems: Problem[] = [];
  for (const { partial: { batch }, placeOf } of batches) {
    if (batch === undefined) continue;
    const place = placeOf(["batch"]);
    const slug = slugOf(batch);
    if (slug === "") problems.push(problemAt("record/batch-without-letters", place, {}));
    const reserved = TAKEN_PAGES.get(slug);
    if (reserved !== undefined) problems.push(problemAt("record/batch-address", place, { page: `${slug}.html`, other: reserved }));
    const taken = pagesOf(slug).map((page) => ({ page, by: pages.get(page) })).find(({ by }) => by !== undefined);
    if (taken?.by !== undefined) problems.push(...clash({ place, batch }, { ...taken.by, page: taken.page }));
    for (const page of pagesOf(slug)) if (!pages.has(page)) pages.set(page, { place, batch });
  }
  return problems;
}

function clash(later: { place: Place; batch: string }, earlier: { place: Place; batch: string; page: string }): Problem[] {
  const at = ({ file, line }: Place): string => `${file}:${line}`;
  if (later.batch === earlier.batch) {
    return [problemAt("record/batch-twice", earlier.place, { other: at(later.place) }), problemAt("record/batch-twice", later.place, { other: at(earlier.place) })];
  }
  return [problemAt("record/batch-address", later.place, { page: `${earlier.page}.html`, other: `${earlier.batch} at ${at(earlier.place)}` })];
}

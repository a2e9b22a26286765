import type { Problem } from "../problems/index.js";
import { remembered, type RecordCache } from "./cache.js";
import type { CompetitionRecord } from "./competition-record.js";
import type { Lined } from "./csv/competition-tables.js";
import { parseCompetition, type CompetitionContents, type CompetitionRows } from "./parse-competition.js";
import { checkCompetition } from "./rules/competition.js";
import { checkScores } from "./rules/competition-scores.js";

const FILES = ["index.md", "entries.csv", "judges.csv", "scores.csv", "finals.csv", "best-of-show.csv"];

export interface CompetitionSurroundings {
  readonly read: (path: string) => string | Uint8Array | undefined;
  readonly zone: string;
  /** The batch numbers of the log. */
  readonly batches: readonly string[];
  readonly cache: RecordCache;
}

interface CheckedCompetition {
  readonly record?: CompetitionRecord;
  readonly problems: readonly Problem[];
}

/** Reads every folder of shared/competitions/. One with an error gives its problems and no record. */
export function parseCompetitions(paths: readonly string[], around: CompetitionSurroundings): { records: CompetitionRecord[]; problems: Problem[] } {
  const folders = paths.filter((path) => /^shared\/competitions\/[^/]+\/$/u.test(path)).map((path) => path.slice(0, -1));
  const checked = folders.map((folder) => readFolder(folder, paths, around));
  return { records: checked.flatMap(({ record }) => (record === undefined ? [] : [record])), problems: checked.flatMap(({ problems }) => problems) };
}

function readFolder(folder: string, paths: readonly string[], { read, zone, batches, cache }: CompetitionSurroundings): CheckedCompetition {
  const contents: [string, string | Uint8Array | undefined][] = FILES.map((name) => [name, paths.includes(`${folder}/${name}`) ? read(`${folder}/${name}`) : undefined]);
  const inputs = [zone, batches.join("\n"), ...contents.map(([, content]) => content)];
  return remembered(cache, `competition ${folder}`, inputs, () => {
    const present = Object.fromEntries(contents.filter(([, content]) => content !== undefined)) as CompetitionContents;
    const parsed = parseCompetition(folder, present, zone);
    checkCompetition(parsed.rows, batches);
    const errors = parsed.problems();
    if (parsed.data === undefined || errors.some(({ severity }) => severity === "error")) return { problems: errors };
    // What is missing or left open can only be told once every row can be read.
    checkScores(parsed.rows, parsed.data);
    const problems = parsed.problems();
    const record = { file: `${folder}/index.md`, slug: folder.slice(folder.lastIndexOf("/") + 1), data: parsed.data, body: parsed.body, ...plainRows(parsed.rows) };
    return { record, problems };
  });
}

function plainRows(rows: CompetitionRows): Pick<CompetitionRecord, keyof CompetitionRows> {
  return {
    entries: rows.entries.map(plain), judges: rows.judges.map(plain), scores: rows.scores.map(plain),
    finals: rows.finals.map(plain), bestOfShow: rows.bestOfShow.map(plain),
  };
}

/** A row without what only the checks needed. */
function plain<Row extends object>(lined: Lined<Row>): Row {
  return Object.fromEntries(Object.entries(lined).filter(([key]) => key !== "line" && key !== "reader")) as Row;
}

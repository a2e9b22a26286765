import { problemAt, type Given, type Problem, type ProblemCode } from "../problems/index.js";
import type { CompetitionRecord } from "./competition-record.js";
import { columnPlaces, RowReader } from "./csv/cells.js";
import { BEST_OF_SHOW, ENTRIES, FINALS, JUDGES, SCORES, type CompetitionTable, type Lined } from "./csv/competition-tables.js";
import { MOST_HAND_WRITTEN, parseTable, PLAIN_FORM } from "./csv/table.js";
import { competitionSchema, type Competition } from "./schema/index.js";
import { validate } from "./schema/validate.js";
import { validateHours } from "./rules/skipped-hours.js";
import { decodeText } from "./text/decode.js";
import { parseFrontMatter } from "./text/front-matter.js";

/** The rows of a competition's files that could be read, for the rules that compare them. */
export interface CompetitionRows {
  readonly entries: readonly Lined<CompetitionRecord["entries"][number]>[];
  readonly judges: readonly Lined<CompetitionRecord["judges"][number]>[];
  readonly scores: readonly Lined<CompetitionRecord["scores"][number]>[];
  readonly finals: readonly Lined<CompetitionRecord["finals"][number]>[];
  readonly bestOfShow: readonly Lined<CompetitionRecord["bestOfShow"][number]>[];
}

/** A competition as read, before its files are compared with each other and with the log. */
export interface ParsedCompetition {
  /** Folder inside the log. */
  readonly folder: string;
  readonly data?: Competition;
  readonly body: string;
  readonly rows: CompetitionRows;
  readonly problems: () => readonly Problem[];
}

/** Contents of a competition's files by bare name; a file that isn't there is left out. */
export type CompetitionContents = Readonly<Partial<Record<string, string | Uint8Array>>>;

/** The page name that competitions/ needs for itself, in whatever case a file system tells apart or not. */
const TAKEN_FOLDER = "index";

function folderProblems(folder: string, file: string): Problem[] {
  const name = folder.slice(folder.lastIndexOf("/") + 1);
  return name.toLowerCase() === TAKEN_FOLDER ? [problemAt("competition/folder-name", { file, line: 1, column: 1, field: "", found: name }, {})] : [];
}

/** Reads the files of one competition's folder. */
export function parseCompetition(folder: string, contents: CompetitionContents, zone: string): ParsedCompetition {
  const index = contents["index.md"];
  const file = `${folder}/index.md`;
  const head = index === undefined
    ? { body: "", bodyLine: 1, problems: [problemAt("competition/file-missing", { file, line: 1, column: 1, field: "", found: "" }, {})] }
    : parseFrontMatter(file, index);
  const { tree } = head;
  const validated = tree === undefined ? undefined : validate(competitionSchema, tree);
  const hours = tree === undefined || validated === undefined ? [] : validateHours(validated.written, zone, tree.placeOf);
  const sheet = validated?.partial.sheet ?? [];
  const lists = new TableReader(folder, contents, sheet);
  const rows = {
    entries: lists.read(ENTRIES), judges: lists.read(JUDGES), scores: sheet.length === 0 ? [] : lists.read(SCORES),
    finals: lists.read(FINALS), bestOfShow: lists.read(BEST_OF_SHOW),
  };
  const problems = [...folderProblems(folder, file), ...head.problems, ...(validated?.problems ?? []), ...hours];
  return {
    folder, body: head.body, rows,
    ...(validated?.value === undefined ? {} : { data: validated.value }),
    problems: () => [...problems, ...lists.problems()],
  };
}

class TableReader {
  readonly #folder: string;
  readonly #contents: CompetitionContents;
  readonly #sheet: Competition["sheet"];
  readonly #lists: (() => readonly Problem[])[] = [];

  constructor(folder: string, contents: CompetitionContents, sheet: Competition["sheet"]) {
    this.#folder = folder;
    this.#contents = contents;
    this.#sheet = sheet;
  }

  problems(): Problem[] {
    return this.#lists.flatMap((list) => [...list()]);
  }

  read<Row>(kind: CompetitionTable<Row>): Lined<Row>[] {
    const content = this.#contents[kind.file];
    if (content === undefined) return [];
    const file = `${this.#folder}/${kind.file}`;
    const decoded = decodeText(file, content, { most: MOST_HAND_WRITTEN });
    this.#lists.push(() => decoded.problems);
    if (decoded.text === "" && decoded.problems.length > 0) return [];
    const columns = kind.columns(this.#sheet);
    const table = parseTable(file, decoded.text, { ...PLAIN_FORM, columns: columns.required.join(",") });
    this.#lists.push(() => table.problems.list());
    if (table.header.length === 0) return [];
    const places = columnPlaces(table, columns);
    return table.rows.flatMap((cells) => {
      const reader = new RowReader(cells, places, table.problems);
      const row = kind.read(reader, this.#sheet);
      return row === undefined ? [] : [{ ...row, line: reader.line, reader }];
    });
  }
}

/** A competition's problem at a cell of one of its rows. */
export function reportCell<Code extends ProblemCode>(row: Lined<object>, column: string, code: Code, given: Given<Code> | (() => Given<Code>)): void {
  row.reader.report(code, column, given);
}

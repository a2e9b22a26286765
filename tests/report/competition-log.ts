import { logFilesOf, parseLog, type Log } from "../../src/records/index.js";
import { buildLogReport, type CompetitionReport, type LogReport } from "../../src/report/index.js";

export interface CompetitionFiles {
  /** Front matter besides name and date. */
  readonly head?: string;
  readonly entries: string;
  readonly judges?: string;
  readonly scores?: string;
  readonly finals?: string;
  readonly best?: string;
  /** Records by file name. */
  readonly batches?: Readonly<Record<string, string>>;
}

/** A log with one competition, the cup of 12 September 2026; an error in it is a mistake in the test. */
export function competitionLog({ head = "", entries, judges, scores, finals, best, batches = {} }: CompetitionFiles): Log {
  const files: Record<string, string | undefined> = {
    "index.md": `---\nname: Cup\ndate: 2026-09-12\n${head}---\nThe day.\n`,
    "entries.csv": entries, "judges.csv": judges, "scores.csv": scores, "finals.csv": finals, "best-of-show.csv": best,
  };
  const given = Object.entries(files).flatMap(([name, text]) => (text === undefined ? [] : [[`shared/competitions/cup/${name}`, text] as const]));
  const records = Object.entries({ "one.md": "---\ntitle: Pale\nbatch: TP-01\nbrewed: 2026-03-01\n---\n", ...batches }).map(([name, text]) => [`batches/${name}`, text] as const);
  const { log, problems } = parseLog(logFilesOf(Object.fromEntries([...given, ...records])));
  const errors = problems.filter(({ severity }) => severity === "error");
  if (errors.length > 0) throw new Error(errors.map(({ file, line, expected, found }) => `${file}:${String(line)} ${expected}, found ${found}`).join("\n"));
  return log;
}

export function reportAt(log: Log, asOf: string): LogReport {
  const [date = "", time] = asOf.split(" ");
  return buildLogReport(log, { asOf: { text: asOf, date, ...(time === undefined ? {} : { time }) } });
}

/** The results as they stand after the release. */
export function resultsOf(files: CompetitionFiles): CompetitionReport {
  const [results] = reportAt(competitionLog({ ...files, head: `release: 2026-09-13 18:00\n${files.head ?? ""}` }), "2026-10-01").competitions;
  if (results === undefined) throw new Error("the competition is not released");
  return results;
}

export const OPEN = "feedback: public\nhandles: shown\n";

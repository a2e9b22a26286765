import path from "node:path";
import { type Problem, type ProblemFormat, formatProblems } from "../../problems/index.js";
import { releaseProblems } from "../../report/index.js";
import { type Call, textOption } from "../arguments.js";
import { civilTime } from "../as-of.js";
import type { Effects, ExitCode } from "../effects.js";
import { ExpectedFailure } from "../expected-failure.js";
import { logFolder } from "../log-folder.js";
import { readLog } from "../read-log.js";

const FORMATS: readonly string[] = ["text", "json", "github"] satisfies readonly ProblemFormat[];

/** `gylebook check`: every problem of every file, in one run. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const format = checkedFormat(textOption(call, "format") ?? "text");
  const log = await logFolder(call.words[0], effects);
  const read = readLog(log);
  const problems = [...read.problems, ...releaseProblems(read.log, read.log.club.asOf ?? civilTime(effects.now(), read.log.club.zone))];
  // Annotations name files from where the workflow runs; people and programs get the path inside the log.
  const listed = format === "github" ? problems.map((problem) => fromWorkingFolder(problem, log, effects)) : problems;
  const text = formatProblems(listed, format);
  if (text !== "") effects.print(`${text}\n`);
  return problems.some(({ severity }) => severity === "error") ? 1 : 0;
}

function checkedFormat(format: string): ProblemFormat {
  if (isFormat(format)) return format;
  throw new ExpectedFailure(`--format expects one of ${FORMATS.join(", ")}, found "${format}".`);
}

const isFormat = (format: string): format is ProblemFormat => FORMATS.includes(format);

function fromWorkingFolder(problem: Problem, log: string, effects: Effects): Problem {
  const file = path.relative(effects.workingFolder, path.join(log, problem.file));
  return { ...problem, file: file.replaceAll(path.sep, "/") };
}

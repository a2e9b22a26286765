import { printable } from "./printable.js";
import type { Problem } from "./problem.js";

export type ProblemFormat = "text" | "json" | "github";

const LISTED_PER_FILE = 20;

/**
 * All problems as one text: for people, for programs, or as annotations of a GitHub workflow.
 * The text ends with a count line and no line break.
 */
export function formatProblems(problems: readonly Problem[], format: ProblemFormat): string {
  if (format === "json") return JSON.stringify(problems, null, 2);
  const shown = problems.map(onOneLine);
  if (format === "github") return shown.map(annotation).join("\n");
  return [...byFile(shown).flatMap(textOfFile), countLine(problems)].join("\n");
}

/** `3 errors and 1 warning in 2 files.`, or `No problems.` */
export function countLine(problems: readonly Problem[]): string {
  if (problems.length === 0) return "No problems.";
  const errors = problems.filter(({ severity }) => severity === "error").length;
  const warnings = problems.length - errors;
  const counts = [counted(errors, "error"), counted(warnings, "warning")].filter((text) => !text.startsWith("0 "));
  return `${counts.join(" and ")} in ${counted(new Set(problems.map(({ file }) => file)).size, "file")}.`;
}

/** Names of files and fields are a stranger's text as much as what stands in them. */
function onOneLine(problem: Problem): Problem {
  const { file, field, expected, fix } = problem;
  return { ...problem, file: printable(file), field: printable(field), expected: printable(expected), fix: printable(fix) };
}

function byFile(problems: readonly Problem[]): Problem[][] {
  const files = new Map<string, Problem[]>();
  for (const problem of problems) {
    const list = files.get(problem.file);
    if (list === undefined) files.set(problem.file, [problem]);
    else list.push(problem);
  }
  return [...files.values()];
}

function textOfFile(problems: readonly Problem[]): string[] {
  const rest = problems.length - LISTED_PER_FILE;
  const lines = problems.slice(0, LISTED_PER_FILE).map(textOfProblem);
  return rest > 0 ? [...lines, `${problems[0]?.file ?? ""}: and ${rest} more\n`] : lines;
}

function textOfProblem(problem: Problem): string {
  const { file, line, column, fix, code, severity } = problem;
  const warning = severity === "warning" ? " (a warning: the build goes on)" : "";
  return `${file}:${line}:${column}  ${sentence(problem)}\n    ${fix}\n    [${code}]${warning}\n`;
}

function sentence({ field, expected, found }: Problem): string {
  const where = field === "" ? "" : `${field}: `;
  return `${where}expected ${expected}, found ${found === "" ? "nothing" : `"${found}"`}`;
}

/** Workflow commands of GitHub Actions: `::error file=…,line=…,col=…,title=…::message`. */
function annotation(problem: Problem): string {
  const { severity, file, line, column, code, fix } = problem;
  const place = `file=${property(file)},line=${line},col=${column},title=${property(code)}`;
  return `::${severity} ${place}::${data(`${sentence(problem)}\n${fix}`)}`;
}

const data = (text: string): string => text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
const property = (text: string): string => data(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;

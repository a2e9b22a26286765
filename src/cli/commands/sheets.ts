import path from "node:path";
import { type Problem, formatProblems } from "../../problems/index.js";
import { buildPrivateReport } from "../../report/index.js";
import { privateFiles } from "../../site/index.js";
import { type Call, textOption } from "../arguments.js";
import { civilTime, parseAsOf } from "../as-of.js";
import type { Effects, ExitCode } from "../effects.js";
import { logFolder } from "../log-folder.js";
import { refuseUnsafePlace, writePrivate } from "../private-folder.js";
import { readLog } from "../read-log.js";
import { problemsOf, sheetsTarget } from "../sheets-target.js";

/** `gylebook sheets`: what a tasting or a competition needs on paper, in a folder that is never part of a site. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const [name = "", given] = call.words;
  const folder = await logFolder(given, effects);
  const asOf = textOption(call, "as-of");
  const today = asOf === undefined ? undefined : parseAsOf(asOf);
  const read = readLog(folder);
  const target = sheetsTarget(name, read);

  const problems = problemsOf(target.file, read.problems);
  const mistakes = problems.filter(({ severity }) => severity === "error");
  if (mistakes.length > 0 || target.record === undefined) return refused(mistakes, effects);

  const out = path.resolve(effects.workingFolder, textOption(call, "out") ?? "_private");
  const place = path.join(out, target.record.record.slug);
  await refuseUnsafePlace(place, folder);
  const clock = today ?? read.log.club.asOf ?? civilTime(effects.now(), read.log.club.zone);
  const report = buildPrivateReport(read.log, target.record, clock);
  if (report.problems !== undefined) return refused(report.problems, effects);
  const files = privateFiles({ report });
  await writePrivate(place, files);
  effects.print(`Wrote ${files.length} files to ${path.relative(effects.workingFolder, place) || place}. Open ${path.join(path.relative(effects.workingFolder, place), "index.html")} in a browser and print from there.\n`);
  return 0;
}

function refused(problems: readonly Problem[], effects: Effects): ExitCode {
  effects.complain(`${formatProblems(problems, "text")}\nNo sheets were written.\n`);
  return 1;
}
